package holloway.report;

import holloway.drawing.Tags;
import holloway.geometry.Interval;
import holloway.house.Dormer;
import holloway.house.Lining;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.Straps;
import holloway.house.WallTraits;
import holloway.survey.OpenSide;
import holloway.survey.Placed;
import holloway.survey.PlacedBeam;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedPorch;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** One level in words: rooms with areas, walls with their framing, openings with their places. */
final class LevelText {
  private final Placed placed;
  private final UnitWords units;
  private final Page page;

  LevelText(Placed placed, UnitWords units, Page page) {
    this.placed = placed;
    this.units = units;
    this.page = page;
  }

  void put(PlacedLevel level) {
    page.title("LEVEL " + level.name());
    page.put(
        "  ",
        "floor at %s, ceiling at %s above the lowest floor; %s"
            .formatted(
                units.tape(level.floorZ()),
                units.tape(level.ceilingZ()),
                FramingWords.floor(level.level().floor(), units)));
    rooms(level);
    page.title("WALLS OF " + level.name());
    List<Wall> walls = placed.walls().stream().filter(w -> w.level().equals(level.name())).toList();
    walls.forEach(this::wall);
    if (walls.isEmpty()) {
      page.put("  ", "None.");
    }
    PlacedBeam.of(placed).stream()
        .filter(b -> b.room().room().level().equals(level.name()))
        .forEach(this::beam);
    OpenSide.of(placed).stream()
        .filter(o -> o.first().room().level().equals(level.name()))
        .forEach(this::open);
    PlacedPorch.of(placed).stream()
        .filter(p -> placed.getRoom(p.porch().face().room()).room().level().equals(level.name()))
        .forEach(p -> new PorchText(placed, units, page).put(p));
    page.title("OPENINGS OF " + level.name());
    List<Tags.Tag> tags = Tags.of(placed, level.name());
    tags.forEach(this::opening);
    placed.house().roofs().stream()
        .flatMap(r -> r.skylights().stream())
        .filter(k -> placed.getRoom(k.at().room()).room().level().equals(level.name()))
        .forEach(this::skylight);
    placed.house().roofs().stream()
        .filter(r -> isHere(r, level.name()))
        .forEach(r -> r.dormers().forEach(d -> dormer(r, d)));
    placed.house().roofs().stream()
        .filter(r -> r.shape() == Roof.Shape.ARCHED && isHere(r, level.name()))
        .forEach(this::arch);
    if (tags.isEmpty()) {
      page.put("  ", "None stated.");
    }
  }

  private void rooms(PlacedLevel level) {
    double total = 0;
    for (PlacedRoom r : placed.rooms()) {
      if (r.room().level().equals(level.name())) {
        room(r);
        total += area(r);
      }
    }
    page.line("  %-20s %37s %13s".formatted("all rooms", "", units.area(total)));
  }

  private static double area(PlacedRoom r) {
    return Math.abs(r.outline().signedAreaMm2()) / 1e6;
  }

  private void room(PlacedRoom r) {
    String size = units.tape(r.outline().xRange().length()) + " x ";
    size += units.tape(r.outline().yRange().length());
    size += r.outline().corners().size() == 4 ? "" : " over all";
    if (r.name().length() > 20 || size.length() > 37) {
      page.put("  ", r.name());
      page.line("  %-20s %37s %13s".formatted("", size, units.area(area(r))));
    } else {
      page.line("  %-20s %37s %13s".formatted(r.name(), size, units.area(area(r))));
    }
    page.put(
        "      ",
        "%s high, walls %s, ceiling %s"
            .formatted(
                units.tape(r.ceilingZ() - r.floorZ()),
                lining(r.room().walls()),
                ceiling(r.room()) + (r.room().vaulted() ? " on the slope (vaulted)" : "")));
  }

  private String ceiling(Room r) {
    String shows =
        r.overhead().layers().isEmpty()
            ? lining(r.ceiling())
            : layers(new WallTraits.Layers(Optional.empty(), r.overhead().layers()));
    return shows + r.overhead().straps().map(this::straps).orElse("");
  }

  private String straps(Straps s) {
    return " on straps %s deep every %s (where they stand is assumed)"
        .formatted(units.tape(s.depth().value().nm()), units.tape(s.every().value().nm()));
  }

  private void beam(PlacedBeam b) {
    page.put(
        "  ",
        6,
        "beam %s of %s crosses %s %s, its middle %s from the %s side, %s wide, %s; never bored"
            .formatted(
                b.beam().name(),
                b.beam().made().name().toLowerCase(Locale.ROOT),
                b.room().name(),
                b.eastWest() ? "east-west" : "north-south",
                units.tape(b.beam().from().distance().value().nm()),
                b.beam().from().from().word(),
                units.tape(b.beam().width().value().nm()),
                b.hangs()
                    ? "hangs " + units.tape(b.beam().drop().value().nm()) + " below the ceiling"
                    : "within the joists"));
  }

  private void open(OpenSide o) {
    page.put(
        "  ",
        6,
        "%s and %s meet without a wall for %s, %s"
            .formatted(
                o.first().name(),
                o.second().name(),
                units.tape(o.along().length()),
                o.header() ? "under a header" : "under the ceiling"));
  }

  private void skylight(Roof.Skylight k) {
    page.put(
        "  ",
        6,
        "skylight of %s, %s x %s, its middle %s from the %s and %s from the %s side: its shaft goes up through the roof; headers are assumed from joist to joist beside it"
            .formatted(
                k.at().room(),
                units.tape(k.eastWest().nm()),
                units.tape(k.northSouth().nm()),
                units.tape(k.at().eastWest().distance().value().nm()),
                k.at().eastWest().from().word(),
                units.tape(k.at().northSouth().distance().value().nm()),
                k.at().northSouth().from().word()));
  }

  private boolean isHere(Roof roof, String level) {
    return roof.level()
        .orElseGet(() -> placed.getRoom(roof.rooms().get(0)).room().level())
        .equals(level);
  }

  private void arch(Roof roof) {
    page.put(
        "  ",
        6,
        "'%s' is arched, its crown %s, a part of a circle that rises to %s over the joists in its middle; its ribs are taken to stand over the chords"
            .formatted(
                roof.name(),
                roof.ridge().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                units.tape(roof.rise().map(f -> f.value().nm()).orElse(0L))));
  }

  private void dormer(Roof roof, Dormer d) {
    page.put("  ", 6, DormerWords.of(roof, d, units));
  }

  private static String lining(Lining l) {
    return l.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private void wall(Wall w) {
    TreeSet<String> rooms = new TreeSet<>();
    w.faces().forEach(f -> rooms.add(f.room()));
    page.put(
        "  ",
        6,
        "%s: %s long, %s thick (%s, %s, %s); %s%s; %s%s"
                .formatted(
                    w.id(),
                    units.tape(w.length()),
                    units.tape(w.thickness()),
                    layer(w, 0),
                    units.tape(w.core().length()),
                    layer(w, 1),
                    FramingWords.wall(w, units),
                    origin(w),
                    w.isOuter() ? "outer, seen from " : "seen from ",
                    String.join(", ", rooms))
            + KneeWords.of(placed, w, units));
  }

  /** What lies on the framing, from the wall's south or west side to the other. */
  private String layer(Wall w, int side) {
    long thick = side == 0 ? w.core().lo() : w.thickness() - w.core().hi();
    if (w.outside() == side) {
      return "outside " + units.tape(thick);
    }
    if (w.findBattens(side).isPresent()) {
      return "lining and battens together " + units.tape(thick);
    }
    return w.findLayers(side)
        .map(l -> layers(l) + " together " + units.tape(thick))
        .orElse(lining(w.lining(side)) + " " + units.tape(thick));
  }

  private String layers(WallTraits.Layers l) {
    return l.layers().stream()
        .map(x -> lining(x.what()) + " " + units.tape(x.thickness().value().nm()))
        .collect(Collectors.joining(" + "));
  }

  private String origin(Wall w) {
    if (!w.isFramed()) {
      return "";
    }
    return ", one stud %s at %s from its %s end"
        .formatted(
            w.studOrigin().isAssumed() ? "taken to be" : "known",
            units.tape(w.studOrigin().value()),
            Math.abs(w.frame().u().x()) > 0.5 ? "west" : "south");
  }

  private void opening(Tags.Tag t) {
    Opening o = t.opening().opening();
    Side from = o.along().from();
    Interval s = t.opening().s();
    page.put(
        "  ",
        6,
        "%s %s in %s: %s from the %s end of its face, %s wide, %s; rough %s to %s along the wall"
            .formatted(
                t.name(),
                t.kind(),
                t.wall().id(),
                units.tape(o.along().distance().value().nm()),
                from.word(),
                units.tape(o.width().value().nm()),
                heights(o),
                units.tape(s.lo()),
                units.tape(s.hi())));
  }

  private String heights(Opening o) {
    String head = "head at " + units.tape(o.head().value().nm());
    head += o.head().isAssumed() ? " (assumed)" : "";
    if (o.kind() != Opening.Kind.WINDOW) {
      return head;
    }
    String sill = "sill at " + units.tape(o.sill().value().nm());
    return sill + (o.sill().isAssumed() ? " (assumed), " : ", ") + head;
  }
}
