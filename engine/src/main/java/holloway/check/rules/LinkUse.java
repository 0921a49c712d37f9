package holloway.check.rules;

import holloway.house.Conduit;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** The runs of a plan that go from one building to another, with the link they take. */
record LinkUse(Plan.PlannedRun run, Plan.PlanStep step, Conduit link) {
  static List<LinkUse> of(Finished finished) {
    List<LinkUse> out = new ArrayList<>();
    for (Plan.PlannedRun run : finished.plan().runs()) {
      for (Plan.PlanStep s : run.steps()) {
        for (Conduit c : finished.placed().house().conduits()) {
          if (c.outdoor().isPresent() && s.id().equals("conduit/" + c.name())) {
            out.add(new LinkUse(run, s, c));
          }
        }
      }
    }
    return out;
  }

  boolean inEarth() {
    return link.kind() != Conduit.Kind.SPAN;
  }
}
