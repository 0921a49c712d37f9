package holloway.routing;

import holloway.hollow.Hollow;
import holloway.house.Lining;
import holloway.house.Thing;
import holloway.limits.BoxPractice;
import holloway.survey.BehindBoard;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a box can be behind a spot of a wall: as deep as the lining and what is clear behind it. On
 * masonry a box that is deeper is sunk into it; in a framed wall it does not go in.
 */
final class BoxFit {
  /** A box that is there serves an outlet this near to it; its own height and a hand. */
  private static final long SAME_BOX = 150_000_000L;

  private final Prices prices;
  private final Placed placed;
  private final List<OnWall> there = new ArrayList<>();

  BoxFit(Prices prices, Placed placed) {
    this.prices = prices;
    this.placed = placed;
    for (Thing t : placed.house().things()) {
      if (t.kind() == Thing.Kind.DATA_BOX) {
        placed
            .findSpot(t.at().face(), t.at().along(), t.at().height().value().nm())
            .ifPresent(there::add);
      }
    }
  }

  /** A low-voltage box hangs there already: its plate comes off, and nothing is cut out. */
  private boolean isThere(OnWall s) {
    return there.stream()
        .anyMatch(
            b ->
                b.wall().id().equals(s.wall().id())
                    && b.side() == s.side()
                    && Math.abs(b.s() - s.s()) < SAME_BOX
                    && Math.abs(b.z() - s.z()) < SAME_BOX);
  }

  /** Objective units of cutting it out and fitting it. */
  long price(Ends.EndSpot spot, Hollow behind, boolean cabinet) {
    OnWall s = spot.onWall().orElseThrow();
    if (!cabinet && isThere(s)) {
      return prices.openBox();
    }
    Wall w = s.wall();
    long room = depth(s, behind);
    int layers = layers(s);
    if (!w.isFramed()) {
      boolean sunk = room < needed(spot);
      return prices.cutOut(sunk ? Lining.PLASTER : lining(s), layers, false);
    }
    boolean shallow = !cabinet && room < spot.boxDepth().orElse(BoxPractice.USUAL).nm();
    return prices.cutOut(lining(s), layers, shallow);
  }

  /**
   * In a solid wall, or at a batten or dab of a furred one: sunk into the stone behind whatever
   * lies on it, where board and void before the stone are less than the box.
   */
  long price(Ends.EndSpot spot) {
    OnWall s = spot.onWall().orElseThrow();
    if (isThere(s)) {
      return prices.openBox();
    }
    Wall w = s.wall();
    boolean sunk =
        BehindBoard.between(w, s.side())
            .filter(v -> BehindBoard.boardNm(w, s.side()) + v.length() < needed(spot))
            .isPresent();
    return prices.cutOut(sunk ? Lining.PLASTER : lining(s), layers(s), false);
  }

  private Lining lining(OnWall s) {
    return placed.lining(s.wall(), s.side(), s.s());
  }

  private static long needed(Ends.EndSpot spot) {
    return spot.boxDepth().orElse(BoxPractice.LEAST).nm();
  }

  /** Why no box goes there, if none does. */
  Optional<String> findTooDeep(Ends.EndSpot spot, Hollow behind) {
    OnWall s = spot.onWall().orElseThrow();
    long room = depth(s, behind);
    Length needed = spot.boxDepth().orElse(BoxPractice.LEAST);
    if (!s.wall().isFramed() || room >= needed.nm()) {
      return Optional.empty();
    }
    return Optional.of(
        "a box of %s does not go in: from the face to the back of the bay there are %s"
            .formatted(needed, new Length(room)));
  }

  private static int layers(OnWall s) {
    return s.wall().findLayers(s.side()).map(l -> l.layers().size()).orElse(1);
  }

  private static long depth(OnWall s, Hollow behind) {
    Wall w = s.wall();
    long skin = s.side() == 0 ? w.core().lo() : w.thickness() - w.core().hi();
    boolean whole = w.isFramed() && w.findBattens(s.side()).isEmpty();
    long board = whole ? skin : BehindBoard.boardNm(w, s.side());
    return board + behind.clear().y().length();
  }
}
