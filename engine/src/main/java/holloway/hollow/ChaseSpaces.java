package holloway.hollow;

import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Along;
import holloway.house.Chase;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.Side;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Upright shafts, one hollow per storey they pass. A flue is never offered. */
final class ChaseSpaces {
  /**
   * Half of a shaft that its pipe or duct is taken to fill, as the other half stays free (from
   * experience).
   */
  record Shaft(Chase chase, Box plan, List<Segment> segments) {}

  record Segment(PlacedLevel level, Hollow hollow) {}

  private final Framed framed;
  private final List<Refused> refused;

  ChaseSpaces(Framed framed, List<Refused> refused) {
    this.framed = framed;
    this.refused = refused;
  }

  List<Shaft> shafts() {
    List<Shaft> out = new ArrayList<>();
    for (Chase c : framed.placed().house().chases()) {
      Optional<Box> plan = plan(c);
      if (c.contents().contains(Chase.Contents.FLUE)) {
        refused.add(
            new Refused(
                "chase " + c.name(),
                new Point3(0, 0, 0),
                "it holds a flue: no cable goes there",
                "IRC R302.11 (5), good practice everywhere"));
      } else if (plan.isEmpty()) {
        refused.add(
            new Refused(
                "chase " + c.name(),
                new Point3(0, 0, 0),
                "no wall stands at " + c.beside(),
                "house file"));
      } else {
        out.add(shaft(c, plan.get()));
      }
    }
    return out;
  }

  /** The clear plan rectangle as a world box (z unused). */
  private Optional<Box> plan(Chase c) {
    Placed placed = framed.placed();
    long along = c.alongFace().value().nm();
    Along near = c.along().orElseGet(() -> centred(c, along));
    Along mid =
        new Along(near.from(), Fact.assumed(new Length(near.distance().value().nm() + along / 2)));
    Optional<OnWall> spot = placed.findSpot(c.beside(), mid, 0);
    return spot.map(s -> box(c, s, along));
  }

  private Along centred(Chase c, long along) {
    var faces = framed.placed().listFaces(c.beside().room(), c.beside().side());
    var f = faces.get(Math.min(c.beside().ordinal(), faces.size()) - 1);
    long length = f.start().at(0).distanceTo(f.end().at(0));
    Side from = c.beside().side().runsEastWest() ? Side.WEST : Side.SOUTH;
    return new Along(from, Fact.assumed(new Length(Math.max(0, (length - along) / 2))));
  }

  private static Box box(Chase c, OnWall s, long along) {
    long away = c.awayFromFace().value().nm();
    boolean roomOnHigh = s.side() == 1;
    boolean towardsHigh = roomOnHigh == c.inside();
    long face = c.inside() == roomOnHigh ? s.wall().thickness() : 0;
    long t0 = towardsHigh ? face : face - away;
    Point3 p = s.wall().world(s.s() - along / 2, t0, 0);
    Point3 q = s.wall().world(s.s() + along / 2, t0 + away, 0);
    return new Box(
        Math.min(p.x(), q.x()),
        Math.max(p.x(), q.x()),
        Math.min(p.y(), q.y()),
        Math.max(p.y(), q.y()),
        0,
        0);
  }

  private Shaft shaft(Chase c, Box plan) {
    List<Segment> segments = new ArrayList<>();
    List<PlacedLevel> levels = framed.placed().levels();
    PlacedLevel from = framed.placed().getLevel(c.from());
    boolean attic = c.to().equals("attic");
    int to = attic ? Integer.MAX_VALUE : framed.placed().getLevel(c.to()).order();
    for (PlacedLevel l : levels) {
      if (l.part() == from.part() && l.order() >= from.order() && l.order() <= to) {
        Interval z = new Interval(l.floorZ(), Math.max(l.floorZ() + 1, top(l, plan)));
        Box box = new Box(plan.x0(), plan.x1(), plan.y0(), plan.y1(), z.lo(), z.hi());
        segments.add(
            new Segment(
                l,
                new Hollow(
                    "chase/" + c.name() + "/" + l.name(),
                    HollowKind.CHASE,
                    Frame.WORLD,
                    box,
                    Optional.empty(),
                    Fill.EMPTY,
                    "chase/" + c.name(),
                    Optional.empty())));
      }
    }
    return new Shaft(c, plan, segments);
  }

  /**
   * Up to the underside of the joists or concrete above, or to the top of the plates under an
   * attic.
   */
  private long top(PlacedLevel l, Box plan) {
    Point2 p = new Point2((plan.x0() + plan.x1()) / 2, (plan.y0() + plan.y1()) / 2);
    for (var d : framed.decks()) {
      if (framed.placed().getLevel(d.level()).isNextOver(l) && d.outline().contains(p)) {
        return d.frame().origin().z() + d.joistZ().lo();
      }
    }
    for (Member m : framed.members()) {
      boolean over =
          m.kind() == MemberKind.SLAB
              && m.box().z0() > l.floorZ() + 1
              && m.box().x().contains(p.x())
              && m.box().y().contains(p.y());
      if (over && m.box().z0() < l.ceilingZ() + 1_000_000_000) {
        return m.box().z0();
      }
    }
    return framed.attics().stream()
        .filter(a -> a.outline().contains(p))
        .mapToLong(a -> a.plateZ())
        .max()
        .orElse(l.ceilingZ());
  }
}
