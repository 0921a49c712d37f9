package holloway.check;

import holloway.hollow.Hollow;
import holloway.hollow.Site;
import holloway.hollow.Stand;
import holloway.house.Opening;
import holloway.plan.Plan;
import holloway.request.Spot;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import java.util.List;
import java.util.Optional;

/** Whoever lays a leg or makes a hole stands somewhere, and getting there is among the works. */
final class StandRule implements Rule {
  /** Higher over the ground than this nobody fits a box without a ladder; from experience. */
  private static final double REACHED_MM = 2400 + 1;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Walk.At at : evidence.steps()) {
      if (at.isLeg()) {
        evidence
            .hollow(at)
            .flatMap(Hollow::stand)
            .ifPresent(s -> judgeLeg(at, s, evidence, charge));
      }
    }
    evidence.plan().holes().forEach(h -> judgeHole(h, evidence, charge));
    for (Plan.PlannedRun run : evidence.plan().runs()) {
      List<Walk.At> steps = Walk.of(run);
      if (steps.stream().allMatch(s -> s.step().path().size() >= 2) && !steps.isEmpty()) {
        judgeEnd(run.from(), steps.get(0).start(), evidence, charge);
        judgeEnd(run.to(), steps.get(steps.size() - 1).end(), evidence, charge);
      }
    }
  }

  /** A box on the outside of a wall, higher than hands reach it from the ground. */
  private void judgeEnd(String end, Mm at, Evidence evidence, Charge charge) {
    boolean outside =
        evidence.request().outlets().stream()
            .filter(o -> o.name().equals(end))
            .flatMap(o -> o.spots().stream())
            .anyMatch(s -> s instanceof Spot.Outside o && o.under().isEmpty());
    boolean setUp = evidence.stand("ladder").filter(l -> !evidence.zoneOpened(l)).isEmpty();
    if (!outside || setUp) {
      return;
    }
    double ground = ground(evidence.house().framed().placed()) / 1e6;
    if (at.z() > ground + REACHED_MM) {
      charge.plan(
          end,
          "%s is fitted from a ladder, %.0f mm over the ground, but no work sets one up",
          end,
          at.z() - ground);
    }
  }

  /** The floor of the first level that a door leads out of, nanometres; else the lowest. */
  private static long ground(Placed placed) {
    return placed.levels().stream()
        .filter(
            l ->
                placed.walls().stream()
                    .filter(w -> w.isOuter() && w.level().equals(l.name()))
                    .flatMap(w -> w.openings().stream())
                    .anyMatch(o -> o.opening().kind() == Opening.Kind.DOOR))
        .mapToLong(PlacedLevel::floorZ)
        .findFirst()
        .orElse(placed.levels().get(0).floorZ());
  }

  private void judgeLeg(Walk.At at, String stand, Evidence evidence, Charge charge) {
    Optional<Stand> known = evidence.stand(stand);
    if (known.isEmpty()) {
      charge.step(at, "is laid from '%s', a stand the house does not have", stand);
    } else if (!known.get().zone().isEmpty() && !evidence.zoneOpened(known.get())) {
      charge.step(
          at, "is laid from %s, but no work sets up the zone %s", stand, known.get().zone());
    }
  }

  private void judgeHole(Plan.PlannedHole hole, Evidence evidence, Charge charge) {
    if (hole.works().isEmpty()) {
      charge.plan(hole.id(), "has no work: nobody bores it");
    }
    for (String work : hole.works()) {
      if (evidence.work(work).isEmpty()) {
        charge.plan(hole.id(), "needs work %s, which the plan does not open", work);
      }
    }
    Optional<Site> site = evidence.house().findSite(hole.id());
    if (site.isPresent() && !reachable(hole, site.get(), evidence)) {
      charge.plan(
          hole.id(),
          "is bored from '%s', from where neither %s nor %s is reached",
          hole.stand(),
          site.get().hollowA(),
          site.get().hollowB());
    }
    evidence
        .stand(hole.stand())
        .filter(s -> !s.zone().isEmpty() && !evidence.zoneOpened(s))
        .ifPresent(
            s ->
                charge.plan(
                    hole.id(),
                    "is bored from %s, but no work sets up the zone %s",
                    s.id(),
                    s.zone()));
  }

  /** From the stand of a hollow at either end, or through an opening that the hole's works make. */
  private boolean reachable(Plan.PlannedHole hole, Site site, Evidence evidence) {
    for (String id : List.of(site.hollowA(), site.hollowB())) {
      Optional<String> stand = evidence.house().findHollow(id).flatMap(Hollow::stand);
      boolean ladder = hole.stand().equals("ladder") && stand.equals(Optional.of("outside"));
      if (stand.equals(Optional.of(hole.stand())) || ladder) {
        return true;
      }
    }
    return hole.works().stream().flatMap(w -> evidence.work(w).stream()).anyMatch(Evidence::opens);
  }
}
