package holloway.survey;

import holloway.geometry.Interval;
import holloway.house.Battens;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import java.util.Optional;

/**
 * How deep it is behind the board of a wall, before masonry or before a framed wall's own lining.
 */
public final class BehindBoard {
  private BehindBoard() {}

  /**
   * What is clear behind the board of a side, across the wall. Of a wall thicker than its parts a
   * service layer is no deeper than is stated; what is left over lies on the studs.
   */
  public static Optional<Interval> between(Wall wall, int side) {
    Optional<Battens> battens = wall.findBattens(side);
    boolean masonry = wall.kind() == WallSpec.Kind.FURRED || wall.kind() == WallSpec.Kind.DABBED;
    if (!masonry && battens.isEmpty()) {
      return Optional.empty();
    }
    long board = boardNm(wall, side);
    long skin = side == 0 ? wall.core().lo() : wall.thickness() - wall.core().hi();
    long over = battens.map(b -> b.over().thickness().value().nm()).orElse(0L);
    long most = battens.map(b -> b.depth().value().nm()).orElse(Long.MAX_VALUE);
    long deep = Math.min(skin - board - over, most);
    if (deep <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        side == 0
            ? new Interval(board, board + deep)
            : new Interval(wall.thickness() - board - deep, wall.thickness() - board));
  }

  /** Thickness of the board in front of the void, all its layers. */
  public static long boardNm(Wall wall, int side) {
    long usual = wall.isFramed() ? Makeup.lining(wall.lining(side)) : Makeup.BOARD;
    return wall.findLayers(side).map(WallTraits.Layers::nm).orElse(usual);
  }
}
