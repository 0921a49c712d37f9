package holloway.pack;

import holloway.catalog.Cable;
import holloway.plan.Plan;
import holloway.report.Sheet;
import holloway.report.SheetWords;
import holloway.schedule.FloorCrossing;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A card for each run: what to cut, which way it goes, its label, what to test. */
final class RunFacts {
  private static final double LEAST = 110;
  private static final double OWN_SHEET = 205;

  private final Sheet sheet;
  private final SheetWords words;
  private final Drawings drawings;
  private final Map<String, Label> labels;

  RunFacts(Sheet sheet, SheetWords words, Drawings drawings) {
    this.sheet = sheet;
    this.words = words;
    this.drawings = drawings;
    this.labels =
        Labels.of(sheet.plan(), sheet.request(), sheet.placed()).stream()
            .collect(Collectors.toMap(Label::run, l -> l, (a, b) -> a));
  }

  List<Map<String, Object>> cards() {
    List<Map<String, Object>> out = new ArrayList<>();
    Map<String, String> ways = new LinkedHashMap<>();
    for (Plan.PlannedRun r : sheet.plan().runs()) {
      Map<String, Object> card = card(r);
      String way = words.way(r);
      String first = ways.putIfAbsent(way, r.id());
      card.put("same-as", first);
      card.put("way", first == null ? List.of(way.split(" > ")) : null);
      if (first != null) {
        card.remove("drawing");
      } else if (card.get("drawing") instanceof Drawing d) {
        card.put("drawing", d.within(left(way)));
      }
      out.add(card);
    }
    return out;
  }

  /**
   * Millimetres that a way's lines leave on the lower of the two sheets, about; where that is too
   * little for its type the drawing goes to a sheet of its own.
   */
  private static double left(String way) {
    int lines = 0;
    for (String part : way.split(" > ")) {
      lines += 1 + part.length() / 90;
    }
    double rest = 205 - 4.9 * lines;
    return rest < LEAST ? OWN_SHEET : rest;
  }

  /** Every place where cable passes a floor. */
  static List<Map<String, Object>> floors(Drawings drawings) {
    List<Map<String, Object>> out = new ArrayList<>();
    for (Drawings.Floor f : drawings.floors()) {
      Map<String, Object> card = new LinkedHashMap<>();
      FloorCrossing c = f.place();
      card.put("floor", f.drawing().title());
      card.put("level", c.attic() ? "attic" : c.above());
      card.put("hole", c.hole().isEmpty() ? null : c.hole());
      card.put("passing", String.join(", ", c.runs()));
      card.put("section", f.drawing());
      out.add(card);
    }
    return out;
  }

  private Map<String, Object> card(Plan.PlannedRun r) {
    Map<String, Object> out = new LinkedHashMap<>();
    boolean fibre = Cable.get(r.cable()).fibre();
    out.put("id", "run/" + r.id());
    out.put("run", r.id());
    out.put("cable", r.cable());
    out.put("from", r.from());
    out.put("to", r.to());
    out.put("lengths", words.lengths(r));
    out.put("drawing", drawings.runs().get(r.id()));
    out.put("fibre", fibre);
    out.put("copper", !fibre);
    Label label = labels.get(r.id());
    out.put("label", label == null ? null : label.id());
    return out;
  }
}
