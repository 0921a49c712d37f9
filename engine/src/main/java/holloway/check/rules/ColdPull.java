package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.limits.CablingFigures;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** E21: jackets crack when they are pulled in frost. */
final class ColdPull implements PlanRule {
  private static final double LONG = 3;

  private static final int WARM_C = 0;

  @Override
  public String id() {
    return "cold-pull";
  }

  @Override
  public String about() {
    return "Cable of which more than 3 m are laid outside: not in frost. How cold it will be"
        + " is stated (job: coldest), then attics count too, or frost is reckoned with.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", CablingFigures.COLD_PULL.cited(), "0 C (32 F)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    Optional<Integer> cold = finished.job().coldC();
    boolean warm = cold.map(c -> c >= WARM_C).orElse(false);
    List<Legs> exposed =
        Legs.of(finished.plan()).stream()
            .filter(r -> !warm && inTheCold(r, cold.isPresent()) > LONG)
            .sorted(Comparator.comparingDouble(r -> -inTheCold(r, cold.isPresent())))
            .toList();
    return exposed.isEmpty() ? List.of() : List.of(finding(exposed, cold));
  }

  /** An attic is as cold as the day, which counts where somebody says how cold that is. */
  private static double inTheCold(Legs r, boolean stated) {
    return r.metresIn(HollowKind.OUTSIDE_FACE)
        + r.metresIn(HollowKind.PORCH_VOID)
        + (stated ? r.metresIn(HollowKind.ATTIC) : 0);
  }

  /** One for all of them, at the one with the most in the cold. */
  private Finding finding(List<Legs> all, Optional<Integer> cold) {
    Legs most = all.get(0);
    return say(
        Severity.PRACTICE,
        most.place(),
        CablingFigures.COLD_PULL.cited(),
        false,
        new Said(
            "%s %s %s outside%s."
                .formatted(
                    Legs.named(all),
                    all.size() == 1 ? "lies" : "lie up to",
                    Legs.metres(inTheCold(most, cold.isPresent())),
                    cold.isPresent() ? " or in the attic" : ""),
            cold.map(c -> c + " C (" + Math.round(c * 9 / 5.0 + 32) + " F)")
                .orElse("how cold it will be is not stated"),
            "0 C (32 F) or above",
            "Lay it on a day without frost, or warm the drum first; see the maker's sheet."));
  }
}
