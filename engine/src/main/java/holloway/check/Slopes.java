package holloway.check;

import holloway.framing.Attic;
import holloway.house.Direction;
import holloway.house.Roof;
import holloway.house.Side;

/**
 * How far in from each eave a body fits under a roof, in the referee's own figures. At x from an
 * outer bearing face the rafter's underside is heel + x pitch - chord / cos above the plate
 * (trade-facts D21, D23), and the body lies over the chords.
 */
final class Slopes {
  /** Clear height that a body crawls through and length of an arm; both from experience. */
  private static final double BODY_MM = 600;

  private static final double ARM_MM = 600;

  /** Butt cut of a heel that nobody measured: 1/4 in (trade-facts D21). */
  private static final double BUTT_MM = 6.35;

  private final double x0;
  private final double x1;
  private final double y0;
  private final double y1;

  Slopes(Attic attic) {
    Roof roof = attic.roof();
    double in = inset(roof);
    boolean hip = roof.shape() == Roof.Shape.HIP;
    boolean gable = roof.shape() == Roof.Shape.GABLE;
    boolean eastWest = roof.ridge() == Direction.EAST_WEST;
    var o = attic.roofline();
    x0 = o.xRange().lo() / 1e6 + (hip || gable && !eastWest || low(roof, Side.WEST) ? in : 0);
    x1 = o.xRange().hi() / 1e6 - (hip || gable && !eastWest || low(roof, Side.EAST) ? in : 0);
    y0 = o.yRange().lo() / 1e6 + (hip || gable && eastWest || low(roof, Side.SOUTH) ? in : 0);
    y1 = o.yRange().hi() / 1e6 - (hip || gable && eastWest || low(roof, Side.NORTH) ? in : 0);
  }

  private static boolean low(Roof roof, Side side) {
    return roof.shape() == Roof.Shape.SHED && roof.lowSide().orElse(Side.SOUTH) == side;
  }

  private static double inset(Roof roof) {
    if (roof.shape() == Roof.Shape.FLAT) {
      return 0;
    }
    double chord = roof.chord().value().depth().toMm();
    double onSlope = chord * Math.hypot(roof.pitchRise(), roof.pitchRun()) / roof.pitchRun();
    double heel = roof.heel().map(f -> f.value().toMm()).orElse(onSlope + BUTT_MM);
    double lacking = BODY_MM + chord + onSlope - heel;
    return Math.max(0, lacking * roof.pitchRun() / roof.pitchRise());
  }

  /** Millimetres in the plan by which a point lies further than an arm from a body's place. */
  double beyondArm(Mm p) {
    double dx = Math.max(0, Math.max(x0 - p.x(), p.x() - x1));
    double dy = Math.max(0, Math.max(y0 - p.y(), p.y() - y1));
    return Math.max(dx, dy) - ARM_MM;
  }
}
