package holloway.check;

import holloway.framing.Attic;
import holloway.house.Direction;
import holloway.house.Dormer;
import holloway.house.Roof;
import holloway.house.Side;
import java.util.List;

/**
 * Where a body fits below a dormer, from what was taped of it, in the referee's own millimetres:
 * between its cheeks, from its front to where the rafters are as high as its front.
 */
record DormerReach(double x0, double x1, double y0, double y1) {
  /** Clear height that a body crawls through and its least width; both from experience. */
  private static final double BODY_MM = 600;

  private static final double WIDE_MM = 350;

  /** Those over one part of a roof; {@code all} are the attics of the house. */
  static List<DormerReach> of(Attic attic, List<Attic> all) {
    return attic.roof().dormers().stream()
        .filter(d -> fits(d) && eaveSide(attic.roof(), d.side()))
        .map(d -> place(d, attic, all))
        .filter(r -> r.x1 > r.x0 && r.y1 > r.y0 && r.isWithin(attic))
        .toList();
  }

  private static boolean fits(Dormer d) {
    return d.height().value().toMm() >= BODY_MM && d.width().value().toMm() >= WIDE_MM;
  }

  private static boolean eaveSide(Roof roof, Side side) {
    if (roof.frame() == Roof.Frame.TRUSSES || !roof.knees().isEmpty()) {
      return false;
    }
    boolean low = roof.lowSide().filter(side::equals).isPresent();
    boolean square = (roof.ridge() == Direction.EAST_WEST) == side.runsEastWest();
    return roof.shape() == Roof.Shape.SHED ? low : roof.shape() == Roof.Shape.GABLE && square;
  }

  private static DormerReach place(Dormer d, Attic attic, List<Attic> all) {
    boolean ew = d.side().runsEastWest();
    double lo = Double.MAX_VALUE;
    double hi = -Double.MAX_VALUE;
    for (Attic a : all) {
      if (a.roof().name().equals(attic.roof().name())) {
        var i = ew ? a.roofline().xRange() : a.roofline().yRange();
        lo = Math.min(lo, i.lo() / 1e6);
        hi = Math.max(hi, i.hi() / 1e6);
      }
    }
    double off = d.from().distance().value().toMm();
    double wide = d.width().value().toMm();
    boolean fromLow = d.from().from() == Side.WEST || d.from().from() == Side.SOUTH;
    double near = fromLow ? lo + off : hi - off - wide;
    var across = ew ? attic.roofline().yRange() : attic.roofline().xRange();
    double eave = (isLow(d.side()) ? across.lo() : across.hi()) / 1e6;
    double back = d.back().value().toMm();
    double meets = meets(d, attic, across.length() / 1e6);
    double a = isLow(d.side()) ? eave + back : eave - meets;
    double b = isLow(d.side()) ? eave + meets : eave - back;
    return ew ? new DormerReach(near, near + wide, a, b) : new DormerReach(a, b, near, near + wide);
  }

  /** Level from the eave to where the rafters' underside is as high; nothing past the ridge. */
  private static double meets(Dormer d, Attic attic, double whole) {
    Roof roof = attic.roof();
    double chord = roof.chord().value().depth().toMm();
    double onSlope = chord * Math.hypot(roof.pitchRise(), roof.pitchRun()) / roof.pitchRun();
    double heel = roof.heel().map(f -> f.value().toMm()).orElse(onSlope + Slopes.BUTT_MM);
    double lacking = d.height().value().toMm() + chord + onSlope - heel;
    double in = lacking * roof.pitchRun() / roof.pitchRise();
    return in > (roof.shape() == Roof.Shape.SHED ? whole : whole / 2) ? 0 : in;
  }

  private static boolean isLow(Side side) {
    return side == Side.SOUTH || side == Side.WEST;
  }

  private boolean isWithin(Attic a) {
    return x0 >= a.roofline().xRange().lo() / 1e6
        && x1 <= a.roofline().xRange().hi() / 1e6
        && y0 >= a.roofline().yRange().lo() / 1e6
        && y1 <= a.roofline().yRange().hi() / 1e6;
  }

  /** Millimetres in the plan by which a point lies further from it than an arm. */
  double beyond(Mm p, double armMm) {
    double dx = Math.max(0, Math.max(x0 - p.x(), p.x() - x1));
    double dy = Math.max(0, Math.max(y0 - p.y(), p.y() - y1));
    return Math.max(dx, dy) - armMm;
  }
}
