package holloway.survey;

import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.List;

/**
 * All faces of a level that run one way, in a frame with u along them: east, north, or for angled
 * faces from their west end.
 */
record Heading(Frame frame, List<Edge> edges) {
  /** Directions closer than this count as one; sine of the angle. */
  private static final double SAME = 1e-3;

  static final Frame EAST = Frame.eastWest(new Point3(0, 0, 0));
  static final Frame NORTH = Frame.northSouth(new Point3(0, 0, 0));

  boolean isEastWest() {
    return frame.equals(EAST);
  }

  boolean isSquare() {
    return frame.equals(EAST) || frame.equals(NORTH);
  }

  /** East-west first, then north-south, then angled ones in order of their rooms. */
  static List<Heading> of(List<PlacedRoom> rooms) {
    List<Heading> out = new ArrayList<>();
    out.add(new Heading(EAST, new ArrayList<>()));
    out.add(new Heading(NORTH, new ArrayList<>()));
    for (PlacedRoom r : rooms) {
      for (Side side : Side.values()) {
        int ordinal = 0;
        for (Placed.Segment f : Faces.of(r.outline(), side)) {
          ordinal++;
          Heading h = find(out, f);
          h.edges.add(h.edge(r, side, ordinal, f));
        }
      }
    }
    return out;
  }

  private static Heading find(List<Heading> known, Placed.Segment f) {
    double dx = (f.end().x() - f.start().x()) / 1e6;
    double dy = (f.end().y() - f.start().y()) / 1e6;
    double l = Math.sqrt(dx * dx + dy * dy);
    boolean turn = dx < 0 || dx == 0 && dy < 0;
    double ux = (turn ? -dx : dx) / l;
    double uy = (turn ? -dy : dy) / l;
    for (Heading h : known) {
      double sine = h.frame.u().x() * uy - h.frame.u().y() * ux;
      boolean exact = !h.isSquare() || dx == 0 || dy == 0;
      if (exact && Math.abs(sine) < SAME) {
        return h;
      }
    }
    Heading h = new Heading(Frame.level(new Point3(0, 0, 0), ux, uy), new ArrayList<>());
    known.add(h);
    return h;
  }

  private Edge edge(PlacedRoom r, Side side, int ordinal, Placed.Segment f) {
    Point3 a = frame.toLocal(f.start().at(0));
    Point3 b = frame.toLocal(f.end().at(0));
    Interval s = new Interval(Math.min(a.x(), b.x()), Math.max(a.x(), b.x()));
    boolean below = isBelow(r, f);
    return new Edge(r, side, ordinal, s, (a.y() + b.y()) / 2, below);
  }

  /** The room lies to the right of u when its counter-clockwise outline runs against u here. */
  private boolean isBelow(PlacedRoom r, Placed.Segment f) {
    List<Point2> c = r.outline().corners();
    for (int i = 0; i < c.size(); i++) {
      Point2 a = c.get(i);
      Point2 b = c.get((i + 1) % c.size());
      if (a.equals(f.start()) && b.equals(f.end()) || a.equals(f.end()) && b.equals(f.start())) {
        double along = frame.u().x() * (b.x() - a.x()) + frame.u().y() * (b.y() - a.y());
        return along < 0;
      }
    }
    throw new IllegalStateException("no such edge of " + r.name());
  }
}
