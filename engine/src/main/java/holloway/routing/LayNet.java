package holloway.routing;

import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.hollow.Away;
import holloway.hollow.Hollow;
import holloway.hollow.Solids;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * Laying by hand over a floor: across the chords of an attic, or under the joists of a crawlspace
 * or open cellar ceiling. Cable lies on lines square to the members through the places that matter;
 * every other place leads to the nearest lines.
 */
final class LayNet {
  /** Lines are shared by places within half of this; they are counted from the middle. */
  private static final long SNAP = 50_000_000;

  private static final long COARSE = 3_000_000_000L;
  private static final long CABLE = 9_000_000;

  /** The short ones last: for the narrow gap between a wall and the joist that runs along it. */
  private static final long[] INWARD = {
    0, 200_000_000, 300_000_000, 400_000_000, 520_000_000, 100_000_000, 150_000_000
  };

  /**
   * How one space is laid: its key in the effort table, its height, the height between joists, its
   * works and ways; {@code round} adds lines past the corners that stand into its outline, {@code
   * posts} are corners of what stands in it and is gone round as well.
   */
  record Terms(
      Hollow hollow,
      String key,
      long layZ,
      long betweenZ,
      int[] works,
      int ways,
      boolean round,
      List<Point2> posts) {}

  private final GraphDraft draft;
  private final Prices prices;
  private final Solids solids;
  private final Terms terms;
  private final Away away;
  private final Point2 middle;
  private final LayMemory.Floor floor;

  /** Made when somebody asks what is not remembered. */
  private PreparedGeometry area;

  private final Map<Point2, Integer> points = new HashMap<>();
  private final Map<Long, TreeMap<Long, Integer>> columns = new TreeMap<>();
  private final Map<Long, TreeMap<Long, Integer>> rows = new TreeMap<>();

  /**
   * @param memory of this house
   */
  LayNet(GraphDraft draft, Prices prices, Solids solids, Terms terms, Away away, LayMemory memory) {
    this.floor = memory.of(new LayMemory.Plane(terms.hollow(), terms.layZ(), terms.betweenZ()));
    this.draft = draft;
    this.prices = prices;
    this.solids = solids;
    this.terms = terms;
    this.away = away;
    Polygon2 whole = terms.hollow().area().orElseThrow();
    this.middle = new Point2(whole.xRange().mid(), whole.yRange().mid());
  }

  /**
   * Adds lines and edges for the entries; an entry that cannot be led onto a line stays
   * unconnected.
   */
  void connect(List<Entry> entries) {
    Map<Entry, LayMemory.Approach> approaches = new java.util.LinkedHashMap<>();
    for (Entry e : entries) {
      approach(e.at()).ifPresent(a -> approaches.put(e, a));
    }
    TreeSet<Long> xs = new TreeSet<>();
    TreeSet<Long> ys = new TreeSet<>();
    coarse(xs, ys);
    List<Point2> corners = new ArrayList<>(terms.posts());
    if (terms.round()) {
      corners.addAll(InnerCorners.of(terms.hollow().area().orElseThrow()));
    }
    corners.forEach(
        c -> {
          xs.addAll(beside(c.x(), middle.x()));
          ys.addAll(beside(c.y(), middle.y()));
        });
    approaches.forEach(
        (e, a) -> {
          if (e.hub()) {
            xs.add(a.anchor().x());
            ys.add(a.anchor().y());
          }
        });
    for (long x : xs) {
      for (long y : ys) {
        point(new Point2(x, y), true, true);
      }
    }
    approaches.forEach((e, a) -> lead(e, a, xs, ys));
    join(columns, true);
    join(rows, false);
  }

  private void coarse(TreeSet<Long> xs, TreeSet<Long> ys) {
    Polygon2 p = terms.hollow().area().orElseThrow();
    for (long x = p.xRange().mid(); x < p.xRange().hi(); x += COARSE) {
      xs.add(snap(x, middle.x()));
      xs.add(snap(2 * middle.x() - x, middle.x()));
    }
    for (long y = p.yRange().mid(); y < p.yRange().hi(); y += COARSE) {
      ys.add(snap(y, middle.y()));
      ys.add(snap(2 * middle.y() - y, middle.y()));
    }
  }

  /** The lines on both sides of an edge, at least a cable off it. */
  private static List<Long> beside(long v, long middle) {
    long off = v - middle;
    return List.of(
        middle + Math.floorDiv(off - CABLE, SNAP) * SNAP,
        middle + Math.floorDiv(off + CABLE + SNAP - 1, SNAP) * SNAP);
  }

  private static long snap(long v, long middle) {
    long off = v - middle;
    return middle + Long.signum(off) * Math.round(Math.abs(off) / (double) SNAP) * SNAP;
  }

  /**
   * Straight down or up from the plane; else from a step inward, then between the joists, as over
   * the head of a wall.
   */
  private Optional<LayMemory.Approach> look(Point3 at) {
    for (long in : INWARD) {
      for (Point2 step : steps(at.plan(), in)) {
        Point2 anchor = new Point2(snap(step.x(), middle.x()), snap(step.y(), middle.y()));
        for (Point2 turn :
            List.of(new Point2(step.x(), anchor.y()), new Point2(anchor.x(), step.y()))) {
          List<Point3> path =
              new ArrayList<>(
                  List.of(anchor.at(terms.layZ()), turn.at(terms.layZ()), step.at(terms.layZ())));
          if (in > 0) {
            path.addAll(List.of(step.at(terms.betweenZ()), at.withZ(terms.betweenZ())));
          }
          path.add(at);
          List<Point3> tidy = Paths.tidy(path);
          if (covers(anchor) && covers(at.plan()) && inside(tidy) && Paths.clear(solids, tidy)) {
            return Optional.of(new LayMemory.Approach(anchor, tidy));
          }
        }
        if (in == 0) {
          break;
        }
      }
    }
    return Optional.empty();
  }

  /** Each way by so much, first those that lead to the middle of the space. */
  private List<Point2> steps(Point2 p, long in) {
    List<Point2> out = new ArrayList<>();
    for (long[] d : new long[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
      out.add(away.plus(p, d[0] * in, d[1] * in));
    }
    out.sort(Comparator.comparingLong(s -> Math.round(s.at(0).distanceTo(middle.at(0)) / 1e6)));
    return out;
  }

  private Optional<LayMemory.Approach> approach(Point3 at) {
    return floor.approach(at, () -> look(at));
  }

  private boolean covers(Point2 p) {
    Coordinate at = new Coordinate(p.x() / 1e6, p.y() / 1e6);
    return floor.covers(p, () -> area().covers(new GeometryFactory().createPoint(at)));
  }

  /** A step may lead from the space over a notch of its outline and back into it. */
  private boolean inside(List<Point3> path) {
    for (int i = 1; i < path.size(); i++) {
      Point2 a = path.get(i - 1).plan();
      Point2 b = path.get(i).plan();
      if (a.equals(b) ? !covers(a) : !covers(a, b)) {
        return false;
      }
    }
    return true;
  }

  private boolean covers(Point2 p, Point2 q) {
    Coordinate[] line = {
      new Coordinate(p.x() / 1e6, p.y() / 1e6), new Coordinate(q.x() / 1e6, q.y() / 1e6)
    };
    return area().covers(new GeometryFactory().createLineString(line));
  }

  private PreparedGeometry area() {
    if (area == null) {
      area =
          PreparedGeometryFactory.prepare(terms.hollow().area().orElseThrow().toJts().buffer(0.01));
    }
    return area;
  }

  private void point(Point2 p, boolean onColumn, boolean onRow) {
    if (!points.containsKey(p) && !covers(p)) {
      return;
    }
    int id =
        points.computeIfAbsent(
            p,
            k ->
                draft.node(
                    terms.hollow().id() + "/at-" + k.x() / 1_000_000 + "-" + k.y() / 1_000_000,
                    k.at(terms.layZ()),
                    terms.works()));
    if (onColumn) {
      columns.computeIfAbsent(p.x(), k -> new TreeMap<>()).put(p.y(), id);
    }
    if (onRow) {
      rows.computeIfAbsent(p.y(), k -> new TreeMap<>()).put(p.x(), id);
    }
  }

  /**
   * Joins an entry to its anchor, and the anchor along both axes to the nearest line on each side.
   */
  private void lead(Entry e, LayMemory.Approach a, TreeSet<Long> xs, TreeSet<Long> ys) {
    point(a.anchor(), true, true);
    Integer anchor = points.get(a.anchor());
    if (anchor == null) {
      return;
    }
    leg(anchor, e.node(), a.path());
    for (Long x : Arrays.asList(xs.floor(a.anchor().x()), xs.ceiling(a.anchor().x()))) {
      if (x != null) {
        point(new Point2(x, a.anchor().y()), true, true);
      }
    }
    for (Long y : Arrays.asList(ys.floor(a.anchor().y()), ys.ceiling(a.anchor().y()))) {
      if (y != null) {
        point(new Point2(a.anchor().x(), y), true, true);
      }
    }
  }

  /** Edges between neighbours on every line, where the stretch stays inside and meets nothing. */
  private void join(Map<Long, TreeMap<Long, Integer>> lines, boolean column) {
    lines.forEach(
        (fixed, line) -> {
          Map.Entry<Long, Integer> before = null;
          for (Map.Entry<Long, Integer> now : line.entrySet()) {
            if (before != null) {
              Point2 p =
                  column ? new Point2(fixed, before.getKey()) : new Point2(before.getKey(), fixed);
              Point2 q = column ? new Point2(fixed, now.getKey()) : new Point2(now.getKey(), fixed);
              if (floor.isOpen(p, q, () -> open(p, q))) {
                leg(
                    before.getValue(),
                    now.getValue(),
                    List.of(p.at(terms.layZ()), q.at(terms.layZ())));
              }
            }
            before = now;
          }
        });
  }

  private boolean open(Point2 p, Point2 q) {
    return covers(p, q) && solids.free(p.at(terms.layZ()), q.at(terms.layZ()), CABLE);
  }

  private void leg(int a, int b, List<Point3> path) {
    long price = prices.lay(terms.key(), Laid.lengthOf(path), false);
    RouteGraph.Piece leg =
        new RouteGraph.Piece.Leg(terms.hollow().id(), terms.hollow().kind(), path, false, price);
    draft.edge(a, b, List.of(leg), new int[0], new int[0], terms.ways(), false);
  }
}
