package holloway.housefile;

import holloway.house.RulePlace;
import java.util.Arrays;

/**
 * Place and year, which decide the defaults.
 *
 * @param stated whether the person gave the year
 */
record Era(RulePlace place, int built, boolean stated) {
  /**
   * The year taken when none is given: old enough that every caution for old paint, wiring and fill
   * shows (behind-the-board: "never pick the kindest").
   */
  static final int UNKNOWN_YEAR = 1950;

  static Era of(Marked root) {
    RulePlace place =
        Names.child(root, "place") instanceof Marked.Scalar s
            ? Arrays.stream(RulePlace.values())
                .filter(p -> Shape.word(p).equals(s.text()))
                .findFirst()
                .orElse(RulePlace.NONE)
            : RulePlace.NONE;
    boolean year =
        Names.child(root, "built") instanceof Marked.Scalar s && s.text().matches("\\d{4}");
    int built =
        year ? Integer.parseInt(((Marked.Scalar) Names.child(root, "built")).text()) : UNKNOWN_YEAR;
    return new Era(place, built, year);
  }

  boolean isUk() {
    return place == RulePlace.UK;
  }
}
