package holloway.check.rules;

import holloway.catalog.Cable;
import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import java.util.List;

/**
 * Copper ties the earths of two buildings together: lightning near by, or a fault, runs over it.
 * Glass does not.
 */
final class CopperLink implements PlanRule {
  private static final Source SOURCE =
      Source.PRACTICE.and(Source.us("protector and bonding after NEC 800.90(B), 800.100(A)"));

  @Override
  public String id() {
    return "copper-between-buildings";
  }

  @Override
  public String about() {
    return "Between buildings fibre is better than copper, because their earths are not at one potential;"
        + " copper wants a surge protector at both entries, bonded to each building's own earth.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", SOURCE, "fibre, or a protector at both ends");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return LinkUse.of(finished).stream()
        .filter(u -> Cable.find(u.run().cable()).map(c -> !c.fibre()).orElse(true))
        .map(this::finding)
        .toList();
  }

  private Finding finding(LinkUse use) {
    String what =
        "%s is copper from one building to another through %s. Their earths are not at one potential, and lightning near by drives a surge over it."
            .formatted(use.run().id(), use.link().name());
    return say(
        Severity.PRACTICE,
        Place.of(use.run().id(), use.step().path().get(0)),
        SOURCE,
        false,
        new Said(
            what,
            use.run().cable(),
            "fibre, or a surge protector at both ends",
            "Take fibre without metal in it, or fit a surge protector as near as can be to where it"
                + " enters at both ends, bonded to the earth of that building by a short straight wire"
                + " (14 AWG copper or more, at most 6 m (20 ft) in a US dwelling). Bonding is for a"
                + " licensed electrician; the local code decides whether a protector is law for this"
                + " cable."));
  }
}
