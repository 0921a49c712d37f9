package holloway.schedule;

import java.util.List;
import java.util.Locale;

/**
 * What one run is tested for when both its ends are on.
 *
 * @param expectM the length a tester should show at most, metres
 */
public record RunProof(
    String run, String cable, boolean spare, double expectM, List<Check> checks) {
  /** What is looked at or measured. */
  public enum Check {
    WIRE_MAP,
    LENGTH,
    LINK_SPEED,
    CONTINUITY,
    END_FACES_CLEAN,
    LIGHT_THROUGH,
    LOSS;

    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public RunProof {
    checks = List.copyOf(checks);
  }
}
