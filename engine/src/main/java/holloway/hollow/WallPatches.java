package holloway.hollow;

import holloway.geometry.Box;
import holloway.geometry.Point3;
import holloway.house.Lining;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the lining of a wall could be cut to reach a bay: low, near its foot, and high, near its
 * head.
 */
final class WallPatches {
  private static final long LOW = 320_000_000;
  private static final long HIGH = 250_000_000;

  private WallPatches() {}

  /** They hang on bays and walls alone. */
  static List<AccessPlace> of(Draft draft) {
    List<AccessPlace> out = new ArrayList<>();
    for (Wall w : draft.framed.placed().walls()) {
      for (Hollow bay : draft.hollows.values()) {
        if (bay.owner().equals(w.id())
            && bay.kind() == HollowKind.STUD_BAY
            && bay.clear().x().length() >= 120_000_000) {
          places(draft, w, bay, out);
        }
      }
    }
    return out;
  }

  private static void places(Draft draft, Wall w, Hollow bay, List<AccessPlace> out) {
    Box b = bay.clear();
    long low = b.z0() + LOW;
    long high = b.z1() - HIGH;
    if (high - low > 600_000_000) {
      place(draft, w, bay, low, "low", out);
      place(draft, w, bay, high, "high", out);
    } else if (b.z().length() > 150_000_000) {
      place(draft, w, bay, b.z().mid(), "mid", out);
    }
  }

  private static void place(
      Draft draft, Wall w, Hollow bay, long z, String where, List<AccessPlace> out) {
    long s = bay.clear().x().mid();
    Optional<Wall.WallFace> best = Optional.empty();
    for (int side = 0; side < 2; side++) {
      Optional<Wall.WallFace> f = w.findFace(side, s);
      if (f.isPresent()
          && StudBays.isBehind(bay, w, side)
          && draft.isOpen(f.get().room())
          && f.get().floorZ() <= z
          && f.get().ceilingZ() >= z
          && (best.isEmpty() || before(draft, f.get(), best.get()))) {
        best = f;
      }
    }
    if (best.isPresent()) {
      Wall.WallFace f = best.get();
      Lining lining = draft.framed.placed().lining(w, f.side(), s);
      Point3 at = StudBays.middle(bay, z);
      out.add(
          new AccessPlace(
              bay.id() + "/wall-patch-" + where,
              bay.id(),
              at,
              f.room(),
              AccessPlace.Kind.WALL_PATCH,
              lining));
    }
  }

  private static boolean before(Draft draft, Wall.WallFace f, Wall.WallFace best) {
    int by = Integer.compare(rank(draft, f), rank(draft, best));
    return by < 0 || by == 0 && f.room().compareTo(best.room()) < 0;
  }

  /**
   * The side that is cheaper and less seen: a plain room before others, board before plaster before
   * tile.
   */
  private static int rank(Draft draft, Wall.WallFace f) {
    PlacedRoom r = draft.framed.placed().getRoom(f.room());
    return (r.room().plain() ? 0 : 10) + r.room().walls().ordinal();
  }
}
