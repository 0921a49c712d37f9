package holloway.check.rules;

import holloway.catalog.Cable;
import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.house.RulePlace;
import holloway.limits.Figure;
import holloway.limits.RuleKey;
import holloway.limits.WiringFigures;
import holloway.plan.Plan;
import holloway.request.Job;
import java.util.List;
import java.util.Set;

/** B12: outdoor cable that is not listed for indoors goes in 15 m and no further. */
final class OutdoorCableIndoors implements PlanRule {
  private static final Set<HollowKind> OUTSIDE =
      Set.of(HollowKind.OUTSIDE_FACE, HollowKind.TRENCH, HollowKind.SPAN, HollowKind.PORCH_VOID);

  @Override
  public String id() {
    return "outdoor-cable-indoors";
  }

  @Override
  public String about() {
    return "How far an outdoor cable runs on indoors from where it comes in. Not if it is listed for"
        + " indoors too (job: listings); a duty and not a breach where nothing is stated.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US), practice elsewhere",
        WiringFigures.OUTSIDE_CABLE_INDOORS.cited(),
        "50 ft (15 m)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    Figure most =
        finished.figure(RuleKey.OUTDOOR_CABLE_INDOORS, WiringFigures.OUTSIDE_CABLE_INDOORS);
    boolean us = finished.place() == RulePlace.US;
    return Legs.of(finished.plan()).stream()
        .filter(r -> r.cable().map(Cable::outdoor).orElse(false))
        .filter(r -> !listedIndoors(r, finished))
        .filter(r -> indoors(r, finished) > most.length().toMetres())
        .map(
            r ->
                finding(
                    r,
                    most,
                    finished,
                    finished.severity(
                        RuleKey.OUTDOOR_CABLE_INDOORS, us ? Severity.LAW : Severity.PRACTICE)))
        .toList();
  }

  /** Printed on the jacket, says the house file. */
  private static boolean listedIndoors(Legs r, Finished finished) {
    return finished.job().listing(r.run().cable()).map(l -> l != Job.Listing.NONE).orElse(false);
  }

  /** Stated to be for outdoors alone: then the plan itself goes against the rule. */
  private static boolean none(Legs r, Finished finished) {
    return finished.job().listing(r.run().cable()).filter(Job.Listing.NONE::equals).isPresent();
  }

  /** On no wall outside, in no trench, span or duct between buildings. */
  private static double indoors(Legs r, Finished finished) {
    return r.run().steps().stream()
        .filter(s -> OUTSIDE.stream().noneMatch(k -> Legs.isIn(s, k)))
        .filter(s -> !isLink(s, finished))
        .mapToDouble(Plan.PlanStep::m)
        .sum();
  }

  private static boolean isLink(Plan.PlanStep s, Finished finished) {
    return finished.placed().house().conduits().stream()
        .anyMatch(c -> c.outdoor().isPresent() && s.id().equals("conduit/" + c.name()));
  }

  private Finding finding(Legs r, Figure most, Finished finished, Severity severity) {
    String remedy =
        "Buy a cable listed for outdoors and indoors, as the shopping list has it, or end the"
            + " outdoor one in a box within "
            + (most.grade() == Figure.Grade.L ? most.said() : "15 m (50 ft)")
            + " of the entrance and go on with indoor cable. The local code decides.";
    return say(
        severity,
        r.place(),
        most.cited(),
        severity == Severity.LAW && none(r, finished),
        new Said(
            r.run().id()
                + " is outdoor cable and goes on indoors further than one may that is"
                + " listed for outdoors alone.",
            Legs.metres(indoors(r, finished)),
            Legs.number("%.2f m", most.length().toMetres()),
            remedy));
  }
}
