package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.limits.PowerOverCable;
import holloway.limits.SignalFigures;
import holloway.plan.Plan;
import holloway.request.Outlet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A5: what is left of the power that an outlet asks for, over the cable that it gets. */
final class PowerAtTheFarEnd implements PlanRule {
  private static final Source SOURCE =
      SignalFigures.LOOP_OHMS.cited().and(SignalFigures.PAIR_OHMS.cited());

  @Override
  public String id() {
    return "power-at-the-far-end";
  }

  @Override
  public String about() {
    return "Where an outlet asks for power over the cable: the loop of a pairset, and the volts and"
        + " watts that reach the far end; and an outlet with no copper to carry it.";
  }

  @Override
  public Entry entry() {
    return new Entry("standard", SOURCE, "12.5 ohm a pairset, two conductors each way");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Outlet o : finished.request().outlets()) {
      powerClass(o.power()).ifPresent(c -> judge(o, c, finished.plan(), out));
    }
    return out;
  }

  /** "class 4"; empty for none and for anything else. */
  static Optional<PowerOverCable> powerClass(String power) {
    return power.matches("class [1-8]")
        ? PowerOverCable.ofClass(power.charAt(power.length() - 1) - '0')
        : Optional.empty();
  }

  private void judge(Outlet o, PowerOverCable c, Plan plan, List<Finding> out) {
    List<Legs> runs =
        Legs.of(plan).stream()
            .filter(r -> r.run().from().equals(o.name()) || r.run().to().equals(o.name()))
            .toList();
    if (!runs.isEmpty() && runs.stream().noneMatch(Legs::copperPairs)) {
      out.add(noCopper(runs.get(0), c));
    }
    for (Legs r : runs) {
      double ohms = PowerOverCable.pairsetOhms(r.run().cableM());
      if (r.copperPairs() && ohms > SignalFigures.LOOP_OHMS.value()) {
        out.add(tooFar(r, c, ohms));
      }
    }
  }

  private Finding noCopper(Legs r, PowerOverCable c) {
    return say(
        Severity.STANDARD,
        r.place(),
        SOURCE,
        true,
        new Said(
            "%s asks for power of class %d and no copper of four pairs goes there."
                .formatted(r.run().to(), c.number()),
            "0 W",
            Legs.number("%.1f W", c.device()),
            "Add a cat6 cable to that outlet, or power the device from a socket."));
  }

  private Finding tooFar(Legs r, PowerOverCable c, double ohms) {
    double m = r.run().cableM();
    String what =
        "%s is %s long: of class %d %s and %s reach the far end."
            .formatted(
                r.run().id(),
                Legs.metres(m),
                c.number(),
                Legs.number("%.1f W", c.wattsAtFar(m)),
                Legs.number("%.1f V", c.voltsAtFar(m)));
    return say(
        Severity.STANDARD,
        r.place(),
        SOURCE,
        true,
        new Said(
            what,
            Legs.number("%.2f ohm", ohms),
            Legs.number("%.1f ohm", SignalFigures.LOOP_OHMS.value()),
            "Take a shorter way, or power the device where it is."));
  }
}
