package holloway.pack;

import holloway.plan.Plan;
import holloway.report.Sheet;
import holloway.report.SheetWords;
import holloway.schedule.FloorCrossing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A card for each run: what to cut, which way it goes, its label, what to test. */
final class RunFacts {
  private static final double LEAST = 110;
  private static final double OWN_SHEET = 205;

  /** Of a way in one line on paper, about. */
  private static final int LETTERS = 85;

  private final Sheet sheet;
  private final SheetWords words;
  private final Drawings drawings;
  private final CableNames cables;

  RunFacts(Sheet sheet, SheetWords words, Drawings drawings) {
    this.sheet = sheet;
    this.words = words;
    this.drawings = drawings;
    this.cables = new CableNames(sheet);
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
    double rest = 205 - 4.9 * (1 + way.length() / LETTERS);
    return rest < LEAST ? OWN_SHEET : rest;
  }

  /** Every place where cable passes a floor. */
  List<Map<String, Object>> floors() {
    List<Map<String, Object>> out = new ArrayList<>();
    for (Drawings.Floor f : drawings.floors()) {
      Map<String, Object> card = new LinkedHashMap<>();
      FloorCrossing c = f.place();
      card.put("floor", f.drawing().title());
      card.put("level", c.attic() ? "attic" : c.above());
      card.put("hole", c.hole().isEmpty() ? null : c.hole());
      card.put("passing", cables.of(c.runs()));
      card.put("section", f.drawing());
      out.add(card);
    }
    return out;
  }

  private Map<String, Object> card(Plan.PlannedRun r) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("id", "run/" + r.id());
    out.put("run", r.id());
    out.put("cable", r.cable());
    out.put("from", r.from());
    out.put("to", r.to());
    out.put("lengths", words.lengths(r));
    out.put("drawing", drawings.runs().get(r.id()));
    out.put("label", cables.label(r.id()));
    return out;
  }
}
