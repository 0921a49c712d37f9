package holloway.framing;

import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.survey.KneeWalls;
import holloway.survey.Placed;
import holloway.survey.Wall;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * One knee wall of a roof and the eave behind it.
 *
 * @param face world x or y of the rooms' face, millimetres
 * @param along the stretch of the rooms' faces
 * @param eave world x or y of the outer face of the storey below; {@code face} if there is no one
 *     straight outer wall behind
 * @param z world z at which the slope begins at the face
 */
record KneeLine(Wall wall, Side side, double face, Interval along, double eave, long z) {
  private static final double FAR_MM = 50_000;

  double distance() {
    return Math.abs(eave - face);
  }

  static KneeLine of(Placed placed, Roof roof, Wall w, Geometry below) {
    Side side = w.faces().get(0).roomSide();
    long t = w.faces().get(0).side() == 0 ? 0 : w.thickness();
    Point2 p =
        w.world(w.faces().stream().mapToLong(f -> f.s().lo()).min().orElseThrow(), t, 0).plan();
    Point2 q =
        w.world(w.faces().stream().mapToLong(f -> f.s().hi()).max().orElseThrow(), t, 0).plan();
    boolean ew = side.runsEastWest();
    Interval along =
        ew
            ? new Interval(Math.min(p.x(), q.x()), Math.max(p.x(), q.x()))
            : new Interval(Math.min(p.y(), q.y()), Math.max(p.y(), q.y()));
    double face = (ew ? p.y() : p.x()) / 1e6;
    long floor = placed.getRoom(w.faces().get(0).room()).floorZ();
    double eave = eave(side, along, face, below);
    return new KneeLine(w, side, face, along, eave, floor + height(placed, roof, w, side));
  }

  private static double eave(Side side, Interval along, double face, Geometry below) {
    Geometry behind = Overlay.shared(below, band(side, along, face, FAR_MM));
    Envelope e = behind.getEnvelopeInternal();
    double wide = side.runsEastWest() ? e.getWidth() : e.getHeight();
    boolean square =
        !behind.isEmpty()
            && Math.abs(e.getArea() - behind.getArea()) < 0.005 * e.getArea() + 1
            && Math.abs(wide - along.length() / 1e6) < 5;
    if (!square) {
      return face;
    }
    return switch (side) {
      case NORTH -> e.getMaxY();
      case SOUTH -> e.getMinY();
      case EAST -> e.getMaxX();
      case WEST -> e.getMinX();
    };
  }

  /** The least of those stated along the wall. */
  private static long height(Placed placed, Roof roof, Wall w, Side side) {
    long height = KneeWalls.find(placed.house(), w).orElseThrow().height().value().nm();
    for (Roof.Knee k : roof.knees()) {
      boolean here = w.faces().stream().anyMatch(f -> f.room().equals(k.face().room()));
      if (here && k.face().side() == side) {
        height = Math.min(height, k.height().value().nm());
      }
    }
    return height;
  }

  /** From a face outwards by so many millimetres, along it by a stretch. */
  static Geometry band(Side side, Interval along, double face, double out) {
    double a = along.lo() / 1e6;
    double b = along.hi() / 1e6;
    double far = side == Side.NORTH || side == Side.EAST ? face + out : face - out;
    return side.runsEastWest()
        ? box(a, Math.min(face, far), b, Math.max(face, far))
        : box(Math.min(face, far), a, Math.max(face, far), b);
  }

  private static Geometry box(double x0, double y0, double x1, double y1) {
    return new GeometryFactory().toGeometry(new Envelope(x0, x1, y0, y1));
  }
}
