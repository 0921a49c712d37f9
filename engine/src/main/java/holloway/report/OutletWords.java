package holloway.report;

import holloway.geometry.Point3;
import holloway.house.Side;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.request.Spot;
import holloway.schedule.OutletPlace;
import holloway.survey.Placed;
import holloway.survey.PlacedPorch;
import holloway.takeoff.OutletBoxes;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Where the cut-out of an outlet goes, in words. */
final class OutletWords {
  /** Movements below this are rounding. */
  private static final long LEAST_MOVE = 1_000_000;

  private final Placed placed;
  private final Request request;
  private final UnitWords units;
  private final OutletBoxes boxes;

  OutletWords(Plan plan, Request request, Placed placed, UnitWords units) {
    this.placed = placed;
    this.request = request;
    this.units = units;
    this.boxes = new OutletBoxes(plan, request, placed);
  }

  String text(OutletPlace p) {
    return where(p) + choice(p) + moved(p) + cables(p);
  }

  /** The wall or ceiling with its tape distances. */
  String where(OutletPlace p) {
    return switch (p.kind()) {
      case CABINET, WALL -> face(p) + ", " + ends(p) + ", " + height(p);
      case OUTSIDE -> porch(p).map(u -> under(p, u)).orElseGet(() -> onOuterWall(p));
      case CEILING ->
          "ceiling of the %s, %s from the west wall and %s from the south wall"
              .formatted(p.room(), units.tape(p.fromLow()), units.tape(p.fromHigh()));
    };
  }

  /** The porch that an outlet which hangs outside was wanted under. */
  private Optional<Spot.Under> porch(OutletPlace p) {
    int chosen = p.spot().orElse(1) - 1;
    return request.outlets().stream()
        .filter(o -> o.name().equals(p.name()) && chosen < o.spots().size())
        .map(o -> o.spots().get(chosen))
        .flatMap(s -> s instanceof Spot.Outside o ? o.under().stream() : Stream.empty())
        .findFirst();
  }

  /** Taped as it was asked for, so that nobody has to go inside for it. */
  private String under(OutletPlace p, Spot.Under u) {
    Optional<PlacedPorch> porch = PlacedPorch.find(placed, u.porch());
    if (porch.isEmpty() || p.at().isEmpty()) {
      return "outside, under the roof of porch " + u.porch();
    }
    Point3 at = porch.get().frame().toLocal(p.at().get());
    Point3 end = porch.get().frame().toLocal(porch.get().at(u.from().from(), 0, 0).at(0));
    return "outside, under the roof of porch %s, %s from its %s end, %s out from the wall"
        .formatted(
            u.porch(),
            units.tape(Math.abs(at.x() - end.x())),
            u.from().from().word(),
            units.tape(at.y()));
  }

  private String onOuterWall(OutletPlace p) {
    return "outside, on the other side of the "
        + face(p)
        + ", "
        + ends(p)
        + " of that face, "
        + height(p);
  }

  private String face(OutletPlace p) {
    int faces = placed.listFaces(p.room(), p.side()).size();
    String which =
        faces == 1
            ? ""
            : ", face %d of %d from the %s".formatted(p.face(), faces, low(p.side()).word());
    return p.side().word() + " wall of the " + p.room() + which;
  }

  private String ends(OutletPlace p) {
    Side low = low(p.side());
    return "%s from its %s end and %s from its %s end"
        .formatted(
            units.tape(p.fromLow()), low.word(), units.tape(p.fromHigh()), low.opposite().word());
  }

  private static Side low(Side side) {
    return side.runsEastWest() ? Side.WEST : Side.SOUTH;
  }

  private String height(OutletPlace p) {
    return units.tape(p.height()) + " over its floor";
  }

  private static String choice(OutletPlace p) {
    String range = p.ranged() ? "; the spot of your range that costs least" : "";
    return p.spot().isPresent() ? "; your choice number " + p.spot().getAsInt() + range : range;
  }

  private String moved(OutletPlace p) {
    if (Math.abs(p.moved()) < LEAST_MOVE) {
      return "";
    }
    if (p.kind() == OutletPlace.Kind.CEILING) {
      return "; moved " + units.tape(p.moved()) + " to miss what is over the board";
    }
    if (porch(p).isPresent()) {
      return "; moved %s along the wall, to miss a joist"
          .formatted(units.tape(Math.abs(p.moved())));
    }
    Side low = low(p.side());
    Side towards = p.moved() > 0 ? low.opposite() : low;
    return "; moved %s to the %s of where you asked, to miss a stud"
        .formatted(units.tape(Math.abs(p.moved())), towards.word());
  }

  private String cables(OutletPlace p) {
    if (p.kind() == OutletPlace.Kind.CABINET) {
      return "; the back of the cabinet";
    }
    if (!p.routed()) {
      return "; no cable of it has a route, so leave the wall closed";
    }
    TreeMap<String, Integer> kinds = new TreeMap<>();
    p.cables().forEach(c -> kinds.merge(c, 1, Integer::sum));
    StringBuilder out = new StringBuilder("; brings ");
    kinds.forEach((kind, n) -> out.append(n).append(' ').append(kind).append(", "));
    out.setLength(out.length() - 2);
    if (p.spares() > 0) {
      out.append(" (").append(p.spares()).append(" of them spare, left behind the plate)");
    }
    boxes.of(p.name()).forEach(b -> out.append("; ").append(box(b)));
    return out.toString();
  }

  /** What holds the plate, as the list of what to buy has it. */
  private static String box(OutletBoxes.Box b) {
    String gang = b.two() ? "double-gang" : "single-gang";
    if (b.item().isEmpty()) {
      return "in the box that hangs there, no new one";
    }
    return switch (b.item().get()) {
      case RING_SHALLOW -> "one shallow " + gang + " ring";
      case BOX_MASONRY -> "one " + gang + " box set into the masonry";
      case BOX_SURFACE -> "one " + gang + " box on the wall";
      default -> "one " + gang + " ring";
    };
  }
}
