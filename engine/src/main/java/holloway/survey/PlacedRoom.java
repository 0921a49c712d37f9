package holloway.survey;

import holloway.geometry.Polygon2;
import holloway.house.Room;

/**
 * A room in the world: clear outline (board to board), finished floor and ceiling underside in
 * nanometres.
 */
public record PlacedRoom(Room room, Polygon2 outline, long floorZ, long ceilingZ) {
  public String name() {
    return room.name();
  }
}
