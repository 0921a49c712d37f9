package holloway.framing;

import holloway.geometry.Overlay;
import holloway.survey.Makeup;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;

/** How thick a room's ceiling lining is. */
public final class Ceilings {
  private Ceilings() {}

  /**
   * Nanometres from what is seen up to the joists: straps, if it hangs on any, and its layers or,
   * unless they are stated, its usual lining; a boarded garage with a room anywhere above it has
   * the thicker board (trade-facts C3-9).
   */
  public static long lining(Placed placed, PlacedRoom room) {
    return Makeup.ceilingLining(room.room(), room.room().garage() && roomsAbove(placed, room));
  }

  private static boolean roomsAbove(Placed placed, PlacedRoom room) {
    PlacedLevel own = placed.getLevel(room.room().level());
    var here = room.outline().toJts();
    return placed.rooms().stream()
        .filter(o -> placed.getLevel(o.room().level()).isOver(own))
        .anyMatch(o -> Overlay.intersection(o.outline().toJts(), here).getArea() > 10_000);
  }
}
