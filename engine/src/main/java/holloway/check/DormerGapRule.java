package holloway.check;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.house.Along;
import holloway.house.Dormer;
import holloway.house.FaceRef;
import holloway.house.House;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a room goes out into a dormer there is neither knee wall nor side attic, from what was
 * taped in that room: no cable lies there behind the knee wall, in its bays or on its face, and
 * what lies in the side attic lies on the same side of the dormer as a door into it.
 */
final class DormerGapRule implements Rule {
  private static final double SLACK_MM = 1;

  /** A cheek's studs, at the least: 2x4. */
  private static final double CHEEK_MM = 89;

  /** Boards and what a floor of joists may lie lower behind the knee wall. */
  private static final double FLOOR_MM = 50;

  private static final double FAR_MM = 50_000;

  /** Cable on a wall's face lies within this of it. */
  private static final double ON_FACE_MM = 20;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Roof roof : evidence.house().framed().placed().house().roofs()) {
      for (Dormer d : roof.dormers()) {
        if (d.room().isPresent()) {
          evidence.steps().stream()
              .filter(Walk.At::isLeg)
              .forEach(at -> judge(at, roof, d, evidence, charge));
        }
      }
    }
  }

  private static void judge(Walk.At at, Roof roof, Dormer d, Evidence evidence, Charge charge) {
    PlacedRoom room = room(d.room().orElseThrow(), evidence);
    boolean behind =
        evidence.house().framed().attics().stream()
            .filter(a -> a.roof().name().equals(roof.name()))
            .anyMatch(a -> at.hollow().equals("attic/" + a.id()));
    if (behind && enters(at, gap(d, room, CHEEK_MM, 0))) {
      charge.step(
          at, "passes behind the knee wall where the %s goes out into its dormer", room.name());
    } else if (behind && isBehind(at, d, room) && !hasDoor(at, roof, d, evidence)) {
      charge.step(
          at, "is cut off from every door in a knee wall by a dormer of the %s", room.name());
    } else if (isOnKnee(at, d, room, evidence) && enters(at, gap(d, room, 0, ON_FACE_MM))) {
      charge.step(
          at, "lies in or on the knee wall where the %s goes out into its dormer", room.name());
    }
  }

  private static boolean enters(Walk.At at, Solid gap) {
    return at.spans().stream().anyMatch(s -> gap.entered(s, SLACK_MM));
  }

  /** In a bay of a wall that the room shows to on that side, or on the room's faces. */
  private static boolean isOnKnee(Walk.At at, Dormer d, PlacedRoom room, Evidence evidence) {
    Optional<Hollow> hollow = evidence.hollow(at);
    if (hollow.filter(h -> h.kind() == HollowKind.ROOM_SURFACE).isPresent()) {
      return hollow.get().owner().equals(room.name());
    }
    return evidence.house().framed().placed().walls().stream()
        .filter(w -> hollow.filter(h -> h.owner().equals(w.id())).isPresent())
        .anyMatch(w -> shows(w, d.side(), room));
  }

  private static boolean shows(Wall w, Side side, PlacedRoom room) {
    return w.faces().stream().anyMatch(f -> f.room().equals(room.name()) && f.roomSide() == side);
  }

  /** From a room's face outwards, between the cheeks, from the floor up. */
  private static Solid gap(Dormer d, PlacedRoom room, double beside, double inward) {
    double[] along = along(room, d.side(), d.from(), d.width().value().toMm());
    double face = face(room, d.side());
    boolean up = d.side() == Side.NORTH || d.side() == Side.EAST;
    long a0 = nm(along[0] - beside);
    long a1 = nm(along[1] + beside);
    long b0 = nm(up ? face - inward : face - FAR_MM);
    long b1 = nm(up ? face + FAR_MM : face + inward);
    long z0 = room.floorZ() - nm(FLOOR_MM);
    long z1 = room.floorZ() + nm(FAR_MM);
    boolean ew = d.side().runsEastWest();
    Box box = ew ? new Box(a0, a1, b0, b1, z0, z1) : new Box(b0, b1, a0, a1, z0, z1);
    return new Solid(Frame.WORLD, box);
  }

  private static long nm(double mm) {
    return Math.round(mm * 1e6);
  }

  private static double face(PlacedRoom room, Side side) {
    var x = room.outline().xRange();
    var y = room.outline().yRange();
    return switch (side) {
          case NORTH -> y.hi();
          case SOUTH -> y.lo();
          case EAST -> x.hi();
          case WEST -> x.lo();
        }
        / 1e6;
  }

  /** World millimetres between which something of a width lies that was taped along a face. */
  private static double[] along(PlacedRoom room, Side side, Along from, double width) {
    boolean ew = side.runsEastWest();
    double at = face(room, side);
    double[] ends =
        room.outline().corners().stream()
            .filter(c -> Math.abs((ew ? c.y() : c.x()) / 1e6 - at) < SLACK_MM)
            .mapToDouble(c -> (ew ? c.x() : c.y()) / 1e6)
            .sorted()
            .toArray();
    double off = from.distance().value().toMm();
    boolean low = from.from() == Side.WEST || from.from() == Side.SOUTH;
    double lo = low ? ends[0] + off : ends[ends.length - 1] - off - width;
    return new double[] {lo, lo + width};
  }

  private static boolean isBehind(Walk.At at, Dormer d, PlacedRoom room) {
    double face = face(room, d.side());
    boolean up = d.side() == Side.NORTH || d.side() == Side.EAST;
    return at.spans().stream()
        .map(s -> d.side().runsEastWest() ? s.a().y() : s.a().x())
        .anyMatch(v -> up ? v > face : v < face);
  }

  /** A door in a knee wall of that eave on the same side of the dormer. */
  private static boolean hasDoor(Walk.At at, Roof roof, Dormer d, Evidence evidence) {
    PlacedRoom room = room(d.room().orElseThrow(), evidence);
    double mid = middle(along(room, d.side(), d.from(), d.width().value().toMm()));
    House house = evidence.house().framed().placed().house();
    return house.openings().stream()
        .filter(o -> o.kind() != Opening.Kind.WINDOW)
        .flatMap(
            o ->
                o.wall().face().filter(f -> isKnee(roof, f, d.side())).stream()
                    .flatMap(f -> Stream.of(middle(o, room(f.room(), evidence), f.side()))))
        .anyMatch(door -> at.spans().stream().allMatch(s -> same(s, d, mid, door)));
  }

  private static boolean same(Span s, Dormer d, double mid, double door) {
    boolean ew = d.side().runsEastWest();
    return Stream.of(s.a(), s.b()).allMatch(p -> (ew ? p.x() : p.y()) < mid == door < mid);
  }

  private static boolean isKnee(Roof roof, FaceRef f, Side side) {
    return f.side() == side
        && roof.knees().stream()
            .anyMatch(k -> k.face().room().equals(f.room()) && k.face().side() == side);
  }

  private static double middle(Opening o, PlacedRoom room, Side side) {
    return middle(along(room, side, o.along(), o.width().value().toMm()));
  }

  private static double middle(double[] ends) {
    return (ends[0] + ends[1]) / 2;
  }

  private static PlacedRoom room(String name, Evidence evidence) {
    return evidence.house().framed().placed().getRoom(name);
  }
}
