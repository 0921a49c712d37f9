package holloway.housefile;

import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.Obstacle;
import holloway.house.Room;

/** A pier stands under a floor that has a crawlspace under it. */
final class PierCheck {
  private PierCheck() {}

  static void check(House house, Problems problems) {
    for (Obstacle o : house.obstacles()) {
      if (o.kind() == Obstacle.Kind.PIER && o.inVoid().isPresent()) {
        String room = o.inVoid().get().at().room();
        if (house.rooms().stream()
            .filter(r -> r.name().equals(room))
            .noneMatch(r -> over(house, r))) {
          problems.add(
              o.where(),
              "pier",
              "floor: { joists: 2x10, run: east-west, over: crawlspace }",
              "",
              "a pier stands in a crawlspace, and the floor of '" + room + "' is over none");
        }
      }
    }
  }

  private static boolean over(House house, Room r) {
    FloorSpec floor =
        r.floor()
            .orElseGet(
                () ->
                    house.levels().stream()
                        .filter(l -> l.name().equals(r.level()))
                        .findFirst()
                        .map(l -> l.floor())
                        .orElse(null));
    return floor != null && floor.crawlspace().isPresent();
  }
}
