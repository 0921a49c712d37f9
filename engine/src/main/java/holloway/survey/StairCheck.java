package holloway.survey;

import holloway.geometry.Box;
import holloway.geometry.Polygon2;
import holloway.house.House;
import holloway.house.Level;
import holloway.house.Stair;
import java.util.List;

/** Whether stated stairs lead anywhere: a level above, and floor of it round their opening. */
final class StairCheck {
  private StairCheck() {}

  static void check(House house, List<Level> order, List<PlacedRoom> rooms, Problems problems) {
    for (Stair s : house.stairs()) {
      rooms.stream()
          .filter(r -> r.name().equals(s.near().room()))
          .findFirst()
          .ifPresent(r -> check(s, r, order, rooms, problems));
    }
  }

  private static void check(
      Stair s, PlacedRoom room, List<Level> order, List<PlacedRoom> rooms, Problems problems) {
    int at = order.stream().map(Level::name).toList().indexOf(room.room().level());
    if (at + 1 >= order.size()) {
      problems.add(
          s.where(),
          "stair %s starts in %s, and no level lies over level %s",
          s.name(),
          room.name(),
          room.room().level());
      return;
    }
    String upper = order.get(at + 1).name();
    Box b = PlacedStair.box(room, room.ceilingZ(), s);
    Polygon2 plan = Polygon2.rectangle(b.x0(), b.y0(), b.x1(), b.y1());
    if (!room.outline().toJts().buffer(1).covers(plan.toJts())) {
      problems.add(s.where(), "stair %s does not lie within %s", s.name(), room.name());
    }
    boolean over =
        rooms.stream()
            .filter(r -> r.room().level().equals(upper))
            .anyMatch(r -> r.outline().toJts().intersects(plan.toJts()));
    if (!over) {
      problems.add(s.where(), "stair %s comes up where level %s has no room", s.name(), upper);
    }
  }
}
