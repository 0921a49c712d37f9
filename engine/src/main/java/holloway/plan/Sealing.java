package holloway.plan;

import holloway.hollow.SiteKind;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;

/** Which holes are sealed against fire, and which want steel plates over them. */
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

  private static final Set<String> IN_STUDWORK =
      Set.of(
          SiteKind.TOP_PLATE.word(),
          SiteKind.BOTTOM_PLATE.word(),
          SiteKind.PLATE_STACK.word(),
          SiteKind.STUD.word());

  /** Wood left between hole and face without a plate: 1-1/4 in (B17, taken as practice, B19). */
  private static final double LEAST_COVER_MM = 31.75;

  private static final double DEPTH_2X4_MM = 88.9;

  private Sealing() {}

  public static boolean needsSeal(Plan.PlannedHole hole, Placed placed) {
    boolean rated = findWall(hole, placed).map(Wall::garageSeparation).orElse(false);
    return rated || SEALED.contains(hole.kind());
  }

  /** True when the hole leaves less than 1-1/4 in of wood to a face (B20). */
  public static boolean needsNailPlates(Plan.PlannedHole hole, Placed placed) {
    double depth =
        findWall(hole, placed).map(w -> w.studs().value().depth().toMm()).orElse(DEPTH_2X4_MM);
    return IN_STUDWORK.contains(hole.kind()) && hole.diameterMm() > depth - 2 * LEAST_COVER_MM;
  }

  /** The wall whose name begins the hole's id, the longest such name. */
  private static Optional<Wall> findWall(Plan.PlannedHole hole, Placed placed) {
    return placed.walls().stream()
        .filter(w -> hole.id().startsWith(w.id() + "/"))
        .max(Comparator.comparingInt((Wall w) -> w.id().length()).thenComparing(Wall::id));
  }
}
