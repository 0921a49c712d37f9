package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.limits.CablingFigures;
import java.util.Comparator;
import java.util.List;

/** E21: jackets crack when they are pulled in frost. */
final class ColdPull implements PlanRule {
  private static final double LONG = 3;

  @Override
  public String id() {
    return "cold-pull";
  }

  @Override
  public String about() {
    return "Cable of which more than 3 m are laid outside: not in frost. How cold it will be is not"
        + " asked.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", CablingFigures.COLD_PULL.cited(), "0 C (32 F)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return Legs.of(finished.plan()).stream()
        .filter(r -> r.metresIn(HollowKind.OUTSIDE_FACE) > LONG)
        .max(Comparator.comparingDouble(r -> r.metresIn(HollowKind.OUTSIDE_FACE)))
        .map(r -> List.of(finding(r)))
        .orElse(List.of());
  }

  private Finding finding(Legs r) {
    double m = r.metresIn(HollowKind.OUTSIDE_FACE);
    return say(
        Severity.PRACTICE,
        r.place(),
        CablingFigures.COLD_PULL.cited(),
        false,
        new Said(
            "Up to %s of cable are laid outside.".formatted(Legs.metres(m)),
            Legs.metres(m),
            "above 0 C (32 F)",
            "Lay it on a day without frost, or warm the drum first; see the maker's sheet."));
  }
}
