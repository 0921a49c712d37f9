package holloway.survey;

import holloway.house.Assumption;
import holloway.house.House;
import java.util.List;

/** The defaults that some part of the placed house really has. */
final class UsedDefaults {
  private static final List<String> FRAMING = List.of("studs", "spacing", "plate", "fill");

  private UsedDefaults() {}

  static List<Assumption> of(House house, List<Wall> walls) {
    return house.assumed().stream().filter(a -> isUsed(a, walls)).toList();
  }

  /** A default of outer or inner walls counts if such a wall is of the kind it is about. */
  private static boolean isUsed(Assumption a, List<Wall> walls) {
    if (!a.of().endsWith("er walls")) {
      return true;
    }
    boolean framing = FRAMING.stream().anyMatch(a.what()::endsWith);
    boolean masonry = a.what().endsWith("masonry");
    boolean outer = !a.of().startsWith("inner");
    return walls.stream()
        .filter(w -> w.isOuter() == outer)
        .anyMatch(w -> framing ? w.isFramed() : !masonry || !w.isFramed());
  }
}
