package holloway.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The rooms of a level by the building that they are of: a garden room far off is another one. */
final class Buildings {
  /** Farther apart than this there is no wall between two rooms, metres. */
  private static final float APART = 1.5f;

  private Buildings() {}

  /** The one with the most rooms first. */
  static List<List<RoomMark>> of(List<RoomMark> rooms) {
    List<List<RoomMark>> out = new ArrayList<>();
    for (RoomMark r : rooms) {
      List<RoomMark> own = new ArrayList<>(List.of(r));
      List<List<RoomMark>> near = out.stream().filter(b -> isNear(b, r)).toList();
      near.forEach(own::addAll);
      out.removeAll(near);
      out.add(own);
    }
    out.sort(Comparator.comparingInt(b -> -b.size()));
    return out;
  }

  private static boolean isNear(List<RoomMark> building, RoomMark r) {
    return building.stream()
        .anyMatch(
            b ->
                r.outline().stream().anyMatch(p -> b.away(p) < APART)
                    || b.outline().stream().anyMatch(p -> r.away(p) < APART));
  }
}
