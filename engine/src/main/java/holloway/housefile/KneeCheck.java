package holloway.housefile;

import holloway.house.Chase;
import holloway.house.Direction;
import holloway.house.FaceRef;
import holloway.house.House;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.Where;
import holloway.units.Length;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Knee walls: along an eave of a gable or shed roof with rafters, in rooms whose ceiling follows
 * them.
 */
final class KneeCheck {
  /** Room for plates and a stud between them; from experience. */
  private static final Length LEAST = Length.mm(300);

  private final House house;
  private final Problems problems;
  private final Map<String, Roof> stated = new TreeMap<>();

  private KneeCheck(House house, Problems problems) {
    this.house = house;
    this.problems = problems;
  }

  static void check(House house, Problems problems) {
    KneeCheck c = new KneeCheck(house, problems);
    for (Roof r : house.roofs()) {
      r.knees().forEach(k -> c.knee(r, k));
      if (!r.knees().isEmpty()) {
        c.both(r);
      }
    }
    house.openings().forEach(c::window);
    house.chases().forEach(c::chase);
  }

  private void knee(Roof r, Roof.Knee k) {
    FaceRef face = k.face();
    boolean eave = eaves(r).contains(face.side());
    if (eave && stated.putIfAbsent(face.toString(), r) != null) {
      add(k.where(), face, "each side once", "is stated as a knee wall twice");
    }
    Room room =
        house.rooms().stream().filter(x -> x.name().equals(face.room())).findFirst().orElse(null);
    if (room == null) {
      return; // the shape of the file says so
    }
    if (!covers(r, room)) {
      add(
          k.where(),
          face,
          "a room under '" + r.name() + "'",
          "cannot be a knee wall of '" + r.name() + "': that roof does not lie over the room");
    }
    if (k.height().value().compareTo(LEAST) < 0) {
      add(
          k.where(),
          face,
          "a height of " + LEAST + " or more",
          "is too low for a knee wall: its plates alone are as high; leave it out");
    }
    if (!room.vaulted()) {
      add(
          k.where(),
          face,
          "ceiling: vaulted, in room '" + room.name() + "'",
          "is a knee wall, so the ceiling of the room follows the rafters: say so there");
    }
    if (!eave) {
      add(
          k.where(),
          face,
          "a side along the eaves: " + words(r),
          "is no knee wall: the roof does not come down on that side");
    }
  }

  private boolean covers(Roof r, Room room) {
    boolean named = house.roofs().stream().anyMatch(o -> o.rooms().contains(room.name()));
    return r.rooms().contains(room.name())
        || !named && r.level().filter(room.level()::equals).isPresent();
  }

  /** The sides on which a roof comes down to its eaves. */
  static List<Side> eaves(Roof r) {
    return switch (r.shape()) {
      case GABLE ->
          r.ridge() == Direction.EAST_WEST
              ? List.of(Side.NORTH, Side.SOUTH)
              : List.of(Side.WEST, Side.EAST);
      case SHED -> r.lowSide().map(List::of).orElse(List.of());
      default -> List.of();
    };
  }

  private static String words(Roof r) {
    List<String> sides = eaves(r).stream().map(Side::word).toList();
    return sides.isEmpty() ? "known under gable and shed roofs alone" : String.join(" or ", sides);
  }

  /** A gable roof that ends on a knee wall on one side alone is not the same on both slopes. */
  private void both(Roof r) {
    for (Side side : eaves(r)) {
      boolean there = r.knees().stream().anyMatch(k -> k.face().side() == side);
      if (!there) {
        problems.add(
            r.where(),
            r.name(),
            "a knee wall on its " + side.word() + " side too",
            "",
            "roof '"
                + r.name()
                + "' has knee walls on one side alone: that is known under shed roofs alone");
      }
    }
  }

  private void window(Opening o) {
    o.wall()
        .face()
        .filter(f -> stated.containsKey(f.toString()) && o.kind() == Opening.Kind.WINDOW)
        .ifPresent(
            f ->
                add(
                    o.where(),
                    f,
                    "a door or an opening into the space behind",
                    "is a knee wall: no window is in it"));
  }

  /** Where a shaft in such a room meets the slope nobody has said. */
  private void chase(Chase chase) {
    for (Roof r : house.roofs()) {
      for (Room room : house.rooms()) {
        if (!r.knees().isEmpty() && covers(r, room) && chase.beside().room().equals(room.name())) {
          add(
              chase.beside().where(),
              chase.beside(),
              "a chase that ends in the storey below",
              "lies under the slope over knee walls: where a shaft there ends is not known");
          return;
        }
      }
    }
  }

  private void add(Where where, FaceRef face, String want, String text) {
    problems.add(where, face.toString(), want, "", "'" + face + "' " + text);
  }
}
