package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.hollow.HollowKind;
import holloway.limits.CablingFigures;
import holloway.limits.LinkLength;
import java.util.List;

/** A1-9 to A1-16: heat under a roof takes length from a copper link. */
final class LinkInTheHeat implements PlanRule {
  private static final Source SOURCE =
      CablingFigures.HEAT_UTP
          .cited()
          .noting(
              "; the rule 90 - 75 x loss fits the published 84.0 and 79.5 m, other sums are about;"
                  + " 50 C in an attic is common practice");

  @Override
  public String id() {
    return "link-in-the-heat";
  }

  @Override
  public String about() {
    return "A four-pair cable through an attic loses more signal when that is hot: the link gets"
        + " shorter by the share of it that lies there, at 50 C (122 F).";
  }

  @Override
  public Entry entry() {
    return new Entry("standard", SOURCE, "90 m less 10.5 m x the share in the attic");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return Legs.of(finished.plan()).stream()
        .filter(r -> r.copperPairs() && r.metresIn(HollowKind.ATTIC) > 0)
        .filter(r -> r.run().cableM() > most(r))
        .filter(r -> r.run().cableM() <= CablingFigures.LINK_MOST.value())
        .map(this::finding)
        .toList();
  }

  private static double most(Legs r) {
    double share = r.metresIn(HollowKind.ATTIC) / r.run().cableM();
    return LinkLength.linkPartHot(CablingFigures.ATTIC_HEAT.value(), false, Math.min(1, share));
  }

  private Finding finding(Legs r) {
    String what =
        "%s is cut to %s, of which %s lie in the attic at up to 50 C (122 F)."
            .formatted(
                r.run().id(),
                Legs.metres(r.run().cableM()),
                Legs.metres(r.metresIn(HollowKind.ATTIC)));
    return say(
        Severity.STANDARD,
        r.place(),
        SOURCE,
        true,
        new Said(
            what,
            Legs.metres(r.run().cableM()),
            Legs.metres(most(r)),
            "Take a shorter or cooler way, a screened cable, or fibre."));
  }
}
