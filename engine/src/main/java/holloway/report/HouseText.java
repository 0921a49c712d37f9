package holloway.report;

import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.TreeSet;

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
    placed.levels().forEach(t::level);
    t.walls();
    t.openings();
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
  }

  private void level(PlacedLevel level) {
    page.title("LEVEL " + level.name());
    page.put(
        "  ",
        "floor at %s, ceiling at %s above the lowest floor; %s"
            .formatted(
                units.tape(level.floorZ()),
                units.tape(level.ceilingZ()),
                FramingWords.floor(level.level().floor(), units)));
    placed.rooms().stream().filter(r -> r.room().level().equals(level.name())).forEach(this::room);
  }

  private void room(PlacedRoom r) {
    long wide = r.outline().xRange().hi() - r.outline().xRange().lo();
    long deep = r.outline().yRange().hi() - r.outline().yRange().lo();
    page.line(
        "  %-22s %16s x %-16s %10s"
            .formatted(
                r.name(),
                units.tape(wide),
                units.tape(deep),
                units.area(Math.abs(r.outline().signedAreaMm2()) / 1e6)));
  }

  private void walls() {
    page.title("WALLS");
    for (Wall w : placed.walls()) {
      TreeSet<String> rooms = new TreeSet<>();
      w.faces().forEach(f -> rooms.add(f.room()));
      page.put(
          "  ",
          6,
          "%s: %s long, %s thick, %s; %s%s"
              .formatted(
                  w.id(),
                  units.tape(w.length()),
                  units.tape(w.thickness()),
                  FramingWords.wall(w, units),
                  w.isOuter() ? "outer, seen from " : "seen from ",
                  String.join(", ", rooms)));
    }
  }

  private void openings() {
    page.title("OPENINGS");
    long count = 0;
    for (Wall w : placed.walls()) {
      for (Wall.WallOpening o : w.openings()) {
        count++;
        page.put(
            "  ",
            6,
            "%s in %s: %s wide, from %s to %s along it, head at %s"
                .formatted(
                    o.opening().kind().name().toLowerCase(java.util.Locale.ROOT),
                    w.id(),
                    units.tape(o.opening().width().value().nm()),
                    units.tape(o.s().lo()),
                    units.tape(o.s().hi()),
                    units.tape(o.opening().head().value().nm())));
      }
    }
    if (count == 0) {
      page.put("  ", "None stated.");
    }
  }

  private void wanted(Request request) {
    page.title("WANTED");
    page.put("  ", "cabinet in " + request.cabinet().at().face().room());
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
  }

  private void doubts(List<Plan.FindingLine> findings) {
    DoubtWords words = new DoubtWords(placed, units);
    each("DOES NOT CLOSE", words.misclosures());
    each("NOT ACCOUNTED FOR", words.unaccounted());
    each("ASSUMED", List.copyOf(new TreeSet<>(placed.assumed())));
    each(
        "FINDINGS",
        findings.stream()
            .map(f -> f.severity() + ": " + f.text() + " [" + f.source() + "]")
            .toList());
  }

  private void each(String title, List<String> lines) {
    page.title(title);
    lines.forEach(l -> page.put("  - ", l));
    if (lines.isEmpty()) {
      page.put("  ", "Nothing.");
    }
  }
}
