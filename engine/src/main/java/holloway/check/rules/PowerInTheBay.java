package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.geometry.Box;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.house.RulePlace;
import holloway.house.Thing;
import holloway.plan.Plan;
import holloway.survey.OnWall;
import holloway.survey.WallNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A socket, switch, light or panel seen on a wall: a power cable probably lies in the bay behind
 * it.
 */
final class PowerInTheBay implements PlanRule {
  /** A8-14, a weak source. */
  private static final String FLUORESCENT =
      "If the light is a fluorescent one keep 300 mm (12 in) from it (common practice, no published"
          + " source). ";

  private static final Source SOURCE = Source.us("NEC 800.133(A)(2) and its exception");

  @Override
  public String id() {
    return "power-in-the-bay";
  }

  @Override
  public String about() {
    return "A run through a bay with a socket, switch, light or panel on it keeps away from the power"
        + " cable that is probably there.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", SOURCE, "50 mm (2 in)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    TreeMap<String, Finding> byBay = new TreeMap<>();
    for (Plan.PlannedRun run : finished.plan().runs()) {
      for (Plan.PlanStep s : run.steps()) {
        Optional<Hollow> bay =
            s.kind().equals("leg") ? finished.house().findHollow(s.id()) : Optional.empty();
        if (bay.isPresent()
            && bay.get().blind()
            && !inATube(bay.get())
            && !byBay.containsKey(s.id())) {
          powerIn(finished, bay.get())
              .ifPresent(t -> byBay.put(s.id(), finding(bay.get(), t, run, s, finished)));
        }
      }
    }
    return new ArrayList<>(byBay.values());
  }

  private static Optional<Thing> powerIn(Finished finished, Hollow bay) {
    for (Thing t : finished.placed().house().things()) {
      if (t.kind().isPower()) {
        Optional<OnWall> at =
            finished.placed().findSpot(t.at().face(), t.at().along(), t.at().height().value().nm());
        if (at.isPresent() && at.get().wall().isFramed() && behind(at.get(), bay)) {
          return Optional.of(t);
        }
      }
    }
    return Optional.empty();
  }

  /** What lies in a tube is parted from power by its wall; where an old cable runs is not known. */
  private static boolean inATube(Hollow bay) {
    return bay.kind() == HollowKind.CONDUIT || bay.kind() == HollowKind.OLD_CABLE;
  }

  private static boolean behind(OnWall at, Hollow bay) {
    Point3 p = bay.frame().toLocal(at.wall().world(at.s(), at.wall().core().mid(), at.z()));
    Box b = bay.clear();
    return b.contains(p, 0);
  }

  private Finding finding(
      Hollow bay, Thing t, Plan.PlannedRun run, Plan.PlanStep step, Finished finished) {
    boolean us = finished.place() == RulePlace.US;
    String wall =
        finished
            .wall(bay.owner())
            .map(w -> WallNames.at(w, w.frame().toLocal(step.path().get(0)).x()))
            .orElse("wall");
    return say(
        Severity.PRACTICE,
        Place.of(bay.id(), step.path().get(0)),
        finished.power(SOURCE),
        false,
        new Said(
            "A %s in the %s stands on a bay of the %s that %s goes through: a power cable is probably in it."
                .formatted(t.kind().words(), t.at().face().room(), wall, run.id()),
            "not known where in the bay",
            "50 mm (2 in) apart",
            "Switch that circuit off and prove it dead before boring; keep the data cable 50 mm"
                + " (2 in) from it and cross it at a right angle. "
                + (us
                    ? "Beside sheathed cable that distance is practice, beside single power"
                        + " conductors it is the code's. "
                    : "")
                + (t.kind() == Thing.Kind.LIGHT ? FLUORESCENT : "")
                + "The local code decides."));
  }
}
