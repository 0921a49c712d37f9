package holloway.plan;

import holloway.hollow.SiteKind;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;

/** Which holes are sealed against fire. */
public final class Sealing {
  /** Plates, floors and fire blocks (C3-4, E11), and rated walls (B23). */
  private static final Set<String> SEALED =
      Set.of(
          SiteKind.TOP_PLATE.word(),
          SiteKind.BOTTOM_PLATE.word(),
          SiteKind.PLATE_STACK.word(),
          SiteKind.BLOCK.word(),
          SiteKind.FLOOR.word(),
          SiteKind.CEILING.word(),
          SiteKind.CEILING_AND_FLOOR.word(),
          SiteKind.CHASE_FLOOR.word());

  private Sealing() {}

  public static boolean needsSeal(Plan.PlannedHole hole, Placed placed) {
    boolean rated = findWall(hole, placed).map(Wall::garageSeparation).orElse(false);
    return rated || SEALED.contains(hole.kind());
  }

  /** The wall whose name begins the hole's id, the longest such name. */
  private static Optional<Wall> findWall(Plan.PlannedHole hole, Placed placed) {
    return placed.walls().stream()
        .filter(w -> hole.id().startsWith(w.id() + "/"))
        .max(Comparator.comparingInt((Wall w) -> w.id().length()).thenComparing(Wall::id));
  }
}
