package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Roof;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Geometry;

/**
 * Attics under roofs, with their chords or ceiling joists and the sloped members that set the
 * headroom.
 */
final class RoofFramer {
  /** Half the butt cut of a truss heel, trade-facts D21: 1/4 in. */
  private static final double BUTT_MM = 6.35;

  private final Placed placed;
  private final List<Deck> decks;
  private final List<Member> members;

  RoofFramer(Placed placed, List<Deck> decks, List<Member> members) {
    this.placed = placed;
    this.decks = decks;
    this.members = members;
  }

  List<Attic> attics() {
    List<Attic> out = new ArrayList<>();
    FlatRoof.of(placed, decks).forEach(r -> r.frame(members));
    for (Roof roof : placed.house().roofs()) {
      Predicate<PlacedRoom> covered = r -> covers(placed, roof, r);
      List<PlacedRoom> rooms = placed.rooms().stream().filter(covered).toList();
      if (rooms.isEmpty()) {
        continue;
      }
      Optional<KneeRoof> kneed = KneeRoof.of(placed, decks, roof);
      if (kneed.isPresent()) {
        out.addAll(behind(kneed.get(), rooms));
        continue;
      }
      if (FlatRoof.isOne(roof)) {
        continue; // no attic is in it
      }
      List<Polygon2> parts = parts(placed, decks, roof, rooms);
      boolean eastWest = run(roof) == Direction.NORTH_SOUTH;
      for (int i = 0; i < parts.size(); i++) {
        String id = roof.name() + (parts.size() == 1 ? "" : "-" + (i + 1));
        Attic shell = shell(roof, rooms, parts.get(i), id);
        out.addAll(under(Dormers.in(shell, Dormers.all(parts, eastWest)), rooms));
      }
    }
    return out;
  }

  /** The side attics of a roof with knee walls: over its rooms there is no other. */
  private List<Attic> behind(KneeRoof roof, List<PlacedRoom> rooms) {
    if (roof.trouble().isPresent()) {
      return List.of();
    }
    Attic shell = KneeDormers.in(placed, roof);
    new RafterFramer(shell).frame(members, placed.house().layout());
    rooms.forEach(r -> new VaultFramer(shell, r, Ceilings.lining(placed, r)).frame(members));
    List<Attic> out = SideAttics.of(roof);
    out.forEach(this::chords);
    return out;
  }

  /** A roof over a level covers those of its rooms that no other roof names. */
  static boolean covers(Placed placed, Roof roof, PlacedRoom r) {
    if (!roof.rooms().isEmpty()) {
      return roof.rooms().contains(r.name());
    }
    boolean named = placed.house().roofs().stream().anyMatch(o -> o.rooms().contains(r.name()));
    return !named && roof.level().filter(l -> l.equals(r.room().level())).isPresent();
  }

  /** What lies under a roof, each part by itself. */
  static List<Polygon2> parts(Placed placed, List<Deck> decks, Roof roof, List<PlacedRoom> rooms) {
    if (rooms.isEmpty()) {
      return List.of();
    }
    String level = rooms.get(0).room().level();
    Geometry all = Outlines.of(placed, level, r -> covers(placed, roof, r), true);
    return Outlines.parts(open(placed, decks, all, level));
  }

  /** The tops of the plates that a roof rests on. */
  static long plate(Placed placed, List<PlacedRoom> rooms) {
    return rooms.stream()
        .mapToLong(r -> r.ceilingZ() + Ceilings.lining(placed, r))
        .max()
        .orElseThrow();
  }

  /** What of an outline has no storey above it; shafts within a storey belong to it. */
  private static Geometry open(Placed placed, List<Deck> decks, Geometry outline, String level) {
    PlacedLevel own = placed.getLevel(level);
    Geometry left = outline;
    for (var upper : placed.levels()) {
      if (upper.isOver(own)) {
        for (Polygon2 part : Outlines.parts(Outlines.of(placed, upper.name(), r -> true, true))) {
          left = Overlay.difference(left, part.toJts());
        }
      }
    }
    for (Roof roof : placed.house().roofs()) {
      Optional<KneeRoof> kneed = KneeRoof.of(placed, decks, roof);
      if (kneed.isPresent() && placed.getLevel(kneed.get().level()).isOver(own)) {
        left = Overlay.difference(left, kneed.get().roofline().toJts());
      }
    }
    return left;
  }

  /** The attics under one roofline: what its vaulted ceilings leave of it, each part by itself. */
  private List<Attic> under(Attic shell, List<PlacedRoom> rooms) {
    new RafterFramer(shell).frame(members, placed.house().layout());
    List<PlacedRoom> vaulted = rooms.stream().filter(r -> r.room().vaulted()).toList();
    vaulted.forEach(r -> new VaultFramer(shell, r, Ceilings.lining(placed, r)).frame(members));
    List<Polygon2> parts = Outlines.without(placed, shell.outline(), vaulted);
    List<Attic> out = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      String id = shell.id() + (parts.size() == 1 ? "" : "-" + (i + 1));
      Attic attic = shell.part(id, parts.get(i));
      chords(attic);
      out.add(attic);
    }
    return out;
  }

  /** The whole of what lies under one roofline. */
  private Attic shell(Roof roof, List<PlacedRoom> rooms, Polygon2 outline, String id) {
    long plate = plate(placed, rooms);
    Direction run = run(roof);
    Interval along = run == Direction.NORTH_SOUTH ? outline.xRange() : outline.yRange();
    List<Interval> chords = chords(roof, along, isFromHigh(placed, run));
    double slope = roof.pitchRise() / (double) roof.pitchRun();
    double cos = 1 / Math.sqrt(1 + slope * slope);
    double heel =
        roof.heel()
            .map(f -> f.value().toMm())
            .orElse(roof.chord().value().depth().toMm() / cos + BUTT_MM);
    long top = plate + roof.chord().value().depth().nm();
    return new Attic(
        id, roof, outline, plate, top, chords, run, heel, outline, List.of(), List.of());
  }

  /** The way its sloped members run. */
  static Direction run(Roof roof) {
    return roof.shape() == Roof.Shape.SHED ? shedRun(roof) : roof.ridge().across();
  }

  static Direction shedRun(Roof roof) {
    return roof.lowSide().orElse(holloway.house.Side.SOUTH).runsEastWest()
        ? Direction.NORTH_SOUTH
        : Direction.EAST_WEST;
  }

  /** Members that run one way follow one another from the side that layouts begin at. */
  static boolean isFromHigh(Placed placed, Direction run) {
    return placed.house().layout().isFromHigh(run == Direction.NORTH_SOUTH);
  }

  static List<Interval> chords(Roof roof, Interval along, boolean fromHigh) {
    if (fromHigh) {
      return chords(roof, new Interval(-along.hi(), -along.lo()), false).stream()
          .sorted(Comparator.comparingLong(Interval::lo).reversed())
          .map(c -> new Interval(-c.hi(), -c.lo()))
          .toList();
    }
    long thick = roof.chord().value().thickness().nm();
    long every = roof.every().value().nm();
    List<Interval> out = new ArrayList<>();
    out.add(new Interval(along.lo(), along.lo() + thick));
    for (long c = along.lo() + every; c + thick / 2 <= along.hi() - thick; c += every) {
      out.add(new Interval(c - thick / 2, c - thick / 2 + thick));
    }
    out.add(new Interval(along.hi() - thick, along.hi()));
    return out;
  }

  private void chords(Attic attic) {
    boolean ns = attic.chordRun() == Direction.NORTH_SOUTH;
    for (Interval c : attic.chords()) {
      spans(attic, c).forEach(span -> chord(attic, c, span, ns));
    }
  }

  /** Where a chord lies inside the outline for its whole thickness. */
  static List<Interval> spans(Attic attic, Interval c) {
    Polygon2 o = attic.outline();
    if (attic.chordRun() == Direction.EAST_WEST) {
      return Sheets.insideAlong(o, c.lo(), c.hi());
    }
    Polygon2 turned = DeckFramer.toLocal(o, Frame.northSouth(new Point3(0, 0, 0)));
    return Sheets.insideAlong(turned, -c.hi(), -c.lo());
  }

  private void chord(Attic attic, Interval c, Interval span, boolean ns) {
    MemberKind kind =
        attic.roof().frame() == Roof.Frame.TRUSSES ? MemberKind.CHORD : MemberKind.CEILING_JOIST;
    Box box =
        ns
            ? new Box(c.lo(), c.hi(), span.lo(), span.hi(), attic.plateZ(), attic.chordTopZ())
            : new Box(span.lo(), span.hi(), c.lo(), c.hi(), attic.plateZ(), attic.chordTopZ());
    members.add(
        new Member(
            attic.id()
                + "/"
                + kind.word().replace(' ', '-')
                + "-"
                + WallFramer.tag(c.lo())
                + "-"
                + WallFramer.tag(span.lo()),
            kind,
            Frame.WORLD,
            box,
            attic.id(),
            true));
  }
}
