package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.limits.PowerOverCable;
import holloway.limits.SignalFigures;
import holloway.plan.Plan;
import holloway.request.Outlet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A5: many powered cables in one hole warm each other. */
final class BundleHeat implements PlanRule {
  @Override
  public String id() {
    return "bundle-heat";
  }

  @Override
  public String about() {
    return "More than 24 cables that carry power through one hole: the inner ones get warm, and warm"
        + " cable loses more. The heat of each is worked out from its class.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", SignalFigures.BUNDLE.cited(), "24 powered cables");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Plan.PlannedHole h : finished.plan().holes()) {
      List<PowerOverCable> powered =
          h.runs().stream().flatMap(r -> power(r, finished).stream()).toList();
      if (powered.size() > SignalFigures.BUNDLE.value()) {
        out.add(finding(h, powered));
      }
    }
    return out;
  }

  private static Optional<PowerOverCable> power(String run, Finished finished) {
    Optional<Legs> legs =
        Legs.of(finished.plan()).stream().filter(r -> r.run().id().equals(run)).findFirst();
    return legs.filter(Legs::copperPairs)
        .flatMap(r -> outlet(r.run(), finished))
        .flatMap(o -> PowerAtTheFarEnd.powerClass(o.power()));
  }

  private static Optional<Outlet> outlet(Plan.PlannedRun run, Finished finished) {
    return finished.request().outlets().stream()
        .filter(o -> o.name().equals(run.to()) || o.name().equals(run.from()))
        .findFirst();
  }

  private Finding finding(Plan.PlannedHole h, List<PowerOverCable> powered) {
    double heat = powered.stream().mapToDouble(PowerOverCable::heatPerMetre).sum();
    return say(
        Severity.PRACTICE,
        Place.of(h.id(), h.at()),
        SignalFigures.BUNDLE.cited(),
        false,
        new Said(
            "%d powered cables go through %s and give off up to %s."
                .formatted(powered.size(), h.label(), Legs.number("%.1f W a metre", heat)),
            powered.size() + " cables",
            Legs.number("%.0f cables", SignalFigures.BUNDLE.value()),
            "Divide them over two ways, or take cable with thicker conductors."));
  }
}
