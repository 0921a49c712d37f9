package holloway.check;

import holloway.catalog.Cable;
import holloway.house.Conduit;
import holloway.plan.Plan;
import java.util.List;

/** What is drawn through an existing tube, or after an old cable, passes its narrowest place. */
final class TubeRule implements Rule {
  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Conduit c : evidence.house().framed().placed().house().conduits()) {
      String id = "conduit/" + c.name();
      List<Plan.PlannedRun> runs =
          evidence.plan().runs().stream()
              .filter(r -> r.steps().stream().anyMatch(s -> s.id().equals(id)))
              .toList();
      List<Cable> cables = runs.stream().flatMap(r -> Cable.find(r.cable()).stream()).toList();
      if (!runs.isEmpty() && c.kind() == Conduit.Kind.FAST_CABLE) {
        charge.plan(id, "an old cable that may be stapled draws nothing in");
      }
      if (!c.kind().laid() && !BoreFill.fits(cables, Math.floor(c.insideDiameter().toMm()), 1)) {
        charge.plan(
            id,
            "%d cables do not pass where it is %.0f mm wide",
            cables.size(),
            c.insideDiameter().toMm());
      }
    }
  }
}
