package holloway.hollow;

import holloway.framing.BoardVoid;
import holloway.geometry.Box;
import holloway.house.Fill;
import holloway.house.WallSpec;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The voids behind the board in front of masonry or of a framed wall's own lining, shut at the top
 * and the foot. Where the dabs stand in the middle of a board nobody knows, so a fish there is
 * short.
 */
final class BoardVoids {
  private static final long LOWEST = 60_000_000;

  private BoardVoids() {}

  static void find(Draft draft) {
    UnderSlopes slopes = new UnderSlopes(draft.framed);
    for (Wall w : draft.framed.placed().walls()) {
      for (BoardVoid v : BoardVoid.of(w)) {
        for (Box b : v.bays()) {
          long top = Math.min(b.z1(), slopes.top(w, b.x()));
          if (top - b.z0() > LOWEST) {
            bay(draft, v, new Box(b.x0(), b.x1(), b.y0(), b.y1(), b.z0(), top));
          }
        }
      }
    }
  }

  private static void bay(Draft draft, BoardVoid v, Box clear) {
    Wall w = v.wall();
    HollowKind kind =
        v.level()
            ? HollowKind.SERVICE_VOID
            : w.kind() == WallSpec.Kind.DABBED ? HollowKind.DAB_VOID : HollowKind.FURRED_BAY;
    String id = w.id() + "/void-" + v.face().side() + "-" + Tags.of(clear.x0());
    draft.hollow(
        new Hollow(
            v.level() ? id + "-z" + Tags.of(clear.z0()) : id,
            kind,
            w.frame(),
            clear,
            Optional.empty(),
            Fill.EMPTY,
            w.id(),
            Optional.empty()));
  }

  /** What a bore through the board on one side of a wall comes out in: bays, or such voids. */
  static List<Hollow> behind(Draft draft, Wall w, int side) {
    return draft.looked.behind(w.id(), side, () -> look(draft, w, side));
  }

  private static List<Hollow> look(Draft draft, Wall w, int side) {
    List<Hollow> out = new ArrayList<>();
    for (Hollow h : draft.hollows.values()) {
      boolean own = h.owner().equals(w.id());
      boolean bay = h.kind() == HollowKind.STUD_BAY && StudBays.isBehind(h, w, side);
      if (own && bay || own && isVoid(h) && side(h, w) == side) {
        out.add(h);
      }
    }
    return out;
  }

  static boolean isVoid(Hollow h) {
    return h.kind().isBehindBoard();
  }

  static int side(Hollow h, Wall w) {
    return h.clear().y0() < w.core().lo() ? 0 : 1;
  }

  /** The t at which a bore from a side comes out behind the board. */
  static long inside(Hollow h, int side) {
    return side == 0 ? h.clear().y0() : h.clear().y1();
  }
}
