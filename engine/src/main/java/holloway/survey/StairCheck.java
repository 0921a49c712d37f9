package holloway.survey;

import holloway.geometry.Box;
import holloway.geometry.Polygon2;
import holloway.house.House;
import holloway.house.Level;
import holloway.house.Stair;
import java.util.List;
import java.util.Optional;

/** Whether stated stairs lead anywhere: a level above, and floor of it round their opening. */
final class StairCheck {
  private StairCheck() {}

  static void check(House house, Columns columns, List<PlacedRoom> rooms, Problems problems) {
    for (Stair s : house.stairs()) {
      rooms.stream()
          .filter(r -> r.name().equals(s.near().room()))
          .findFirst()
          .ifPresent(r -> check(s, r, columns, rooms, problems));
    }
  }

  private static void check(
      Stair s, PlacedRoom room, Columns columns, List<PlacedRoom> rooms, Problems problems) {
    Optional<Level> over =
        columns.order().stream()
            .filter(l -> l.name().equals(room.room().level()))
            .findFirst()
            .flatMap(columns::over);
    if (over.isEmpty()) {
      problems.add(
          s.where(),
          "stair %s starts in %s, and no level lies over level %s",
          s.name(),
          room.name(),
          room.room().level());
      return;
    }
    String upper = over.get().name();
    Box b = PlacedStair.box(room, room.ceilingZ(), s);
    Polygon2 plan = Polygon2.rectangle(b.x0(), b.y0(), b.x1(), b.y1());
    if (!room.outline().toJts().buffer(1).covers(plan.toJts())) {
      problems.add(s.where(), "stair %s does not lie within %s", s.name(), room.name());
    }
    boolean floored =
        rooms.stream()
            .filter(r -> r.room().level().equals(upper))
            .anyMatch(r -> r.outline().toJts().intersects(plan.toJts()));
    if (!floored) {
      problems.add(s.where(), "stair %s comes up where level %s has no room", s.name(), upper);
    }
  }
}
