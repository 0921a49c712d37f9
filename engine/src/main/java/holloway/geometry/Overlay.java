package holloway.geometry;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Cuts plans, in millimetres. Corners of askew walls may lie closer than the plain way of cutting
 * can tell apart; they are then snapped together first, far below a tenth of a millimetre.
 */
public final class Overlay {
  private Overlay() {}

  /** What both have in common. */
  public static Geometry shared(Geometry one, Geometry other) {
    try {
      return one.intersection(other);
    } catch (TopologyException tooClose) {
      return OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION);
    }
  }

  /** What is left of the one beside the other. */
  public static Geometry without(Geometry one, Geometry other) {
    try {
      return one.difference(other);
    } catch (TopologyException tooClose) {
      return OverlayNGRobust.overlay(one, other, OverlayNG.DIFFERENCE);
    }
  }
}
