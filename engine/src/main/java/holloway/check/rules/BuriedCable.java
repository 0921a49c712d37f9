package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.limits.EntryFigures;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** B32: how deep cable lies in earth. No code says it for data cable; one article's is borrowed. */
final class BuriedCable implements PlanRule {
  private static final String SOURCE =
      EntryFigures.BURIED.cited() + ", borrowed: Articles 800 and 770 give no depth";

  @Override
  public String id() {
    return "buried-cable";
  }

  @Override
  public String about() {
    return "Cable in a trench lies as deep as the one code article asks that names a depth. A link whose"
        + " depth is stated has a finding of its own.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", SOURCE, "18 in (450 mm), 12 in (300 mm) in a plastic tube");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Legs r : Legs.of(finished.plan())) {
      r.in(HollowKind.TRENCH).stream().findFirst().ifPresent(s -> out.add(finding(r, s)));
    }
    return out;
  }

  private Finding finding(Legs r, Plan.PlanStep s) {
    return say(
        Severity.PRACTICE,
        Place.of(r.run().id(), Legs.start(s)),
        SOURCE,
        false,
        new Said(
            r.run().id() + " lies in a trench.",
            Legs.metres(s.m()) + " of trench",
            "450 mm (18 in) deep, 300 mm (12 in) in a tube",
            "Dig that deep, use cable made for earth, and have buried services marked first."));
  }
}
