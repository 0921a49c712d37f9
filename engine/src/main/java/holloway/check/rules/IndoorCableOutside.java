package holloway.check.rules;

import holloway.catalog.Cable;
import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * Sun and wet spoil the jacket of an indoor cable: a run that goes along the outside face wants an
 * outdoor one.
 */
final class IndoorCableOutside implements PlanRule {
  @Override
  public String id() {
    return "indoor-cable-outside";
  }

  @Override
  public String about() {
    return "An indoor cable that runs along the outside of the house is bought in an outdoor, sunlight"
        + "-resistant jacket instead; how far that may go on indoors is the local code's word.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "practice", "common practice, no published source; the 15 m are NEC 800.48", "0.3 m");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Legs r : Legs.of(finished.plan())) {
      double metres = r.metresIn(HollowKind.OUTSIDE_FACE);
      boolean outdoor = r.cable().map(Cable::outdoor).orElse(false);
      if (!outdoor && metres > 0.3) {
        out.add(finding(r.run(), metres, r.in(HollowKind.OUTSIDE_FACE).get(0)));
      }
    }
    return out;
  }

  private Finding finding(Plan.PlannedRun run, double metres, Plan.PlanStep at) {
    return say(
        Severity.PRACTICE,
        Place.of(run.id(), at.path().get(0)),
        "common practice, no published source; the 15 m are NEC 800.48",
        false,
        new Said(
            "%s lies %s along the outside as %s."
                .formatted(run.id(), Legs.metres(metres), run.cable()),
            Legs.metres(metres),
            Legs.metres(0.3),
            "Buy it in an outdoor, sunlight-resistant jacket, as the shopping list has it; if it is not"
                + " also listed for indoor use, at most 15 m (50 ft) of it may lie indoors from"
                + " where it enters. The local code decides."));
  }
}
