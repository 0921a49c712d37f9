package holloway.app;

import holloway.units.LengthParser;
import holloway.view.Slice;
import java.util.List;
import java.util.Map;

/** What a picture can be of, as the command line says it. */
final class Naming {
  private static final Map<String, Integer> WAYS = Map.of("west", 0, "south", 1, "floor", 2);

  private Naming() {}

  /**
   * A slice by where it is: {@code west 12 ft}, {@code south 3.2 m}, {@code floor 4 ft}.
   *
   * @throws IllegalArgumentException with words for the person
   */
  static Slice slice(String name, double thickMetres) {
    String[] parts = name.strip().split("\\s+", 2);
    Integer axis = WAYS.get(parts[0]);
    if (axis == null || parts.length < 2) {
      throw new IllegalArgumentException(
          "a slice is named like 'west 12 ft', 'south 3.2 m' or 'floor 4 ft', not '" + name + "'");
    }
    double at = LengthParser.parse(parts[1]).value().toMetres();
    return new Slice(axis, (float) at, (float) thickMetres);
  }

  /** Ways of working that a picture can be without, beside the plan with all of them. */
  static final List<String> WITHOUT =
      List.of("attic", "chase", "under-floor", "outside", "surface");

  /** The words after {@code --of}. */
  static final List<String> KINDS = List.of("level", "slice", "run", "hole", "without");
}
