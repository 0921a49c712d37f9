package holloway.pack;

import holloway.plan.Plan;
import holloway.report.Sheet;
import holloway.report.SheetWords;
import holloway.schedule.HoleCard;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A card for each hole. */
final class HoleFacts {
  /** Lines of a card's facts that are not printed on it, or beside one another. */
  private static final int UNSEEN = 11;

  /** The rule that asks for a stud whose place is assumed. */
  private static final String ASSUMED = "find-the-stud-first";

  private final Sheet sheet;
  private final SheetWords words;
  private final Drawings drawings;
  private final Seen seen;
  private final CableNames cables;

  HoleFacts(Sheet sheet, SheetWords words, Drawings drawings, Seen seen) {
    this.sheet = sheet;
    this.words = words;
    this.drawings = drawings;
    this.seen = seen;
    this.cables = new CableNames(sheet);
  }

  List<Map<String, Object>> cards() {
    List<Map<String, Object>> out = new ArrayList<>();
    sheet.plan().holes().forEach(h -> out.add(card(h)));
    return out;
  }

  private Map<String, Object> card(Plan.PlannedHole h) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("id", "hole/" + h.id());
    out.put("hole-id", h.id());
    out.put("label", h.label());
    out.put("kind", h.kind());
    out.put("size", words.bit(h.diameterMm()));
    out.put("diameter", h.diameterMm());
    out.put("cables", h.runs().size());
    out.put("two", h.bores() > 1 ? h.bores() : null);
    out.put("assumed", h.assumed());
    out.put("where", words.where(h));
    out.put("stand", words.stand(h));
    out.put("method", words.method(h));
    out.put("minutes", words.time(h.minutes()));
    out.put("others", words.others(h));
    out.put("carried", cables.of(h.runs()));
    out.put("seal", sealing(sheet.plan(), words, h));
    out.put("find", h.assumed() ? remedies(sheet.plan(), words, h, true) : List.of());
    tape(out, h, sheet.cards().get(h.id()));
    Drawing drawing = drawings.holes().get(h.id());
    Seen.Picture picture = seen.holes().get(h.id());
    out.put("picture", picture != null && picture.inPage() ? picture : null);
    out.put("drawing", drawing == null ? null : drawing.within(left(out)));
    return out;
  }

  /** Millimetres that the text of a card leaves on the lower of the two sheets, about. */
  private static double left(Map<String, Object> card) {
    int lines = 0;
    for (Object o : card.values()) {
      List<?> parts = o instanceof List<?> l ? l : List.of(String.valueOf(o));
      for (Object part : parts) {
        lines += 1 + part.toString().length() / 78;
      }
    }
    return Math.max(70, 205 - 5.2 * (lines - UNSEEN));
  }

  /** A hole without a card cannot be taped: the template then says how to find it. */
  private void tape(Map<String, Object> out, Plan.PlannedHole h, HoleCard card) {
    out.put("taped", card != null);
    if (card == null) {
      return;
    }
    out.put("side-a", card.sideA());
    out.put("side-b", card.sideB());
    out.put("bit", card.extension().isEmpty() ? card.bit() : card.bit() + "; " + card.extension());
    out.put("angle", orNull(card.angle()));
    out.put("square", card.angle().isEmpty());
    out.put("pilot", orNull(card.pilot()));
    out.put("behind", orNull(card.behind()));
    out.put("breakthrough", orNull(card.breakthrough()));
    // That the stud has to be found is said already, and the pilot says what a wire is for.
    out.put("check", h.assumed() || !card.pilot().isEmpty() ? null : orNull(card.checkFirst()));
    out.put("off-by", card.toleranceMm() > 0 ? words.offBy(card.toleranceMm()) : null);
  }

  private static String orNull(String text) {
    return text.isEmpty() ? null : text;
  }

  /** What rules ask to be closed or done at this hole. */
  static List<String> sealing(Plan plan, SheetWords words, Plan.PlannedHole h) {
    return remedies(plan, words, h, false);
  }

  /** What to do about a place that is assumed is no way to close a hole. */
  private static List<String> remedies(
      Plan plan, SheetWords words, Plan.PlannedHole h, boolean assumed) {
    return plan.findings().stream()
        .filter(f -> f.place().equals(h.id()) && !f.remedy().isEmpty())
        .filter(f -> f.rule().equals(ASSUMED) == assumed)
        .map(f -> words.sentence(f.remedy()))
        .distinct()
        .toList();
  }
}
