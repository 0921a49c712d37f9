package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.house.Conduit;
import holloway.limits.CablingFigures;
import holloway.limits.PullForce;
import holloway.plan.FishPull;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** E16 to E20, A2-1, A2-2: the pull on one cable along each fish. */
public final class PullTension implements PlanRule {
  private static final Source SOURCE =
      CablingFigures.PULL_COPPER
          .cited()
          .and(Source.anywhere("capstan equation, friction 0.5 (dry, generic)"));

  /**
   * The pull that one fish needs.
   *
   * @param newtons at the far end
   */
  public record Pull(String run, int fish, double newtons, double most, Place place) {}

  /** Every fish of a plan with its pull, in the order of the plan. */
  public static List<Pull> list(Plan plan, List<Conduit> tubes) {
    List<Pull> out = new ArrayList<>();
    for (Legs r : Legs.of(plan)) {
      for (List<Plan.PlanStep> fish : r.fishes()) {
        Place at = Place.of(r.run().id(), Legs.start(fish.get(0)));
        int number = fish.get(0).fish().orElse(0);
        double n = FishPull.of(fish, r.run().cable(), tubes).newtons();
        out.add(new Pull(r.run().id(), number, n, PullForce.most(r.fibre()), at));
      }
    }
    return out;
  }

  @Override
  public String id() {
    return "pull-tension";
  }

  @Override
  public String about() {
    return "The pull on each cable along each fish, from its weight, the slope, friction and every"
        + " turn, against what the cable bears.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "standard", SOURCE, "111 N (25 lbf) on four pairs, 222 N (50 lbf) on indoor fibre");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return list(finished.plan(), finished.placed().house().conduits()).stream()
        .filter(p -> p.newtons() > p.most())
        .map(this::finding)
        .toList();
  }

  private Finding finding(Pull p) {
    return say(
        Severity.STANDARD,
        p.place(),
        SOURCE,
        true,
        new Said(
            "Fish %d of %s pulls hard.".formatted(p.fish(), p.run()),
            Legs.number("%.0f N", p.newtons()),
            Legs.number("%.0f N", p.most()),
            "Open the way in between and pull in two goes, or use lubricant."));
  }
}
