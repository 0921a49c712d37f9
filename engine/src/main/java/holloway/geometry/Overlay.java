package holloway.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What two outlines share, what one has beside the other, and what they cover together, in
 * millimetres. Walls stand at angles and rooms are placed by adjusting tape readings, so nearly
 * coincident lines are usual; the geometry's own methods give up on some of them ({@code
 * TopologyException}), these snap them together and go on. Where two areas only touch, they share
 * nothing: lines and points left over are dropped.
 */
public final class Overlay {
  private static final GeometryFactory JTS = new GeometryFactory();

  private Overlay() {}

  /** What lies in both. */
  public static Geometry intersection(Geometry a, Geometry b) {
    if (a.isEmpty() || b.isEmpty()) {
      return JTS.createGeometryCollection();
    }
    int dimension = Math.min(a.getDimension(), b.getDimension());
    return only(dimension, OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION));
  }

  /** What lies in {@code a} and not in {@code b}. */
  public static Geometry difference(Geometry a, Geometry b) {
    return a.isEmpty() || b.isEmpty()
        ? a
        : only(a.getDimension(), OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE));
  }

  /** What lies in either. */
  public static Geometry union(Geometry a, Geometry b) {
    return union(List.of(a, b));
  }

  /** What lies in any of them, all of one dimension; an empty collection where there are none. */
  public static Geometry union(Collection<? extends Geometry> parts) {
    List<Geometry> there = new ArrayList<>(parts);
    there.removeIf(Geometry::isEmpty);
    return there.isEmpty()
        ? JTS.createGeometryCollection()
        : OverlayNGRobust.union(JTS.buildGeometry(there));
  }

  private static Geometry only(int dimension, Geometry g) {
    List<Geometry> kept = new ArrayList<>();
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (!g.getGeometryN(i).isEmpty() && g.getGeometryN(i).getDimension() == dimension) {
        kept.add(g.getGeometryN(i));
      }
    }
    return kept.size() == g.getNumGeometries() ? g : JTS.buildGeometry(kept);
  }
}
