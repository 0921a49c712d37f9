package holloway.schedule;

import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.plan.Plan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** From which of its two ends a hole is made: cards, drawings and pilots must not disagree. */
final class DrillSide {
  private final HollowHouse house;

  /** The hollow behind each opening that a person reaches into, by the name that stands have. */
  private final Map<String, String> behind = new TreeMap<>();

  DrillSide(Plan plan, HollowHouse house) {
    this.house = house;
    plan.runs().forEach(this::ends);
    house.accesses().forEach(a -> behind.put(a.id(), a.hollow()));
  }

  /** Behind an outlet's cut-out lies the hollow that its cables end in. */
  private void ends(Plan.PlannedRun run) {
    List<String> legs =
        run.steps().stream().filter(s -> s.kind().equals("leg")).map(Plan.PlanStep::id).toList();
    if (!legs.isEmpty()) {
      behind.putIfAbsent(run.from(), legs.get(0));
      behind.putIfAbsent(run.to(), legs.get(legs.size() - 1));
    }
  }

  /**
   * The drill stands where the hole's stand is, or reaches in through the opening that is; else at
   * the side that is not blind.
   */
  boolean isA(Plan.PlannedHole hole, Site site) {
    Optional<String> reached = Optional.ofNullable(behind.get(hole.stand()));
    if (reached.filter(h -> h.equals(site.hollowA()) != h.equals(site.hollowB())).isPresent()) {
      return reached.get().equals(site.hollowA());
    }
    if (stand(site.hollowA()).equals(Optional.of(hole.stand()))) {
      return true;
    }
    return !stand(site.hollowB()).equals(Optional.of(hole.stand()))
        && (!blind(site, true) || blind(site, false));
  }

  private Optional<String> stand(String hollow) {
    return house.findHollow(hollow).flatMap(Hollow::stand);
  }

  /** Whether nobody stands or sees in the hollow at that end. */
  boolean blind(Site site, boolean atA) {
    return house.findHollow(atA ? site.hollowA() : site.hollowB()).map(Hollow::blind).orElse(true);
  }
}
