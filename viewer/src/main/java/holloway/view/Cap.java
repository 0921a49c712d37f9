package holloway.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** The face that a plane cuts out of a box, however both lie: closes what a slice cuts open. */
final class Cap {
  private Cap() {}

  /**
   * Corners of the cut face in order, three to six; empty where the plane misses the box.
   *
   * @param axis the world axis that the plane is square to; {@code at} where it stands, metres
   */
  static List<Vector3f> of(Vector3fc centre, Vector3fc[] halves, int axis, float at) {
    List<Vector3f> out = new ArrayList<>();
    for (int along = 0; along < 3; along++) {
      Vector3fc p = halves[(along + 1) % 3];
      Vector3fc q = halves[(along + 2) % 3];
      for (int sign = 0; sign < 4; sign++) {
        Vector3f middle =
            new Vector3f(p).mul(sign % 2 == 0 ? 1 : -1).fma(sign < 2 ? 1 : -1, q).add(centre);
        edge(middle, halves[along], axis, at, out);
      }
    }
    if (out.size() < 3) {
      return List.of();
    }
    inOrder(out, axis);
    return out;
  }

  /** Adds where an edge meets the plane, unless a corner has been met there already. */
  private static void edge(
      Vector3fc middle, Vector3fc half, int axis, float at, List<Vector3f> to) {
    float rate = half.get(axis);
    if (rate == 0) {
      return;
    }
    float t = (at - middle.get(axis)) / rate;
    if (Math.abs(t) > 1) {
      return;
    }
    Vector3f p = new Vector3f(half).mul(t).add(middle);
    p.setComponent(axis, at);
    if (to.stream().noneMatch(o -> o.distance(p) < 1e-5f)) {
      to.add(p);
    }
  }

  /** Round their middle; what a plane cuts out of a box is never hollow. */
  private static void inOrder(List<Vector3f> all, int axis) {
    Vector3f middle = new Vector3f();
    all.forEach(middle::add);
    middle.div(all.size());
    int x = (axis + 1) % 3;
    int y = (axis + 2) % 3;
    all.sort(
        Comparator.comparingDouble(
            p -> Math.atan2(p.get(y) - middle.get(y), p.get(x) - middle.get(x))));
  }
}
