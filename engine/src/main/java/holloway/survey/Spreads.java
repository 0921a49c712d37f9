package holloway.survey;

import holloway.house.Side;
import java.util.TreeMap;

/** How well the position of each face is known, one standard deviation in nanometres. */
final class Spreads {
  private final TreeMap<String, Long> byFace = new TreeMap<>();

  void add(RoomShape shape, Adjustment x, Adjustment y) {
    for (Side side : Side.values()) {
      for (RoomShape.Face f : shape.faces(side)) {
        int next = (f.edge() + 1) % shape.local().size();
        long ew = Math.max(x.spread()[shape.x().get(f.edge())], x.spread()[shape.x().get(next)]);
        long ns = Math.max(y.spread()[shape.y().get(f.edge())], y.spread()[shape.y().get(next)]);
        long across = side.runsEastWest() ? ns : ew;
        byFace.put(
            key(shape.room().name(), side, f.ordinal()), f.isSquare() ? across : Math.max(ew, ns));
      }
    }
  }

  long of(Edge e) {
    return byFace.getOrDefault(key(e.room().name(), e.side(), e.ordinal()), 0L);
  }

  private static String key(String room, Side side, int ordinal) {
    return room + " " + side.word() + " " + ordinal;
  }
}
