package holloway.report;

import holloway.house.WallSpot;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.survey.Placed;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.stream.Collectors;

/** What was understood of a house file, for a person to compare with the house. */
public final class HouseText {
  private final Placed placed;
  private final UnitWords units;
  private final Page page;

  private HouseText(Placed placed, UnitSystem system, Ink ink) {
    this.placed = placed;
    this.units = new UnitWords(system);
    this.page = new Page(ink);
  }

  public static String of(
      Placed placed, Request request, List<Plan.FindingLine> findings, UnitSystem system, Ink ink) {
    HouseText t = new HouseText(placed, system, ink);
    t.head();
    LevelText levels = new LevelText(placed, t.units, t.page);
    placed.levels().forEach(levels::put);
    LinkText.put(placed, t.units, t.page);
    t.wanted(request);
    t.doubts(findings);
    return t.page.text();
  }

  private void head() {
    var house = placed.house();
    page.title(house.name() + ": what was understood");
    page.put(
        "  ",
        "place %s, built %d%s, %s, %s, %s"
            .formatted(
                house.place().name().toLowerCase(java.util.Locale.ROOT),
                house.built().value(),
                house.built().isAssumed() ? " (assumed)" : "",
                UnitWords.count(placed.levels().size(), "level"),
                UnitWords.count(placed.rooms().size(), "room"),
                UnitWords.count(placed.walls().size(), "wall")));
    PlaceWords.turned(house.turned()).ifPresent(t -> page.put("  ", t));
  }

  private static String others(Request request) {
    List<WallSpot> others = request.cabinet().others();
    return others.isEmpty()
        ? ""
        : "; could stand in "
            + others.stream()
                .map(o -> o.face().room() + " " + o.face().side().word())
                .collect(Collectors.joining(", "))
            + " too (compare --cabinet)";
  }

  private void wanted(Request request) {
    page.title("WANTED");
    page.put("  ", "cabinet in " + request.cabinet().at().face().room() + others(request));
    for (Outlet o : request.outlets()) {
      String cables = String.join(", ", o.cables());
      page.put(
          "  ",
          6,
          "%s: %s%s%s"
              .formatted(
                  o.name(),
                  cables,
                  o.spare() > 0 ? ", " + o.spare() + " spare" : "",
                  o.feed() ? ", the provider's feed" : ""));
    }
    page.put("  ", UnitWords.count(request.runs().size(), "run") + " in all");
    page.put(
        "  ",
        "jacks wired to T568"
            + request.shop().pinOut()
            + (request.prices().stated() ? "; prices: " + request.prices().name() : ""));
  }

  private void doubts(List<Plan.FindingLine> findings) {
    DoubtWords words = new DoubtWords(placed, units);
    page.title("DOES NOT CLOSE");
    if (words.misclosures(page, "") == 0) {
      page.put("  ", "Nothing.");
    }
    each("CLOSES WITHIN THE TAPE'S TOLERANCE", words.shared());
    each("NOT ACCOUNTED FOR", words.unaccounted());
    accept();
    page.title("ASSUMED, AND WHERE TO SAY OTHERWISE");
    new AssumedText(placed, page).put();
    each(
        "FINDINGS",
        findings.stream()
            .map(f -> f.severity() + ": " + f.text() + " [" + f.source() + "]")
            .toList());
  }

  /** How a space becomes a shaft that may be planned through. */
  private void accept() {
    placed.spaces().stream()
        .flatMap(s -> s.chase().stream())
        .forEach(
            c ->
                page.put(
                    "      ",
                    "none is used unknown; once you have looked, under hollows: "
                        + AcceptText.of(c, placed.house())));
  }

  private void each(String title, List<String> lines) {
    page.title(title);
    lines.forEach(l -> page.put("  - ", l));
    if (lines.isEmpty()) {
      page.put("  ", "Nothing.");
    }
  }
}
