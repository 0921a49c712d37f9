package holloway.housefile;

import holloway.house.House;
import holloway.house.Roof;
import holloway.house.Room;
import java.util.Optional;

/** A skylight's shaft stands in the roof over its room, and the room's ceiling is board there. */
final class SkylightCheck {
  private SkylightCheck() {}

  static void check(House house, Problems problems) {
    for (Roof r : house.roofs()) {
      for (Roof.Skylight k : r.skylights()) {
        String room = k.at().room();
        Optional<Room> in = house.rooms().stream().filter(o -> o.name().equals(room)).findFirst();
        if (in.isPresent() && !covers(house, r, in.get())) {
          problems.add(
              k.where(),
              room,
              "a room that this roof lies over",
              "",
              "roof '%s' does not lie over '%s': the shaft of a skylight goes straight up into it"
                  .formatted(r.name(), room));
        }
        if (house.soffits().stream().anyMatch(s -> s.room().equals(room) && s.face().isEmpty())) {
          problems.add(
              k.where(),
              room,
              "a room without a dropped ceiling",
              "",
              "'%s' has a dropped ceiling: how a skylight's shaft passes it is not known here"
                  .formatted(room));
        }
      }
    }
  }

  private static boolean covers(House house, Roof roof, Room room) {
    boolean named = house.roofs().stream().anyMatch(o -> o.rooms().contains(room.name()));
    return roof.rooms().contains(room.name())
        || !named && roof.level().filter(room.level()::equals).isPresent();
  }
}
