package holloway.importing;

import java.util.ArrayList;
import java.util.List;

/**
 * Turns the plan so that its walls lie square to the page, whatever way the model's site lies, and
 * puts its south-west corner at nought.
 *
 * @param degrees how far the plan was turned, counter-clockwise
 * @param square no wall lies at an angle to the others
 */
record Squaring(Move move, double degrees, boolean square) {
  private static final double SAME = Math.toRadians(0.05);
  private static final double QUARTER = Math.PI / 2;

  private record Edge(double angle, double length) {}

  static Squaring of(List<RawRoom> rooms) {
    List<Edge> edges = new ArrayList<>();
    double whole = 0;
    for (RawRoom r : rooms) {
      for (int i = 0; i < r.corners().size(); i++) {
        Vec d = r.corners().get((i + 1) % r.corners().size()).minus(r.corners().get(i));
        double angle = Math.atan2(d.y(), d.x());
        edges.add(new Edge(angle - QUARTER * Math.floor(angle / QUARTER), d.length()));
        whole += d.length();
      }
    }
    double best = -1;
    double turn = 0;
    List<Edge> candidates = edges.size() > 2_000 ? edges.subList(0, 2_000) : edges;
    for (Edge e : candidates) {
      double[] found = alike(edges, e.angle);
      if (found[0] > best + 1e-6) {
        best = found[0];
        turn = found[1];
      }
    }
    turn = turn > QUARTER / 2 ? turn - QUARTER : turn;
    boolean little = Math.abs(turn) < 1e-7;
    return of(rooms, little ? 0 : -turn, best > whole * (1 - 1e-6));
  }

  /** The length of all edges within a hair of that angle or square to it, and their mean angle. */
  private static double[] alike(List<Edge> edges, double angle) {
    double length = 0;
    double off = 0;
    for (Edge e : edges) {
      double d = Math.IEEEremainder(e.angle - angle, QUARTER);
      if (Math.abs(d) <= SAME) {
        length += e.length;
        off += d * e.length;
      }
    }
    return new double[] {length, angle + (length > 0 ? off / length : 0)};
  }

  private static Squaring of(List<RawRoom> rooms, double turn, boolean square) {
    // The model may lie far from its origin: turn about the first corner, not about nought.
    Vec pivot = rooms.get(0).corners().get(0);
    double c = StrictMath.cos(turn);
    double s = StrictMath.sin(turn);
    Move turned = new Move(new Vec(c, s, 0), new Vec(-s, c, 0), Vec.Z, Vec.ZERO);
    Vec back = turned.turn(new Vec(pivot.x(), pivot.y(), 0)).times(-1);
    Move about = new Move(turned.x(), turned.y(), turned.z(), back);
    double west = Double.POSITIVE_INFINITY;
    double south = Double.POSITIVE_INFINITY;
    for (RawRoom r : rooms) {
      for (Vec v : r.corners()) {
        Vec p = about.apply(v);
        west = Math.min(west, p.x());
        south = Math.min(south, p.y());
      }
    }
    Vec origin = about.origin().minus(new Vec(west, south, 0));
    Move move = new Move(turned.x(), turned.y(), turned.z(), origin);
    return new Squaring(move, Math.toDegrees(turn), square);
  }
}
