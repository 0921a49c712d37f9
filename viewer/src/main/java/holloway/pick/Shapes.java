package holloway.pick;

import java.util.Arrays;
import org.joml.Intersectiond;
import org.joml.Vector2d;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.joml.Vector3fc;

/** Boxes in any direction, by number, and where a ray enters them. */
public final class Shapes {
  /** Half a millimetre: what has no thickness can be pointed at too. */
  private static final double LEAST_HALF = 5e-4;

  /** Numbers a box: its centre, and its three directions, each divided by its half length. */
  private static final int STRIDE = 12;

  private double[] data = new double[STRIDE * 64];
  private double[] reach = new double[3 * 64];
  private int count;

  /**
   * Adds a box; its number is how many there were before.
   *
   * @param u half of the box along its first axis, metres; at most one of the three may be nothing
   */
  public void add(Vector3fc centre, Vector3fc u, Vector3fc v, Vector3fc w) {
    Vector3d[] axes = {new Vector3d(u), new Vector3d(v), new Vector3d(w)};
    double[] halves = new double[3];
    for (int i = 0; i < 3; i++) {
      halves[i] = Math.max(LEAST_HALF, axes[i].length());
    }
    for (int i = 0; i < 3; i++) {
      if (axes[i].length() < 1e-9) {
        axes[(i + 1) % 3].cross(axes[(i + 2) % 3], axes[i]);
      }
    }
    if ((count + 1) * STRIDE > data.length) {
      data = Arrays.copyOf(data, data.length * 2);
      reach = Arrays.copyOf(reach, reach.length * 2);
    }
    put(new Vector3d(centre), count * STRIDE);
    for (int i = 0; i < 3; i++) {
      axes[i].normalize();
      for (int a = 0; a < 3; a++) {
        reach[count * 3 + a] += Math.abs(axes[i].get(a)) * halves[i];
      }
      put(axes[i].div(halves[i]), count * STRIDE + 3 + 3 * i);
    }
    count++;
  }

  private void put(Vector3d v, int at) {
    data[at] = v.x;
    data[at + 1] = v.y;
    data[at + 2] = v.z;
  }

  public int count() {
    return count;
  }

  /** Half of a box's extent along a world axis, metres. */
  double reach(int number, int axis) {
    return reach[number * 3 + axis];
  }

  double centre(int number, int axis) {
    return data[number * STRIDE + axis];
  }

  /**
   * Where the shown part of a ray first is in a box, metres along it; NaN where it never is. A box
   * that a slice cuts begins at the cut.
   */
  public double enters(Ray ray, int number) {
    int c = number * STRIDE;
    double x = ray.origin().x() - data[c];
    double y = ray.origin().y() - data[c + 1];
    double z = ray.origin().z() - data[c + 2];
    Vector3dc d = ray.direction();
    Vector2d hit = new Vector2d();
    boolean any =
        Intersectiond.intersectRayAab(
            dot(c + 3, x, y, z),
            dot(c + 6, x, y, z),
            dot(c + 9, x, y, z),
            dot(c + 3, d.x(), d.y(), d.z()),
            dot(c + 6, d.x(), d.y(), d.z()),
            dot(c + 9, d.x(), d.y(), d.z()),
            -1,
            -1,
            -1,
            1,
            1,
            1,
            hit);
    double at = Math.max(hit.x, ray.from());
    return any && at <= hit.y && at <= ray.to() ? at : Double.NaN;
  }

  private double dot(int at, double x, double y, double z) {
    return data[at] * x + data[at + 1] * y + data[at + 2] * z;
  }
}
