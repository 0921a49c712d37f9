package holloway.check.rules;

import holloway.catalog.Cable;
import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.hollow.HollowKind;
import holloway.house.RulePlace;
import holloway.limits.EntryFigures;
import holloway.plan.Plan;
import holloway.request.Job;
import java.util.List;
import java.util.Set;

/** B6: cable said to be CMX that is too thick for a dwelling's walls. */
final class ThickCmx implements PlanRule {
  private static final Source SOURCE =
      EntryFigures.CMX_EXPOSED
          .cited()
          .noting(" (a summary of 1987; the wording now in force from memory)");

  private static final Set<HollowKind> NOT_COUNTED =
      Set.of(
          HollowKind.OUTSIDE_FACE,
          HollowKind.PORCH_VOID,
          HollowKind.TRENCH,
          HollowKind.SPAN,
          HollowKind.CONDUIT);

  @Override
  public String id() {
    return "thick-cmx-cable";
  }

  @Override
  public String about() {
    return "Cable stated as CMX (job: listings) of 6 mm or more (US): in a tube all the way, or at"
        + " most 3 m of it in the house. Thinner CMX is let through in a house for one or two families.";
  }

  @Override
  public Entry entry() {
    return new Entry("law (US)", SOURCE, "10 ft (3 m) of CMX of 0.25 in (6 mm) or more");
  }

  @Override
  public List<Finding> find(Finished finished) {
    if (finished.place() != RulePlace.US) {
      return List.of();
    }
    return Legs.of(finished.plan()).stream()
        .filter(
            r ->
                finished.job().listing(r.run().cable()).filter(Job.Listing.CMX::equals).isPresent())
        .filter(r -> r.cable().map(ThickCmx::thick).orElse(false))
        .filter(r -> bare(r) > EntryFigures.CMX_EXPOSED.length().toMetres() + 1e-9)
        .map(this::finding)
        .toList();
  }

  private static boolean thick(Cable c) {
    return c.outside().compareTo(EntryFigures.CMX_WIDE.length()) >= 0;
  }

  /** Metres inside the house and in no tube. */
  private static double bare(Legs r) {
    return r.run().steps().stream()
        .filter(s -> NOT_COUNTED.stream().noneMatch(k -> Legs.isIn(s, k)))
        .mapToDouble(Plan.PlanStep::m)
        .sum();
  }

  private Finding finding(Legs r) {
    return say(
        Severity.LAW,
        r.place(),
        SOURCE,
        false,
        new Said(
            r.run().id() + " is stated as CMX and is too thick to lie in the house as that.",
            Legs.metres(bare(r)),
            "3 m (10 ft)",
            "Buy it listed CM or better, or lay it in a tube. The local code decides."));
  }
}
