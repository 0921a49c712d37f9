package holloway.limits;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Cold-formed steel studs and tracks. Nobody bores a steel stud: cable passes the openings punched
 * at the works. All figures are the usual make, from memory.
 */
public final class SteelPractice {
  /** A knockout is 1-1/2 in wide and 4 in high: a round bundle has the width. */
  public static final int KNOCKOUT_MM = 38;

  /** The first knockout over the foot of the stud, and from one to the next. */
  public static final Length FIRST = Length.inches(12);

  public static final Length APART = Length.inches(24);

  private static final Source SOURCE =
      Source.anywhere("makers' instructions for steel studs, from memory");

  private SteelPractice() {}

  /** Heights of the usual knockouts in a stud of this height, from its foot. */
  public static List<Length> usualKnockouts(Length height) {
    List<Length> out = new ArrayList<>();
    for (long z = FIRST.nm(); z < height.nm() - FIRST.nm() / 2; z += APART.nm()) {
      out.add(new Length(z));
    }
    return out;
  }

  public static Verdict studBore() {
    return Verdict.no(
        Severity.STANDARD,
        SOURCE,
        "Never bore a steel stud: pass through its knockouts, with a grommet.");
  }

  /** A track of a partition may be holed for a cable with a grommet; one that carries may not. */
  public static Verdict trackBore(boolean bearing) {
    return bearing
        ? Verdict.no(
            Severity.STANDARD, SOURCE, "Never bore the track of a bearing or outer steel wall.")
        : Verdict.yesBut(
            Severity.PRACTICE,
            Source.PRACTICE,
            "Line the hole in the steel track with a grommet: its edge cuts jackets.");
  }
}
