package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.house.Conduit;
import holloway.house.TubeWay;
import holloway.limits.SignalFigures;
import holloway.limits.TubePull;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;

/** A6-11, A6-12: bends and length of a tube between two places where cable is pulled. */
final class TubeTooLong implements PlanRule {
  @Override
  public String id() {
    return "tube-too-long";
  }

  @Override
  public String about() {
    return "An existing tube that the plan pulls cable through, the turns and the length"
        + " of each of its parts between two places where a hand has the cable.";
  }

  @Override
  public Entry entry() {
    return new Entry("standard", SignalFigures.TUBE_BENDS.cited(), "two quarter turns and 30 m");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return finished.placed().house().conduits().stream()
        .filter(c -> c.kind() == Conduit.Kind.TUBE && isUsed(c, finished))
        .flatMap(c -> c.way().parts().stream().filter(TubeTooLong::isOver).map(p -> finding(c, p)))
        .toList();
  }

  private static boolean isOver(TubeWay.Part p) {
    return TubePull.tooBent(p.degrees()) || TubePull.tooLong(p.length());
  }

  private static boolean isUsed(Conduit c, Finished finished) {
    return Legs.of(finished.plan()).stream()
        .flatMap(r -> r.in(HollowKind.CONDUIT).stream())
        .anyMatch(s -> s.id().equals("conduit/" + c.name()));
  }

  private Finding finding(Conduit c, TubeWay.Part p) {
    String turns =
        new DecimalFormat("0.#", DecimalFormatSymbols.getInstance(Locale.ROOT))
            .format(p.quarters());
    String far = Legs.metres(p.length().toMetres());
    String where = c.way().pullBoxes() == 0 ? "" : " between two places to pull from";
    return say(
        Severity.STANDARD,
        Place.of("conduit/" + c.name()),
        SignalFigures.TUBE_BENDS.cited().and(SignalFigures.TUBE_LONG.cited()),
        true,
        new Said(
            "The tube %s has %s quarter turns over %s%s.".formatted(c.name(), turns, far, where),
            "%s turns, %s".formatted(turns, far),
            "2 turns, 30.0 m",
            "Open it in between for a pull box, or go another way."));
  }
}
