package holloway.survey;

import holloway.house.Fact;
import holloway.house.Origin;
import holloway.house.Side;
import holloway.units.Length;
import java.util.TreeMap;

/** Rooms that stand already, as start positions, and ties from them to the next. */
final class Anchors {
  private final Network ew;
  private final Network ns;
  private final Texts texts;
  private final TreeMap<String, long[]> offset = new TreeMap<>();

  Anchors(Network ew, Network ns, Texts texts) {
    this.ew = ew;
    this.ns = ns;
    this.texts = texts;
  }

  boolean hold(String room) {
    return offset.containsKey(room);
  }

  /** Position of a room's first corner on the axis. */
  long of(RoomShape s, Axis axis) {
    return offset.get(s.room().name())[axis == Axis.X ? 0 : 1];
  }

  void settle(RoomShape s, long dx, long dy) {
    offset.put(s.room().name(), new long[] {dx, dy});
    for (int i = 0; i < s.local().size(); i++) {
      ew.start(s.x().get(i), s.corner(i).x() + dx);
      ns.start(s.y().get(i), s.corner(i).y() + dy);
    }
  }

  static long spread(Fact<Length> shift, long otherwise) {
    return shift.origin() == Origin.MEASURED ? Math.max(1, shift.spread().nm()) : otherwise;
  }

  /** Observes own = theirs + shift and returns the room's offset on that axis. */
  long tie(
      RoomShape.Face theirs, RoomShape.Face own, Fact<Length> shift, long spread, String what) {
    Network network = network(theirs.side());
    String text = texts.measured(what, shift);
    boolean taped = shift.origin() == Origin.MEASURED && shift.value().nm() != 0;
    network.observe(
        theirs.unknown(),
        own.unknown(),
        shift.value().nm(),
        spread,
        taped ? Label.taped(text, shift.where()) : Label.inLine(text, shift.where()));
    return of(theirs.shape(), network.axis()) + theirs.across() + shift.value().nm() - own.across();
  }

  Network network(Side side) {
    return Axis.across(side) == Axis.X ? ew : ns;
  }
}
