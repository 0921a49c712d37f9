package holloway.routing;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.hollow.Hollow;
import holloway.hollow.Solids;
import holloway.hollow.Way;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** Cable clipped to faces: round the walls of a room, and round the outside of the house. */
final class FaceNets {
  /** Cable clipped to a ceiling or floor keeps this off it, as it does off a wall. */
  private static final long OFF_FACE = 12_000_000;

  /** Cable does not lie on a floor further from the wall than this, millimetres. */
  private static final double BESIDE_WALL = 150;

  private final Placed placed;
  private final String ground;
  private final GraphDraft draft;
  private final Prices prices;
  private final Solids solids;

  private final FaceLines lines;

  FaceNets(
      Placed placed,
      String ground,
      GraphDraft draft,
      Prices prices,
      Solids solids,
      FaceLines lines) {
    this.placed = placed;
    this.ground = ground;
    this.lines = lines;
    this.draft = draft;
    this.prices = prices;
    this.solids = solids;
  }

  /** Round the walls of a room, under its ceiling and over its floor. */
  void room(Hollow h, List<Entry> entries) {
    PlacedRoom r = placed.getRoom(h.owner());
    long top = h.clear().z1();
    FaceLines.Line line = lines.room(r, top);
    boolean plain = r.room().plain();
    RingNet.Terms terms =
        new RingNet.Terms(
            h.id(),
            h.kind(),
            plain ? "plain" : "surface",
            !plain,
            plain ? 0 : Way.SURFACE.bit(),
            new Interval(r.floorZ() + OFF_FACE, top - OFF_FACE));
    new RingNet(draft, prices, solids, terms, line.corners())
        .keepOff(line.panes())
        .connect(
            entries.stream().filter(e -> !acrossFloor(r, e)).toList(),
            new long[] {r.floorZ() + 60_000_000, top - 40_000_000},
            line.gaps());
  }

  /** A hole in the midst of a floor: people would walk over what comes out of it. */
  private static boolean acrossFloor(PlacedRoom r, Entry e) {
    return e.at().z() <= r.floorZ() + OFF_FACE && !nearLine(r.outline().corners(), e.at().plan());
  }

  /** Round each building, at the height of its ground floor. */
  void outside(Hollow h, List<Entry> entries) {
    long floor = placed.getLevel(ground).floorZ();
    List<FaceLines.Line> all = lines.buildings();
    for (int i = 0; i < all.size(); i++) {
      outside(h, entries, all.get(i), floor, i == 0 ? "" : "/building-" + (i + 1));
    }
  }

  private void outside(Hollow h, List<Entry> entries, FaceLines.Line line, long floor, String lap) {
    RingNet.Terms terms =
        new RingNet.Terms(h.id(), h.kind(), "outside", false, Way.OUTSIDE.bit(), h.clear().z());
    List<Entry> onFace =
        entries.stream()
            .filter(e -> nearLine(line.corners(), draft.nodes.get(e.node()).at().plan()))
            .toList();
    new RingNet(draft, prices, solids, terms, line.corners(), lap)
        .connect(onFace, new long[] {floor + 250_000_000}, line.gaps());
  }

  /**
   * Storeys that step back from the ground floor's outside face are not reached by clipping
   * straight up.
   */
  private static boolean nearLine(List<Point2> line, Point2 p) {
    return near(line, p, BESIDE_WALL);
  }

  /** Is a place within so many millimetres of a closed line? */
  static boolean near(List<Point2> line, Point2 p, double mm) {
    for (int i = 0; i < line.size(); i++) {
      Point2 a = line.get(i);
      Point2 b = line.get((i + 1) % line.size());
      LineSegment side = new LineSegment(a.x() / 1e6, a.y() / 1e6, b.x() / 1e6, b.y() / 1e6);
      if (side.distance(new Coordinate(p.x() / 1e6, p.y() / 1e6)) < mm) {
        return true;
      }
    }
    return false;
  }
}
