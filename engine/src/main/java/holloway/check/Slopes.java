package holloway.check;

import holloway.framing.Attic;
import holloway.house.Direction;
import holloway.house.Roof;
import holloway.house.Side;
import java.util.List;

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
  static final double BUTT_MM = 6.35;

  private final Attic attic;
  private final double x0;
  private final double x1;
  private final double y0;
  private final double y1;

  Slopes(Attic attic) {
    this.attic = attic;
    Roof roof = attic.roof();
    boolean arched = roof.shape() == Roof.Shape.ARCHED;
    double in = arched ? underArch() : inset(roof);
    boolean hip = roof.shape() == Roof.Shape.HIP;
    boolean gable = roof.shape() == Roof.Shape.GABLE || arched;
    boolean eastWest = roof.ridge() == Direction.EAST_WEST;
    var o = attic.roofline();
    x0 = o.xRange().lo() / 1e6 + (hip || gable && !eastWest || low(roof, Side.WEST) ? in : 0);
    x1 = o.xRange().hi() / 1e6 - (hip || gable && !eastWest || low(roof, Side.EAST) ? in : 0);
    y0 = o.yRange().lo() / 1e6 + (hip || gable && eastWest || low(roof, Side.SOUTH) ? in : 0);
    y1 = o.yRange().hi() / 1e6 - (hip || gable && eastWest || low(roof, Side.NORTH) ? in : 0);
  }

  /** Level from eave to eave. */
  private double span() {
    var o = attic.roofline();
    var across = attic.roof().ridge() == Direction.EAST_WEST ? o.yRange() : o.xRange();
    return across.length() / 1e6;
  }

  private double spring() {
    return heel(attic.roof()) - attic.roof().chord().value().depth().toMm();
  }

  private double crown() {
    return attic.roof().rise().map(f -> f.value().toMm()).orElse(0.0)
        + attic.roof().chord().value().depth().toMm();
  }

  /** Height of the circle's centre over the plates: as far from the eaves as from the crown. */
  private double centre() {
    double half = span() / 2;
    return (crown() * crown() - spring() * spring() - half * half) / (2 * (crown() - spring()));
  }

  /** No part of a circle, or more than half of one. */
  private boolean isNoArch() {
    return crown() <= spring() || crown() - spring() > span() / 2;
  }

  private double underArch() {
    double body = BODY_MM + attic.roof().chord().value().depth().toMm();
    if (isNoArch() || body > crown()) {
      return 1e9;
    }
    double radius = crown() - centre();
    double up = Math.max(0, body - centre());
    return Math.max(0, span() / 2 - Math.sqrt(radius * radius - up * up));
  }

  private double arch(double in) {
    double radius = crown() - centre();
    double off = span() / 2 - in;
    return isNoArch() ? spring() : centre() + Math.sqrt(radius * radius - off * off);
  }

  private static boolean low(Roof roof, Side side) {
    return roof.shape() == Roof.Shape.SHED && roof.lowSide().orElse(Side.SOUTH) == side;
  }

  private static double inset(Roof roof) {
    if (roof.shape() == Roof.Shape.FLAT) {
      return 0;
    }
    double chord = roof.chord().value().depth().toMm();
    double onSlope = onSlope(roof);
    double heel = heel(roof);
    double lacking = BODY_MM + chord + onSlope - heel;
    return Math.max(0, lacking * roof.pitchRun() / roof.pitchRise());
  }

  private static double onSlope(Roof roof) {
    double chord = roof.chord().value().depth().toMm();
    return chord * Math.hypot(roof.pitchRise(), roof.pitchRun()) / roof.pitchRun();
  }

  private static double heel(Roof roof) {
    return roof.heel().map(f -> f.value().toMm()).orElse(onSlope(roof) + BUTT_MM);
  }

  /** World z in millimetres of the rafters' underside over a point of the plan. */
  double underside(Mm p) {
    Roof roof = attic.roof();
    double plate = attic.plateZ() / 1e6;
    double heel = roof.knees().isEmpty() ? heel(roof) : attic.heelMm();
    if (roof.shape() == Roof.Shape.FLAT) {
      return plate + heel - roof.chord().value().depth().toMm();
    }
    var o = attic.roofline();
    double west = p.x() - o.xRange().lo() / 1e6;
    double east = o.xRange().hi() / 1e6 - p.x();
    double south = p.y() - o.yRange().lo() / 1e6;
    double north = o.yRange().hi() / 1e6 - p.y();
    double[] eaves =
        switch (roof.shape()) {
          case HIP -> new double[] {west, east, south, north};
          case SHED -> shed(roof, west, east, south, north);
          default ->
              roof.ridge() == Direction.EAST_WEST
                  ? new double[] {south, north}
                  : new double[] {west, east};
        };
    double in = Math.max(0, java.util.Arrays.stream(eaves).min().orElseThrow());
    if (roof.shape() == Roof.Shape.ARCHED) {
      return plate + arch(Math.min(in, span() / 2));
    }
    return plate + heel + in * roof.pitchRise() / roof.pitchRun() - onSlope(roof);
  }

  private static double[] shed(Roof roof, double west, double east, double south, double north) {
    return new double[] {
      low(roof, Side.WEST)
          ? west
          : low(roof, Side.EAST) ? east : low(roof, Side.NORTH) ? north : south
    };
  }

  /**
   * Millimetres in the plan by which a point lies further than an arm from a body's place, under
   * the slopes or a dormer of the same roof; {@code all} are the attics of the house.
   */
  double beyondArm(Mm p, List<Attic> all) {
    double beyond = new DormerReach(x0, x1, y0, y1).beyond(p, ARM_MM);
    if (x0 >= x1 || y0 >= y1) {
      beyond = Double.MAX_VALUE; // a body fits nowhere under these slopes
    }
    for (DormerReach d : DormerReach.of(attic, all)) {
      beyond = Math.min(beyond, d.beyond(p, ARM_MM));
    }
    return beyond;
  }
}
