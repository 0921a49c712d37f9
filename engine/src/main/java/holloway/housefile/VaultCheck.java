package holloway.housefile;

import holloway.house.House;
import holloway.house.Roof;
import holloway.house.Room;
import holloway.house.Where;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Vaulted ceilings: a roof with rafters and two or one slope over them, and nothing between. */
final class VaultCheck {
  private final House house;
  private final Problems problems;
  private final Map<String, Room> vaulted = new TreeMap<>();

  private VaultCheck(House house, Problems problems) {
    this.house = house;
    this.problems = problems;
    house.rooms().stream().filter(Room::vaulted).forEach(r -> vaulted.put(r.name(), r));
  }

  static void check(House house, Request request, Problems problems) {
    VaultCheck c = new VaultCheck(house, problems);
    c.vaulted.values().forEach(c::roof);
    house
        .roofs()
        .forEach(r -> r.hatches().forEach(h -> c.over(h.at().room(), "a hatch", r.where())));
    house
        .roofs()
        .forEach(r -> r.skylights().forEach(k -> c.over(k.at().room(), "a shaft", k.where())));
    house
        .obstacles()
        .forEach(
            o ->
                o.inVoid()
                    .filter(v -> v.above() || v.hung())
                    .ifPresent(v -> c.over(v.at().room(), "an obstacle", v.at().where())));
    for (Outlet o : request.outlets()) {
      o.spots().forEach(s -> c.outlet(o, s));
    }
  }

  private void roof(Room room) {
    List<Roof> over = house.roofs().stream().filter(r -> covers(r, room)).toList();
    if (over.isEmpty()) {
      add(
          room.where(),
          room.name(),
          "a roof over it",
          "has a vaulted ceiling, but no roof is stated over it");
    }
    for (Roof r : over) {
      if (r.shape() != Roof.Shape.GABLE && r.shape() != Roof.Shape.SHED) {
        add(
            room.where(),
            room.name(),
            "shape: gable or shed",
            "has a vaulted ceiling under a "
                + Shape.word(r.shape())
                + " roof; that is known under gable and shed roofs alone");
      }
      if (r.frame() == Roof.Frame.TRUSSES) {
        add(
            room.where(),
            room.name(),
            "frame: rafters",
            "has a vaulted ceiling under trusses: the slope of scissor trusses is not known here,"
                + " only board under rafters is");
      }
    }
  }

  private boolean covers(Roof r, Room room) {
    boolean named = house.roofs().stream().anyMatch(o -> o.rooms().contains(room.name()));
    return r.rooms().contains(room.name())
        || !named && r.level().filter(room.level()::equals).isPresent();
  }

  private void outlet(Outlet o, Spot s) {
    if (s instanceof Spot.OnCeiling c) {
      over(c.at().room(), "the ceiling outlet '" + o.name() + "'", c.at().where());
    }
  }

  private void over(String room, String what, Where where) {
    if (vaulted.containsKey(room)) {
      add(
          where,
          room,
          "a room with a level ceiling",
          "has a vaulted ceiling: no void lies over it for " + what);
    }
  }

  private void add(Where where, String room, String want, String text) {
    problems.add(where, room, want, "", "room '" + room + "' " + text);
  }
}
