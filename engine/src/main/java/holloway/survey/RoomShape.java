package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Fact;
import holloway.house.Room;
import holloway.house.Side;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A room's outline as stated, with the unknowns of its faces. Consecutive corners with the same
 * stated x (or y) share one unknown: that is one visible face. Everything is relative to the first
 * corner of the outline.
 *
 * @param local corners counter-clockwise, nanometres
 * @param x for each corner, its unknown in the east-west network; {@code y} likewise
 */
record RoomShape(Room room, List<Point2> local, List<Integer> x, List<Integer> y) {

  /** One face of the outline: the edge from corner {@code edge} to the next. */
  record Face(RoomShape shape, Side side, int ordinal, int edge) {
    boolean isSquare() {
      Point2 a = shape.corner(edge);
      Point2 b = shape.corner(edge + 1);
      return side.runsEastWest() ? a.y() == b.y() : a.x() == b.x();
    }

    /** The unknown of its position on the axis it looks along. */
    int unknown() {
      return side.runsEastWest() ? shape.y.get(edge) : shape.x.get(edge);
    }

    /** Local position on the axis it looks along. */
    long across() {
      Point2 a = shape.corner(edge);
      return side.runsEastWest() ? a.y() : a.x();
    }

    /** Local stretch along itself. */
    Interval along() {
      Point2 a = shape.corner(edge);
      Point2 b = shape.corner(edge + 1);
      long p = side.runsEastWest() ? a.x() : a.y();
      long q = side.runsEastWest() ? b.x() : b.y();
      return new Interval(Math.min(p, q), Math.max(p, q));
    }

    @Override
    public String toString() {
      return shape.room.name() + " " + side.word() + (ordinal == 1 ? "" : " " + ordinal);
    }
  }

  /** Adds the room's unknowns and its own measurements to both networks. */
  static RoomShape of(Room room, Network ew, Network ns, Texts texts) {
    List<Room.Corner> stated =
        new ArrayList<>(room.size().map(RoomShape::box).orElse(room.outline()));
    Room.Corner first = stated.get(0);
    List<Point2> local = new ArrayList<>();
    for (Room.Corner c : stated) {
      local.add(
          new Point2(
              c.x().value().nm() - first.x().value().nm(),
              c.y().value().nm() - first.y().value().nm()));
    }
    if (new Polygon2(local).signedAreaMm2() < 0) {
      Collections.reverse(local.subList(1, local.size()));
      Collections.reverse(stated.subList(1, stated.size()));
    }
    List<Fact<Length>> xs = stated.stream().map(Room.Corner::x).toList();
    List<Fact<Length>> ys = stated.stream().map(Room.Corner::y).toList();
    return new RoomShape(
        room, List.copyOf(local), unknowns(room, xs, ew, texts), unknowns(room, ys, ns, texts));
  }

  private static List<Room.Corner> box(Room.Size size) {
    Fact<Length> nought =
        new Fact<>(Length.ZERO, Fact.TAPE, size.eastWest().origin(), size.eastWest().where());
    Fact<Length> w = size.eastWest();
    Fact<Length> d = size.northSouth();
    return List.of(
        new Room.Corner(nought, nought),
        new Room.Corner(w, nought),
        new Room.Corner(w, d),
        new Room.Corner(nought, d));
  }

  private static List<Integer> unknowns(
      Room room, List<Fact<Length>> facts, Network network, Texts texts) {
    int n = facts.size();
    int[] group = new int[n];
    int groups = 0;
    for (int i = 1; i < n; i++) {
      boolean same = facts.get(i).value().equals(facts.get(i - 1).value());
      group[i] = same ? group[i - 1] : ++groups;
    }
    for (int i = n - 1; i > 0 && facts.get(i).value().equals(facts.get(0).value()); i--) {
      group[i] = 0;
    }
    List<Integer> out = new ArrayList<>();
    Map<Integer, Integer> ids = new TreeMap<>();
    for (int i = 0; i < n; i++) {
      Integer id = ids.get(group[i]);
      if (id == null) {
        id = network.addUnknown(room.name());
        ids.put(group[i], id);
        if (group[i] != 0) {
          long value = facts.get(i).value().nm() - facts.get(0).value().nm();
          String text =
              room.size().isPresent()
                  ? texts.measured(room.name() + " " + network.axis().word(), facts.get(i))
                  : texts.measured(room.name() + " corner " + network.axis().word(), facts.get(i));
          network.observe(
              out.get(0),
              id,
              value,
              facts.get(i).spread().nm(),
              Label.taped(text, facts.get(i).where()));
        }
      }
      out.add(id);
    }
    return List.copyOf(out);
  }

  Point2 corner(int i) {
    return local.get(i % local.size());
  }

  Polygon2 polygon() {
    return new Polygon2(local);
  }

  /** Faces of one side in order from west or south, angled ones included. */
  List<Face> faces(Side side) {
    List<Integer> edges = new ArrayList<>();
    for (int i = 0; i < local.size(); i++) {
      if (Faces.sideOf(corner(i), corner(i + 1)) == side) {
        edges.add(i);
      }
    }
    List<Placed.Segment> order = Faces.of(polygon(), side);
    edges.sort(Comparator.comparingInt(e -> order.indexOf(segment(side, e))));
    List<Face> out = new ArrayList<>();
    for (int e : edges) {
      out.add(new Face(this, side, out.size() + 1, e));
    }
    return out;
  }

  private Placed.Segment segment(Side side, int edge) {
    Point2 a = corner(edge);
    Point2 b = corner(edge + 1);
    boolean forward = side.runsEastWest() ? a.x() <= b.x() : a.y() <= b.y();
    return forward ? new Placed.Segment(a, b) : new Placed.Segment(b, a);
  }

  List<Face> squareFaces(Side side) {
    return faces(side).stream().filter(Face::isSquare).toList();
  }

  /** The face of that side which lies furthest out; the first of equals. */
  Optional<Face> outermost(Side side) {
    boolean far = side == Side.NORTH || side == Side.EAST;
    Comparator<Face> by = Comparator.comparingLong(f -> far ? -f.across() : f.across());
    return squareFaces(side).stream().min(by);
  }

  /**
   * What is brought in line on that side: its outermost straight face, or where it has none (a
   * canted bay, a tower with eight walls) the corner that lies furthest out, the first of equals.
   */
  Face edge(Side side) {
    return outermost(side).orElseGet(() -> corner(side));
  }

  private Face corner(Side side) {
    int sign = side == Side.NORTH || side == Side.EAST ? -1 : 1;
    return IntStream.range(0, local.size())
        .mapToObj(i -> new Face(this, side, 1, i))
        .min(Comparator.comparingLong(f -> sign * f.across()))
        .orElseThrow();
  }
}
