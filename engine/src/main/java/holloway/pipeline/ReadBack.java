package holloway.pipeline;

import holloway.finding.Outcome;
import holloway.house.House;
import holloway.housefile.HouseFile;
import holloway.housefile.Problem;
import holloway.housefile.draft.DraftText;
import holloway.survey.Placed;
import holloway.survey.Survey;
import holloway.survey.SurveyException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads a house file that was made from a model once before it is handed over. A line of walls or
 * openings that cannot stand is made a comment with the reason; what else is wrong is listed at the
 * top for the person to finish.
 */
final class ReadBack {
  private static final int ROUNDS = 6;

  private ReadBack() {}

  /** One thing wrong, on a line from 1 (0 when it is about the whole). */
  private record Wrong(int line, String text) {}

  static String settled(String text) {
    String now = text;
    for (int i = 0; i < ROUNDS; i++) {
      List<Wrong> wrong = wrong(now);
      if (wrong.isEmpty()) {
        return now;
      }
      String next = withoutLines(now, wrong);
      if (next.equals(now)) {
        return withRemarks(now, wrong);
      }
      now = next;
    }
    return withRemarks(now, wrong(now));
  }

  private static List<Wrong> wrong(String text) {
    Path file = null;
    try {
      file = Files.createTempFile("holloway-", ".yaml");
      Files.write(file, text.getBytes(StandardCharsets.UTF_8));
      holloway.housefile.Reading reading = HouseFile.read(file);
      return reading instanceof holloway.housefile.Reading.Sound sound
          ? placed(sound.house())
          : ((holloway.housefile.Reading.Faulty) reading)
              .problems().stream().map(ReadBack::wrong).toList();
    } catch (IOException e) {
      throw new InputTrouble("the house file cannot be read back: no temporary file can be made");
    } finally {
      remove(file);
    }
  }

  private static Wrong wrong(Problem p) {
    return new Wrong(p.where().line(), p.text());
  }

  private static List<Wrong> placed(House house) {
    try {
      Outcome<Placed> placed = Survey.of(house);
      return placed.value().rooms().isEmpty() ? List.of(new Wrong(0, "no room")) : List.of();
    } catch (SurveyException e) {
      return e.problems().stream().map(p -> new Wrong(p.where().line(), p.text())).toList();
    }
  }

  private static void remove(Path file) {
    try {
      if (file != null) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      // A left-over temporary file harms nobody.
      return;
    }
  }

  /** Items of lists (walls, openings) on those lines become comments. */
  private static String withoutLines(String text, List<Wrong> wrong) {
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    Set<Integer> done = new TreeSet<>();
    for (Wrong w : wrong) {
      int at = w.line - 1;
      if (at >= 0 && at < lines.size() && isItem(lines.get(at)) && done.add(at)) {
        lines.set(
            at,
            "  %s%s\n  #%s"
                .formatted(DraftText.TO_FINISH, oneLine(w.text), lines.get(at).substring(1)));
      }
    }
    return String.join("\n", lines);
  }

  private static boolean isItem(String line) {
    return line.matches(" {2}- \\{ (side|between|door|window|opening)\\b.*");
  }

  private static String withRemarks(String text, List<Wrong> wrong) {
    StringBuilder remarks = new StringBuilder();
    Set<String> said = new TreeSet<>();
    for (Wrong w : wrong) {
      if (said.add(w.text)) {
        remarks.append(DraftText.TO_FINISH).append(oneLine(w.text)).append('\n');
      }
    }
    int first = text.indexOf('\n') + 1;
    return text.substring(0, first) + remarks + text.substring(first);
  }

  private static String oneLine(String text) {
    return text.replaceAll("[\\p{Cntrl}]+", " ");
  }
}
