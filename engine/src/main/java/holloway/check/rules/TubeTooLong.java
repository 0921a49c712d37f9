package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.house.Conduit;
import holloway.limits.SignalFigures;
import java.util.List;

/** A6-11, A6-12: bends and length of a tube between two places where cable is pulled. */
final class TubeTooLong implements PlanRule {
  @Override
  public String id() {
    return "tube-too-long";
  }

  @Override
  public String about() {
    return "An existing tube that the plan pulls cable through, its quarter turns and its length"
        + " between two boxes.";
  }

  @Override
  public Entry entry() {
    return new Entry("standard", SignalFigures.TUBE_BENDS.cited(), "two quarter turns and 30 m");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return finished.placed().house().conduits().stream()
        .filter(c -> c.kind() == Conduit.Kind.TUBE && isUsed(c, finished))
        .filter(
            c ->
                c.bends() > SignalFigures.TUBE_BENDS.value()
                    || c.length().value().compareTo(SignalFigures.TUBE_LONG.length()) > 0)
        .map(this::finding)
        .toList();
  }

  private static boolean isUsed(Conduit c, Finished finished) {
    return Legs.of(finished.plan()).stream()
        .flatMap(r -> r.in(HollowKind.CONDUIT).stream())
        .anyMatch(s -> s.id().equals("conduit/" + c.name()));
  }

  private Finding finding(Conduit c) {
    double m = c.length().value().nm() / 1e9;
    return say(
        Severity.STANDARD,
        Place.of("conduit/" + c.name()),
        SignalFigures.TUBE_BENDS.cited().and(SignalFigures.TUBE_LONG.cited()),
        true,
        new Said(
            "The tube %s has %d quarter turns over %s."
                .formatted(c.name(), c.bends(), Legs.metres(m)),
            "%d turns, %s".formatted(c.bends(), Legs.metres(m)),
            "2 turns, 30.0 m",
            "Open it in between for a pull box, or go another way."));
  }
}
