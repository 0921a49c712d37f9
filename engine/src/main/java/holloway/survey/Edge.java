package holloway.survey;

import holloway.geometry.Interval;
import holloway.house.Side;

/**
 * One face of a placed room seen in the frame of its heading: a stretch along at one t.
 *
 * @param below the room lies on the low-t side, so its wall lies above
 */
record Edge(PlacedRoom room, Side side, int ordinal, Interval s, long t, boolean below) {
  String id() {
    return room.name() + " " + side.word() + " " + ordinal;
  }
}
