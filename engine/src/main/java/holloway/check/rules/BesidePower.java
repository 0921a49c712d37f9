package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.house.Obstacle;
import holloway.house.Side;
import holloway.limits.Figure;
import holloway.limits.PowerWiring;
import holloway.limits.RuleKey;
import holloway.limits.Verdict;
import holloway.limits.WiringFigures;
import holloway.plan.Plan;
import holloway.survey.OnWall;
import holloway.survey.WallNames;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** B14, B15, A8-14: cable that runs beside a stated power cable in a wall. */
final class BesidePower implements PlanRule {
  @Override
  public String id() {
    return "beside-power";
  }

  @Override
  public String about() {
    return "An upright leg beside power cable that the house file states in the same wall. Beside"
        + " sheathed cable the distance is practice; sources differ from 50 to 300 mm.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice; standard (UK)", WiringFigures.BESIDE_POWER.cited(), "50 mm (2 in)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Obstacle o : finished.placed().house().obstacles()) {
      if (o.kind() == Obstacle.Kind.POWER && o.inWall().isPresent()) {
        Obstacle.InWall at = o.inWall().get();
        finished
            .placed()
            .findSpot(at.face(), at.along(), at.bottom().value().nm())
            .flatMap(spot -> nearest(spot, at, finished))
            .ifPresent(out::add);
      }
    }
    return out;
  }

  private Optional<Finding> nearest(OnWall spot, Obstacle.InWall at, Finished finished) {
    boolean onward = at.along().from() == Side.WEST || at.along().from() == Side.SOUTH;
    long w = at.width().value().nm();
    Interval s =
        onward ? new Interval(spot.s(), spot.s() + w) : new Interval(spot.s() - w, spot.s());
    long high = at.top().value().nm() - at.bottom().value().nm();
    Interval z = new Interval(spot.z(), spot.z() + high);
    for (Legs r : Legs.of(finished.plan())) {
      for (Plan.PlanStep step : r.run().steps()) {
        Optional<Length> gap = inThisWall(step, spot, finished) ? gap(step, spot, s, z) : none();
        Length wanted = wanted(finished).length();
        Optional<Verdict> v =
            gap.map(g -> finished.pack().fromPower(g, PowerWiring.SHEATHED, wanted));
        if (v.isPresent() && !v.get().allowed()) {
          return Optional.of(finding(r, step, v.get(), gap.get(), wanted(finished), spot));
        }
      }
    }
    return Optional.empty();
  }

  private static Figure wanted(Finished finished) {
    return finished.figure(RuleKey.BESIDE_POWER, WiringFigures.BESIDE_POWER);
  }

  private static Optional<Length> none() {
    return Optional.empty();
  }

  private static boolean inThisWall(Plan.PlanStep step, OnWall spot, Finished finished) {
    return step.kind().equals("leg")
        && finished
            .house()
            .findHollow(step.id())
            .filter(Hollow::blind)
            .map(h -> h.owner().equals(spot.wall().id()))
            .orElse(false);
  }

  /** From the nearest upright stretch that passes the power cable's height. */
  private static Optional<Length> gap(Plan.PlanStep step, OnWall spot, Interval s, Interval z) {
    long least = Long.MAX_VALUE;
    for (int i = 1; i < step.path().size(); i++) {
      Point3 a = spot.wall().frame().toLocal(step.path().get(i - 1));
      Point3 b = spot.wall().frame().toLocal(step.path().get(i));
      boolean passes = Math.max(a.z(), b.z()) > z.lo() && Math.min(a.z(), b.z()) < z.hi();
      if (a.x() == b.x() && passes) {
        least = Math.min(least, Math.max(0, Math.max(s.lo() - a.x(), a.x() - s.hi())));
      }
    }
    return least == Long.MAX_VALUE ? Optional.empty() : Optional.of(new Length(least));
  }

  private Finding finding(
      Legs r, Plan.PlanStep step, Verdict v, Length gap, Figure wanted, OnWall spot) {
    return say(
        v.severity(),
        Place.of(step.id(), Legs.start(step)),
        v.from(),
        false,
        new Said(
            r.run().id()
                + " runs beside power cable in the "
                + WallNames.at(spot.wall(), spot.s())
                + ".",
            Legs.number("%.0f mm", gap.toMm()),
            Legs.number("%.0f mm", wanted.length().toMm()),
            "Keep it "
                + (wanted.grade() == Figure.Grade.L ? wanted.said() : "50 mm (2 in)")
                + " or more away on the far side of the bay and cross at a right"
                + " angle; power off while you fish."));
  }
}
