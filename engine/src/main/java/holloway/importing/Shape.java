package holloway.importing;

import holloway.geometry.Overlay;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;

/**
 * A product's faces in the frame of the house, millimetres, and what was taken more simply than the
 * model has it.
 */
record Shape(List<List<Vec>> faces, Set<String> notes) {
  private static final GeometryFactory JTS = new GeometryFactory();

  /** A bottom may be this uneven. */
  private static final double LEVEL = 5;

  /** Smaller slips are no part of an outline, square millimetres. */
  private static final double LEAST_AREA = 1_000;

  Shape {
    if (faces.isEmpty()) {
      throw new Unreadable("it has no shape");
    }
  }

  double bottom() {
    return faces.stream().flatMap(List::stream).mapToDouble(Vec::z).min().orElseThrow();
  }

  double top() {
    return faces.stream().flatMap(List::stream).mapToDouble(Vec::z).max().orElseThrow();
  }

  Shape moved(Move move) {
    return new Shape(faces.stream().map(f -> f.stream().map(move::apply).toList()).toList(), notes);
  }

  /** Across its face, with a length of twice the face's area. */
  static Vec normal(List<Vec> face) {
    Vec sum = Vec.ZERO;
    for (int i = 1; i + 1 < face.size(); i++) {
      Vec a = face.get(i).minus(face.get(0));
      Vec b = face.get(i + 1).minus(face.get(0));
      sum = sum.plus(a.cross(b));
    }
    return sum;
  }

  /** The outline of its level bottom faces. */
  Outline footprint() {
    double z = bottom();
    List<List<Vec>> low =
        faces.stream().filter(f -> f.stream().allMatch(p -> p.z() - z <= LEVEL)).toList();
    return outline(low, "it has no level bottom");
  }

  /** Everything seen from above. */
  Outline shadow() {
    return outline(faces, "it covers nothing");
  }

  private Outline outline(List<List<Vec>> from, String otherwise) {
    List<Geometry> parts = new ArrayList<>();
    for (List<Vec> face : from) {
      Geometry g = polygon(face);
      if (g.getArea() > LEAST_AREA) {
        parts.add(g);
      }
    }
    Geometry whole = parts.isEmpty() ? null : united(parts);
    Polygon best = null;
    for (int i = 0; whole != null && i < whole.getNumGeometries(); i++) {
      if (whole.getGeometryN(i) instanceof Polygon p
          && (best == null || p.getArea() > best.getArea())) {
        best = p;
      }
    }
    if (best == null) {
      throw new Unreadable(otherwise);
    }
    return new Outline(corners(best), oddities(whole, best));
  }

  private static Geometry united(List<Geometry> parts) {
    try {
      return Overlay.union(parts);
    } catch (TopologyException e) {
      throw new Unreadable("its faces do not fit together");
    }
  }

  private static Set<String> oddities(Geometry whole, Polygon best) {
    Set<String> odd = new TreeSet<>();
    if (whole.getArea() - best.getArea() > LEAST_AREA) {
      odd.add("it lies in several parts, and only the largest is written");
    }
    if (best.getNumInteriorRing() > 0) {
      odd.add("a hole in its outline (a shaft or column) is left out");
    }
    return odd;
  }

  private static List<Vec> corners(Polygon p) {
    Coordinate[] ring = p.getExteriorRing().getCoordinates();
    List<Vec> out = new ArrayList<>();
    for (int i = 0; i + 1 < ring.length; i++) {
      out.add(new Vec(ring[i].x, ring[i].y, 0));
    }
    return out;
  }

  private static Geometry polygon(List<Vec> face) {
    Coordinate[] ring = new Coordinate[face.size() + 1];
    for (int i = 0; i <= face.size(); i++) {
      Vec v = face.get(i % face.size());
      // To the micrometre, so that faces that share an edge share it exactly.
      ring[i] = new Coordinate(Math.rint(v.x() * 1e3) / 1e3, Math.rint(v.y() * 1e3) / 1e3);
    }
    LinearRing shell = JTS.createLinearRing(ring);
    Polygon polygon = JTS.createPolygon(shell);
    return polygon.isValid() ? polygon : polygon.buffer(0);
  }

  /** Corners seen from above, and what of the shape they leave out. */
  record Outline(List<Vec> corners, Set<String> notes) {}
}
