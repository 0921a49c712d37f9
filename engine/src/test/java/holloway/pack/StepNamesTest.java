package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Answers;
import holloway.schedule.OpenPlace;
import holloway.schedule.Step;
import holloway.support.PackedSample;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A step that is about one cable says which; a house with a ready-made lead from the provider. */
class StepNamesTest {
  private static final Answers.Packed PACKED = PackedSample.get("plumb-corner");
  private static final String PAGE =
      PackedHouse.paper(PACKED, Language.ENGLISH, PaperSize.A4)
          .replaceAll("<[^>]*>", " ")
          .replaceAll("\\s+", " ");

  @Test
  void aTestNamesItsRun() {
    List<Step> tests = steps(Step.Kind.TEST);
    assertFalse(tests.isEmpty());
    for (Step s : tests) {
      String where = "(person \\d: )?" + Pattern.quote(s.other().get().name());
      String till = "(?:(?!Test with).)*" + Pattern.quote(s.subject()) + " \\(";
      Pattern said = Pattern.compile("Test with, at the other end: " + where + " " + till);
      assertTrue(said.matcher(PAGE).find(), s.subject());
    }
  }

  /** A ready-made lead is on no box: it is marked by its run's name. */
  @Test
  void whatIsMarkedHasItsBoxOrItsRun() {
    List<Step> marks = steps(Step.Kind.MARK);
    assertTrue(marks.stream().anyMatch(s -> s.subject().startsWith("lead ")), "a lead is there");
    marks.forEach(s -> assertSays(s.kind(), s.subject().replaceFirst("^lead ", "")));
  }

  /** Tin Street has channels cut in its plaster, boards lifted and a patch. */
  @Test
  void whatIsOpenedSaysWhat() {
    Answers.Packed p = PackedSample.get("tin-street");
    String page = PackedHouse.paper(p, Language.ENGLISH, PaperSize.A4);
    assertTrue(page.contains("the channel for loudspeaker"));
    assertFalse(page.contains("existing opening"), "nothing new is an existing opening");
  }

  /** Through the floor over the cellar one comes out in the cellar, not in a floor's id. */
  @Test
  void whatLiesBehindAHoleIsARoom() {
    String page = PackedHouse.paper(PackedSample.get("tin-street"), Language.ENGLISH, PaperSize.A4);
    assertTrue(page.contains("<td>under the joists in the cellar</td>"));
    assertFalse(page.contains("under the joists in the ground/"));
  }

  /**
   * Somebody who has only the page knows which of three pairs of boards comes up now, and where.
   */
  @Test
  void whatIsOpenedSaysWhere() {
    Answers.Packed p = PackedSample.get("tin-street");
    String page = PackedHouse.paper(p, Language.ENGLISH, PaperSize.A4);
    Set<String> boards = new TreeSet<>();
    Matcher m =
        Pattern.compile("floor of the (\\w+ ?\\w*), [\\d.]+ m?m from the (west|east) wall")
            .matcher(page);
    while (m.find()) {
      boards.add(m.group());
    }
    long opened =
        p.work().steps().stream()
            .filter(s -> s.kind() == Step.Kind.OPEN && s.subject().contains("/lifted-boards-"))
            .count();
    assertTrue(opened > 1, "boards that are lifted");
    assertEquals(opened, p.work().openings().size() - patches(p));
    assertTrue(boards.size() > 1, boards.toString());
    for (Step s : p.work().steps()) {
      if (s.kind() == Step.Kind.OPEN && s.subject().contains("/channel-")) {
        assertTrue(s.subject().contains("/" + s.at().name() + "-outside/"), s.id() + s.at());
      }
    }
  }

  private static long patches(Answers.Packed p) {
    return p.work().openings().stream().filter(o -> o.on() != OpenPlace.On.FLOOR).count();
  }

  private static void assertSays(Step.Kind kind, String subject) {
    String said = Language.ENGLISH.texts().get("step." + kind.word()) + " " + subject;
    assertTrue(PAGE.contains(said), () -> "nowhere: " + said);
  }

  private static List<Step> steps(Step.Kind kind) {
    return PACKED.work().steps().stream().filter(s -> s.kind() == kind).toList();
  }
}
