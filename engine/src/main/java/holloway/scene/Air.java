package holloway.scene;

import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** On which side of a cable that lies on the face of a wall the air is, and not the wall. */
interface Air {
  /**
   * 1 where it is towards the side given, -1 where it is on the other, 0 where on both or neither.
   *
   * @param aside level, of length 1
   */
  int side(Vec at, Vec aside);

  /** Millimetres: less than a wall is thick, more than a cable lies away from it. */
  double BESIDE = 60;

  /** Through an outer wall and into the room behind. */
  double THROUGH = 400;

  /** For each hollow that is the air of a room or before the outer walls, by its id. */
  static Map<String, Air> of(HollowHouse house) {
    List<PlacedRoom> rooms = house.framed().placed().rooms();
    List<Polygon> inside = new ArrayList<>();
    rooms.forEach(r -> inside.add(r.outline().toJts()));
    Map<String, Air> out = new HashMap<>();
    for (Hollow h : house.hollows()) {
      if (h.kind() == HollowKind.ROOM_SURFACE && h.area().isPresent()) {
        Polygon room = h.area().get().toJts();
        out.put(h.id(), (at, s) -> in(room, at, s, BESIDE) - in(room, at, s, -BESIDE));
      } else if (h.kind() == HollowKind.OUTSIDE_FACE) {
        out.put(h.id(), (at, s) -> any(inside, at, s, -THROUGH) - any(inside, at, s, THROUGH));
      }
    }
    return out;
  }

  private static int any(List<Polygon> rooms, Vec at, Vec aside, double far) {
    return rooms.stream().anyMatch(r -> in(r, at, aside, far) == 1) ? 1 : 0;
  }

  private static int in(Polygon room, Vec at, Vec aside, double far) {
    Vec p = at.plus(aside.times(far));
    Coordinate c = new Coordinate(p.x(), p.y());
    return room.contains(room.getFactory().createPoint(c)) ? 1 : 0;
  }
}
