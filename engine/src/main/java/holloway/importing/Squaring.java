package holloway.importing;

import holloway.geometry.MainDirection;
import holloway.geometry.Turn;
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
  static Squaring of(List<RawRoom> rooms) {
    List<MainDirection.Edge> edges = new ArrayList<>();
    for (RawRoom r : rooms) {
      for (int i = 0; i < r.corners().size(); i++) {
        Vec d = r.corners().get((i + 1) % r.corners().size()).minus(r.corners().get(i));
        edges.add(new MainDirection.Edge(d.x(), d.y()));
      }
    }
    MainDirection main = MainDirection.of(edges);
    boolean little = Math.abs(main.radians()) < 1e-7;
    return of(rooms, little ? 0 : -main.radians(), main.share() > 1 - 1e-6);
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

  /** How the house stands in its model: what it was turned by, the other way round. */
  Turn stands() {
    return Turn.degrees(Math.round(-degrees * 1e6) / 1e6);
  }
}
