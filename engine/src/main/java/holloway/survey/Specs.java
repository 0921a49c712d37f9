package holloway.survey;

import holloway.house.FaceRef;
import holloway.house.House;
import holloway.house.Side;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import java.util.List;
import java.util.Set;

/** Finds what the person says of a wall. */
final class Specs {
  private final House house;

  Specs(House house) {
    this.house = house;
  }

  House house() {
    return house;
  }

  /**
   * @param ordinal which of the walls between the two rooms, from 1
   */
  List<WallSpec> between(String a, String b, int ordinal) {
    return house.walls().stream()
        .filter(
            s -> s.ref().flatMap(WallRef::between).filter(r -> joins(r, a, b, ordinal)).isPresent())
        .toList();
  }

  static boolean joins(WallRef.Between ref, String a, String b, int ordinal) {
    return ref.ordinal() == ordinal && Set.of(ref.one(), ref.other()).equals(Set.of(a, b));
  }

  List<WallSpec> behind(String room, Side side, int ordinal) {
    return house.walls().stream()
        .filter(
            s -> s.ref().flatMap(WallRef::face).filter(f -> is(f, room, side, ordinal)).isPresent())
        .toList();
  }

  static boolean is(FaceRef f, String room, Side side, int ordinal) {
    return f.room().equals(room) && f.side() == side && f.ordinal() == ordinal;
  }
}
