package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.hollow.HollowKind;
import holloway.house.RulePlace;
import holloway.plan.Plan;
import java.util.List;
import java.util.Optional;

/** J14: bare-knob wiring may still be live in the bays and attics that the plan goes through. */
final class OldWiring implements PlanRule {
  private static final int BEFORE = 1950;

  @Override
  public String id() {
    return "old-wiring";
  }

  @Override
  public String about() {
    return "A fish through closed bays, or cable in an attic, of a US house old enough for"
        + " knob-and-tube wiring.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", Source.PRACTICE, "built before 1950");
  }

  @Override
  public List<Finding> find(Finished finished) {
    int built = finished.placed().house().built().value();
    if (finished.place() != RulePlace.US || built >= BEFORE) {
      return List.of();
    }
    Optional<Plan.PlanStep> first =
        finished.plan().runs().stream()
            .flatMap(r -> r.steps().stream())
            .filter(s -> s.fish().isPresent() || Legs.isIn(s, HollowKind.ATTIC))
            .findFirst();
    return first.map(s -> List.of(finding(s, built))).orElse(List.of());
  }

  private Finding finding(Plan.PlanStep s, int built) {
    return say(
        Severity.PRACTICE,
        Place.of(s.id(), Legs.start(s)),
        Source.PRACTICE,
        false,
        new Said(
            "The house is of %d: wires on knobs may still be live in its bays.".formatted(built),
            "built " + built,
            "built 1950 or later",
            "Have a licensed electrician look before anything is pushed in blind; touch none of them"
                + " and bury none under insulation; power off while you fish."));
  }
}
