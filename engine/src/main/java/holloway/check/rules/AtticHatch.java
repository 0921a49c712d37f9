package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.house.Roof;
import holloway.house.RulePlace;
import holloway.limits.EntryFigures;
import java.util.List;

/** C3-15 to C3-17: a way into an attic that is smaller than what a new house needs. */
final class AtticHatch implements PlanRule {
  @Override
  public String id() {
    return "attic-hatch";
  }

  @Override
  public String about() {
    return "The hatch of an attic that the plan goes into, against the opening that a new house"
        + " needs. An old house need not have it; a person may not fit through less.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "practice (law for a new house)", EntryFigures.HATCH_NARROW.cited(), "22 x 30 in");
  }

  @Override
  public List<Finding> find(Finished finished) {
    boolean used = finished.plan().totals().zones().stream().anyMatch(z -> z.contains("attic"));
    return finished.placed().house().roofs().stream()
        .filter(r -> used)
        .flatMap(r -> r.hatches().stream())
        .filter(AtticHatch::small)
        .map(h -> finding(h, finished.place() == RulePlace.US))
        .toList();
  }

  private static boolean small(Roof.Hatch h) {
    long a = Math.min(h.eastWest().nm(), h.northSouth().nm());
    long b = Math.max(h.eastWest().nm(), h.northSouth().nm());
    return a < EntryFigures.HATCH_NARROW.length().nm() || b < EntryFigures.HATCH_LONG.length().nm();
  }

  private Finding finding(Roof.Hatch h, boolean us) {
    return say(
        Severity.PRACTICE,
        Place.of("hatch in " + h.at().room()),
        EntryFigures.HATCH_NARROW.cited().noting(" (for a new house)"),
        false,
        new Said(
            "The hatch in %s is small.".formatted(h.at().room()),
            h.eastWest() + " x " + h.northSouth(),
            us ? "22 x 30 in (559 x 762 mm)" : "559 x 762 mm (22 x 30 in)",
            "Try it before the day of the work: you may not fit through with tools."));
  }
}
