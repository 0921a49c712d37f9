package holloway.survey;

import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** A strip whose framing has found its two ends; {@code range} in the heading's frame. */
record Framed(Strip strip, Interval range) {
  private static final GeometryFactory JTS = new GeometryFactory();

  /** The framing (or masonry) seen from above, JTS millimetres. */
  Polygon corePlan() {
    return plan(strip.heading().frame(), range, strip.core());
  }

  /** The whole thickness seen from above. */
  Polygon wholePlan() {
    return plan(strip.heading().frame(), range, strip.t());
  }

  /** Whole thickness, for an outer wall only from the room's face to the outer face of the core. */
  Polygon liningPlan() {
    Interval t = strip.t();
    Interval c = strip.core();
    Interval inner =
        switch (strip.outside()) {
          case 0 -> new Interval(c.lo(), t.hi());
          case 1 -> new Interval(t.lo(), c.hi());
          default -> t;
        };
    return plan(strip.heading().frame(), range, inner);
  }

  static Polygon plan(Frame frame, Interval s, Interval t) {
    List<Coordinate> ring = new ArrayList<>();
    long[][] corners = {
      {s.lo(), t.lo()}, {s.hi(), t.lo()}, {s.hi(), t.hi()}, {s.lo(), t.hi()}, {s.lo(), t.lo()}
    };
    for (long[] c : corners) {
      Point3 p = frame.toWorld(c[0], c[1], 0);
      ring.add(new Coordinate(p.x() / 1e6, p.y() / 1e6));
    }
    return JTS.createPolygon(ring.toArray(Coordinate[]::new));
  }
}
