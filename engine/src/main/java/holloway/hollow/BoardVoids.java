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
 * The voids between masonry and the board in front of it, shut at the top and the foot. Where the
 * dabs stand in the middle of a board nobody knows, so a fish there is short.
 */
final class BoardVoids {
  private BoardVoids() {}

  static void find(Draft draft) {
    for (Wall w : draft.framed.placed().walls()) {
      HollowKind kind =
          w.kind() == WallSpec.Kind.FURRED ? HollowKind.FURRED_BAY : HollowKind.DAB_VOID;
      for (BoardVoid v : BoardVoid.of(w)) {
        for (Box b : v.bays()) {
          draft.hollow(
              new Hollow(
                  w.id() + "/void-" + v.face().side() + "-" + Tags.of(b.x0()),
                  kind,
                  w.frame(),
                  b,
                  Optional.empty(),
                  Fill.EMPTY,
                  w.id(),
                  Optional.empty()));
        }
      }
    }
  }

  /** What a bore through the board on one side of a wall comes out in: bays, or such voids. */
  static List<Hollow> behind(Draft draft, Wall w, int side) {
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
    return h.kind() == HollowKind.FURRED_BAY || h.kind() == HollowKind.DAB_VOID;
  }

  private static int side(Hollow h, Wall w) {
    return h.clear().y0() < w.core().lo() ? 0 : 1;
  }

  /** The t at which a bore from a side comes out behind the board. */
  static long inside(Hollow h, int side) {
    return side == 0 ? h.clear().y0() : h.clear().y1();
  }
}
