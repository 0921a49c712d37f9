package holloway.housefile;

import holloway.house.Fact;
import holloway.house.House;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import holloway.units.Length;
import java.util.List;

/**
 * A wall with a height is half as high as others, or it stops short over ceilings that hang below
 * its top in both rooms.
 */
final class PartitionCheck {
  /** Nobody looks over a wall higher than this; from experience. */
  private static final Length TALL = Length.mm(2_400);

  private PartitionCheck() {}

  static void check(House house, Problems problems) {
    for (WallSpec w : house.walls()) {
      w.traits()
          .height()
          .filter(h -> h.value().compareTo(TALL) > 0)
          .ifPresent(
              h -> w.ref().flatMap(WallRef::between).ifPresent(b -> tall(house, b, h, problems)));
    }
  }

  private static void tall(House house, WallRef.Between b, Fact<Length> height, Problems problems) {
    for (String room : List.of(b.one(), b.other())) {
      boolean lowered =
          house.soffits().stream().anyMatch(s -> s.face().isEmpty() && s.room().equals(room));
      if (!lowered) {
        problems.add(
            height.where(),
            height.value().toString(),
            "no height, or hollows: [{ dropped-ceiling: %s tiles, in: %s, drop: 10 in }]"
                .formatted(room, room),
            "",
            "a wall so high goes up to the ceiling, unless one hangs below its top: no"
                + " dropped-ceiling is stated in "
                + room);
        return;
      }
    }
  }
}
