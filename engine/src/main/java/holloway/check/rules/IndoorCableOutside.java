package holloway.check.rules;

import static java.util.stream.Collectors.joining;

import holloway.catalog.Cable;
import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import java.util.Comparator;
import java.util.List;

/**
 * Sun and wet spoil the jacket of an indoor cable: a run that goes along the outside face wants an
 * outdoor one.
 */
final class IndoorCableOutside implements PlanRule {
  static final Source SOURCE = Source.PRACTICE.and(Source.us("the 15 m are NEC 800.48"));

  /** What goes straight through the wall and out again is no way along it. */
  private static final double SHORT_M = 0.3;

  @Override
  public String id() {
    return "indoor-cable-outside";
  }

  @Override
  public String about() {
    return "An indoor cable that runs along the outside of the house is bought in an outdoor,"
        + " sunlight-resistant jacket instead; how far that may go on indoors is the local"
        + " code's word.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", SOURCE, "0.3 m");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Legs> outside =
        Legs.of(finished.plan()).stream()
            .filter(r -> !r.cable().map(Cable::outdoor).orElse(false) && metres(r) > SHORT_M)
            .sorted(Comparator.comparingDouble(r -> -metres(r)))
            .toList();
    return outside.isEmpty() ? List.of() : List.of(finding(outside));
  }

  private static double metres(Legs r) {
    return r.metresIn(HollowKind.OUTSIDE_FACE) + r.metresIn(HollowKind.PORCH_VOID);
  }

  private static Point3 first(Legs r) {
    return r.run().steps().stream()
        .filter(s -> Legs.isIn(s, HollowKind.OUTSIDE_FACE) || Legs.isIn(s, HollowKind.PORCH_VOID))
        .map(Legs::start)
        .findFirst()
        .orElseThrow();
  }

  /** One for all of them, at the one that lies outside furthest. */
  private Finding finding(List<Legs> all) {
    Legs most = all.get(0);
    String runs = Legs.named(all);
    String kinds =
        all.stream().map(r -> r.run().cable()).distinct().sorted().collect(joining(", "));
    String far = Legs.metres(metres(most));
    return say(
        Severity.PRACTICE,
        Place.of(most.run().id(), first(most)),
        SOURCE,
        false,
        new Said(
            all.size() == 1
                ? "%s lies %s along the outside as %s.".formatted(runs, far, kinds)
                : "%s lie up to %s along the outside as %s.".formatted(runs, far, kinds),
            far,
            Legs.metres(SHORT_M),
            "Buy it in an outdoor, sunlight-resistant jacket, as the shopping list has it; if it is"
                + " not also listed for indoor use, at most 15 m (50 ft) of it may lie indoors from"
                + " where it enters. The local code decides."));
  }
}
