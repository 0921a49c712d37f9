package holloway.check.rules;

import holloway.catalog.Cable;
import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.limits.FibreLoss;
import java.util.List;
import java.util.Optional;

/** A4: what a fibre run loses against what the optics for it bear. */
final class FibreBudget implements PlanRule {
  private static final int CONNECTORS = 2;

  @Override
  public String id() {
    return "fibre-budget";
  }

  @Override
  public String about() {
    return "A fibre run with a connector pair at each end against the loss that 10GBASE-SR bears on"
        + " OM4, 10GBASE-LR on single-mode fibre (os2, and outdoor-fibre, which is taken for it).";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "standard",
        source(FibreLoss.OM4).and(source(FibreLoss.SINGLE)),
        "2.9 dB on OM4, which 400 m and two pairs use up; 6.2 dB on single-mode fibre");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return Legs.of(finished.plan()).stream()
        .flatMap(r -> r.cable().flatMap(FibreBudget::glass).flatMap(g -> judge(r, g)).stream())
        .toList();
  }

  /** The glass of each jacket that can be asked for; none of copper. */
  static Optional<FibreLoss> glass(Cable cable) {
    if (!cable.fibre()) {
      return Optional.empty();
    }
    if (cable.kind().equals("om4")) {
      return Optional.of(FibreLoss.OM4);
    }
    return Optional.of(cable.outdoor() ? FibreLoss.SINGLE_OUTSIDE : FibreLoss.SINGLE);
  }

  private static Source source(FibreLoss g) {
    return g.budget().cited().noting("; loss a km: " + g.perKm().cited());
  }

  private Optional<Finding> judge(Legs r, FibreLoss glass) {
    double loss = glass.of(r.run().cableM(), CONNECTORS, 0);
    if (loss <= glass.budget().value() + 1e-9) {
      return Optional.empty();
    }
    Said said =
        new Said(
            "%s is %s of %s with two connector pairs."
                .formatted(r.run().id(), Legs.metres(r.run().cableM()), r.run().cable()),
            Legs.number("%.2f dB", loss),
            Legs.number("%.1f dB", glass.budget().value()),
            glass == FibreLoss.OM4
                ? "Use single-mode fibre (os2) for this run."
                : "Put a switch half-way, or take optics that reach further than 10GBASE-LR.");
    return Optional.of(say(Severity.STANDARD, r.place(), source(glass), true, said));
  }
}
