package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.limits.FibreLoss;
import holloway.limits.SignalFigures;
import java.util.List;

/** A4: what an OM4 run loses against what 10GBASE-SR bears. */
final class FibreBudget implements PlanRule {
  private static final int CONNECTORS = 2;
  private static final Source SOURCE =
      SignalFigures.BUDGET_OM4.cited().noting("; loss a km: " + SignalFigures.PER_KM.cited());

  @Override
  public String id() {
    return "fibre-budget";
  }

  @Override
  public String about() {
    return "An OM4 run with a connector pair at each end against the loss and the length that"
        + " 10GBASE-SR bears. Of single-mode fibre no figure was confirmed, so none is judged.";
  }

  @Override
  public Entry entry() {
    return new Entry("standard", SOURCE, "2.9 dB, which 400 m and two pairs use up");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return Legs.of(finished.plan()).stream()
        .filter(r -> r.run().cable().equals("om4"))
        .filter(r -> loss(r) > SignalFigures.BUDGET_OM4.value() + 1e-9)
        .map(this::finding)
        .toList();
  }

  private static double loss(Legs r) {
    return FibreLoss.of(r.run().cableM(), CONNECTORS, 0);
  }

  private Finding finding(Legs r) {
    return say(
        Severity.STANDARD,
        r.place(),
        SOURCE,
        true,
        new Said(
            "%s is %s of OM4 with two connector pairs."
                .formatted(r.run().id(), Legs.metres(r.run().cableM())),
            Legs.number("%.2f dB", loss(r)),
            Legs.number("%.1f dB", SignalFigures.BUDGET_OM4.value()),
            "Use single-mode fibre (os2) for this run."));
  }
}
