package holloway.hollow;

import holloway.framing.Arch;
import holloway.framing.Attic;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.CeilingSpot;
import holloway.house.Direction;
import holloway.house.Fill;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The part of an attic that a body gets to from its hatch, and the strip beyond it that an arm
 * still reaches. Figures of body, arm and tool are from experience.
 */
final class AtticSpace {
  /** Clear height over the chords that a body crawls through, millimetres. */
  static final double BODY_MM = 600;

  static final double ARM_MM = 600;

  /** Room over a plate for a right-angle drill, a short bit and the hand. */
  static final long DRILL = 330_000_000;

  static final double HATCH_LEAST_MM = 350;

  /** A body's place begins within this of a hatch or opening. */
  static final double NEAR_MM = 300;

  private final Framed framed;
  private final List<Refused> refused;

  AtticSpace(Framed framed, List<Refused> refused) {
    this.framed = framed;
    this.refused = refused;
  }

  /** One hollow per attic that has a way in. */
  List<Hollow> hollows() {
    List<Hollow> out = new ArrayList<>();
    Map<String, Polygon> bodies = new TreeMap<>();
    for (Attic a : framed.attics()) {
      Optional<Polygon> way =
          KneeAccess.isSide(a) ? KneeAccess.by(framed, a, body(a), refused) : byHatch(a);
      way.ifPresent(part -> bodies.put(a.id(), part));
    }
    throughOpenings(bodies);
    for (Attic a : framed.attics()) {
      if (bodies.containsKey(a.id())) {
        area(a, bodies.get(a.id())).ifPresent(area -> out.add(hollow(a, area)));
      } else if (hatches(a).isEmpty() && a.doors().isEmpty()) {
        refused.add(
            new Refused(
                "attic " + a.id(),
                highest(a).at(a.plateZ()),
                KneeAccess.isSide(a)
                    ? "no door or opening is stated in the knee wall before it"
                    : "no hatch or other way in is stated",
                "design: a stand needs a body-size way"));
      }
    }
    return out;
  }

  private Hollow hollow(Attic a, Polygon2 area) {
    long top = a.roofUnderside(highest(a));
    Box box =
        new Box(
            area.xRange().lo(),
            area.xRange().hi(),
            area.yRange().lo(),
            area.yRange().hi(),
            a.plateZ(),
            Math.max(top, a.chordTopZ() + 100_000_000));
    return new Hollow(
        "attic/" + a.id(),
        HollowKind.ATTIC,
        Frame.WORLD,
        box,
        Optional.of(area),
        Fill.EMPTY,
        a.id(),
        Optional.of("attic/" + a.id()));
  }

  /** The place of the outline nearest to the middle of the roof. */
  private static Point2 highest(Attic a) {
    Interval x = a.outline().xRange();
    Interval y = a.outline().yRange();
    return new Point2(
        Math.max(x.lo(), Math.min(x.hi(), a.roofline().xRange().mid())),
        Math.max(y.lo(), Math.min(y.hi(), a.roofline().yRange().mid())));
  }

  private Optional<Polygon2> area(Attic a, Polygon part) {
    return Spaces.largest(
        Neighbours.without(
            framed,
            Overlay.intersection(Spaces.grow(part, ARM_MM), a.outline().toJts()),
            a.chordTopZ()));
  }

  /** A body that got into one attic goes on through openings of its size. */
  private void throughOpenings(Map<String, Polygon> bodies) {
    List<AtticJoins.Place> places = AtticJoins.places(framed.attics(), refused);
    boolean more = true;
    while (more) {
      more = false;
      for (AtticJoins.Place p : places) {
        if (p.wide() / 1e6 >= HATCH_LEAST_MM && p.high() / 1e6 >= HATCH_LEAST_MM) {
          more |= pass(p.a(), p.inA(), p.b(), p.inB(), bodies);
          more |= pass(p.b(), p.inB(), p.a(), p.inA(), bodies);
        }
      }
    }
  }

  private boolean pass(
      Attic from, Point2 here, Attic to, Point2 there, Map<String, Polygon> bodies) {
    Polygon part = bodies.get(from.id());
    boolean gets =
        part != null && part.distance(Spaces.point(mm(here.x()), mm(here.y()))) <= NEAR_MM;
    if (!gets || bodies.containsKey(to.id())) {
      return false;
    }
    Optional<Polygon> on =
        Spaces.partAt(body(to), Spaces.point(mm(there.x()), mm(there.y())), NEAR_MM);
    on.ifPresent(o -> bodies.put(to.id(), o));
    return on.isPresent();
  }

  private static double mm(long nm) {
    return nm / 1e6;
  }

  private List<Roof.Hatch> hatches(Attic a) {
    return a.roof().hatches().stream().filter(h -> under(a, h)).toList();
  }

  private Optional<Polygon> byHatch(Attic a) {
    Geometry body = body(a);
    for (Roof.Hatch h : hatches(a)) {
      if (!framed.placed().getRoom(h.at().room()).room().standing().isOpen()) {
        refused.add(
            new Refused(
                "attic " + a.id() + " by the hatch in " + h.at().room(),
                spot(framed.placed().getRoom(h.at().room()), h.at()).at(a.plateZ()),
                "nobody works in that room",
                "as stated in the house file"));
        continue;
      }
      Point2 p = spot(framed.placed().getRoom(h.at().room()), h.at());
      boolean wide =
          h.eastWest().toMm() >= HATCH_LEAST_MM && h.northSouth().toMm() >= HATCH_LEAST_MM;
      Optional<Polygon> part =
          wide
              ? Spaces.partAt(body, Spaces.point(mm(p.x()), mm(p.y())), NEAR_MM)
              : Optional.empty();
      if (part.isPresent()) {
        return part;
      }
      refused.add(
          new Refused(
              "attic " + a.id() + " by the hatch in " + h.at().room(),
              p.at(a.plateZ()),
              wide
                  ? "less than " + Math.round(BODY_MM) + " mm of headroom over the hatch"
                  : "the hatch is too small for a body",
              "from experience; IRC R807.1 asks 22 x 30 in"));
    }
    return Optional.empty();
  }

  /** A hatch leads into the part of the attic that it lies under, and into no other. */
  private boolean under(Attic a, Roof.Hatch h) {
    return a.outline().contains(spot(framed.placed().getRoom(h.at().room()), h.at()));
  }

  /**
   * Where the headroom lets a body pass, less obstacles that stand in it with a body's half width
   * round them.
   */
  private Geometry body(Attic a) {
    Geometry outline = a.outline().toJts();
    Interval x = a.roofline().xRange();
    Interval y = a.roofline().yRange();
    double in = insetMm(a);
    boolean gableEw =
        (a.roof().shape() == Roof.Shape.GABLE || a.roof().shape() == Roof.Shape.ARCHED)
            && a.roof().ridge() == Direction.EAST_WEST;
    boolean hip = a.roof().shape() == Roof.Shape.HIP;
    Side down = a.roof().lowSide().orElse(Side.SOUTH);
    boolean shed = a.roof().shape() == Roof.Shape.SHED;
    boolean ns = hip || gableEw && !shed;
    boolean ew = hip || !gableEw && !shed;
    double x0 = x.lo() / 1e6 + (ew || shed && down == Side.WEST ? in : 0);
    double x1 = x.hi() / 1e6 - (ew || shed && down == Side.EAST ? in : 0);
    double y0 = y.lo() / 1e6 + (ns || shed && down == Side.SOUTH ? in : 0);
    double y1 = y.hi() / 1e6 - (ns || shed && down == Side.NORTH ? in : 0);
    boolean low = x1 <= x0 || y1 <= y0 || a.roof().shape() == Roof.Shape.FLAT && in > 0;
    List<Geometry> more = DormerSpace.bodies(a, BODY_MM);
    if (low && more.isEmpty()) {
      return Spaces.point(0, 0).buffer(0);
    }
    Geometry region =
        low ? more.remove(0) : Overlay.intersection(Spaces.rectangle(x0, y0, x1, y1), outline);
    if (!low) {
      more.addAll(Valleys.bodies(a, AtticJoins.places(framed.attics(), new ArrayList<>()), in));
    }
    if (low || !more.isEmpty()) {
      more.add(region);
      region = Overlay.intersection(Overlay.union(more), outline);
    }
    for (Member m : framed.members()) {
      boolean stands =
          (m.kind() == MemberKind.OBSTACLE || Neighbours.isTheirs(m))
              && m.frame().equals(Frame.WORLD)
              && m.box().z1() > a.chordTopZ() + 200_000_000
              && m.box().z0() < a.chordTopZ() + 900_000_000;
      if (stands) {
        region =
            Overlay.difference(
                region,
                Spaces.grow(
                    Spaces.rectangle(
                        m.box().x0() / 1e6,
                        m.box().y0() / 1e6,
                        m.box().x1() / 1e6,
                        m.box().y1() / 1e6),
                    200));
      }
    }
    return region;
  }

  /**
   * Distance from an eave at which the headroom first reaches {@link #BODY_MM} (trade-facts D23,
   * D24 turned round).
   */
  private static double insetMm(Attic a) {
    if (a.roof().shape() == Roof.Shape.ARCHED) {
      double chord = (a.chordTopZ() - a.plateZ()) / 1e6;
      return Arch.of(a).map(r -> r.first(BODY_MM + chord)).orElse(1e9);
    }
    Interval x = a.roofline().xRange();
    Interval y = a.roofline().yRange();
    boolean shed = a.roof().shape() == Roof.Shape.SHED;
    boolean east = shed && a.roof().lowSide().equals(Optional.of(Side.EAST));
    boolean north = shed && a.roof().lowSide().equals(Optional.of(Side.NORTH));
    long atEave =
        a.headroom(new Point2(east ? x.hi() + 1 : x.lo() - 1, north ? y.hi() + 1 : y.lo() - 1));
    double slope = a.roof().pitchRise() / (double) a.roof().pitchRun();
    double lacking = BODY_MM - atEave / 1e6;
    return lacking <= 0 ? 0 : slope <= 0 ? 1e9 : lacking / slope;
  }

  /** The world plan point of a spot taped from two sides of a room's box. */
  static Point2 spot(PlacedRoom room, CeilingSpot at) {
    Interval x = room.outline().xRange();
    Interval y = room.outline().yRange();
    long dx = at.eastWest().distance().value().nm();
    long dy = at.northSouth().distance().value().nm();
    return new Point2(
        at.eastWest().from() == Side.WEST ? x.lo() + dx : x.hi() - dx,
        at.northSouth().from() == Side.SOUTH ? y.lo() + dy : y.hi() - dy);
  }
}
