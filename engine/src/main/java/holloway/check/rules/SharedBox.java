package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.house.RulePlace;
import holloway.house.Thing;
import holloway.house.WallSpot;
import holloway.limits.WiringFigures;
import holloway.request.Outlet;
import holloway.request.Spot;
import holloway.survey.OnWall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** B16: data and power never share a box. */
final class SharedBox implements PlanRule {
  private static final Source SOURCE = WiringFigures.SHARED_BOX.from().noting("(A)(1)(c), (d)");

  /** Half a single-gang plate, F6: 70 by 114 mm. */
  private static final long HALF_WIDE = 35_000_000;

  private static final long HALF_HIGH = 57_000_000;

  @Override
  public String id() {
    return "shared-box";
  }

  @Override
  public String about() {
    return "An outlet of the plan on the same piece of wall as a socket, switch, light or panel:"
        + " data and power in one box need a barrier between them.";
  }

  @Override
  public Entry entry() {
    return new Entry("law (US), practice elsewhere", SOURCE, "boxes of their own, or a barrier");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Outlet o : finished.request().outlets()) {
      if (o.spots().size() == 1
          && o.spots().get(0) instanceof Spot.OnWall w
          && w.upTo().isEmpty()) {
        for (Thing t : finished.placed().house().things()) {
          overlap(o, w.at(), t, finished).ifPresent(out::add);
        }
      }
    }
    return out;
  }

  private Optional<Finding> overlap(Outlet o, WallSpot at, Thing t, Finished finished) {
    Optional<OnWall> data = spot(at, finished);
    Optional<OnWall> power = spot(t.at(), finished);
    if (!t.kind().isPower() || data.isEmpty() || power.isEmpty()) {
      return Optional.empty();
    }
    OnWall a = data.get();
    OnWall b = power.get();
    boolean same = a.wall().id().equals(b.wall().id()) && a.side() == b.side();
    long beside = Math.abs(a.s() - b.s()) - HALF_WIDE - Math.max(t.width().nm() / 2, HALF_WIDE);
    long over = Math.abs(a.z() - b.z()) - 2 * HALF_HIGH;
    return same && beside < 0 && over < 0
        ? Optional.of(finding(o, t, a, Math.max(beside, over), finished))
        : Optional.empty();
  }

  private static Optional<OnWall> spot(WallSpot at, Finished finished) {
    return finished.placed().findSpot(at.face(), at.along(), at.height().value().nm());
  }

  private Finding finding(Outlet o, Thing t, OnWall at, long gap, Finished finished) {
    return say(
        finished.place() == RulePlace.US ? Severity.LAW : Severity.PRACTICE,
        Place.of(o.name(), at.wall().world(at.s(), at.wall().core().mid(), at.z())),
        finished.power(SOURCE),
        true,
        new Said(
            "%s lies where a %s is.".formatted(o.name(), t.kind().words()),
            Legs.number("%.0f mm between the plates", gap / 1e6),
            "0 mm between the plates",
            "Move the outlet, or use a box with a barrier for data. The local code decides."));
  }
}
