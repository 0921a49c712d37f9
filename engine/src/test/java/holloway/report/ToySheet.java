package holloway.report;

import holloway.pipeline.Toy;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.takeoff.TakeOff;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the text of a plan is made from, for the toy cottage. */
final class ToySheet {
  private ToySheet() {}

  static Sheet sheet(Placed placed, boolean steps, UnitSystem system, Ink ink) {
    Plan plan =
        TakeOff.of(Toy.bare(), Toy.request(), placed)
            .withFindings(
                List.of(
                    new Plan.FindingLine("b", "practice", Optional.empty(), "src", "Label it."),
                    new Plan.FindingLine("a", "law", Optional.empty(), "code", "Seal it.")))
            .withUnrouted(List.of(new Plan.Unrouted("spare-1", List.of("no way into the attic"))));
    return new Sheet(
        plan, placed, Toy.request(), Map.of(Toy.card().holeId(), Toy.card()), steps, system, ink);
  }

  static String metric() {
    return PlanText.of(sheet(Toy.placed(), false, UnitSystem.METRIC, Ink.PLAIN));
  }
}
