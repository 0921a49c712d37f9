package holloway.look;

import java.util.Arrays;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** Flat faces of sheets, packed: place, normal, colour, strength of three corners each. */
public final class Triangles {
  /** Numbers a corner. */
  public static final int STRIDE = 10;

  private float[] data = new float[STRIDE * 3 * 64];
  private int corners;

  public void add(Vector3fc a, Vector3fc b, Vector3fc c, int colour, float strength) {
    Vector3f normal = new Vector3f(b).sub(a).cross(new Vector3f(c).sub(a));
    if (normal.lengthSquared() > 0) {
      normal.normalize();
    }
    for (Vector3fc p : new Vector3fc[] {a, b, c}) {
      corner(p, normal, colour, strength);
    }
  }

  private void corner(Vector3fc p, Vector3fc n, int colour, float strength) {
    if ((corners + 1) * STRIDE > data.length) {
      data = Arrays.copyOf(data, data.length * 2);
    }
    int at = corners++ * STRIDE;
    for (Vector3fc v : new Vector3fc[] {p, n}) {
      data[at++] = v.x();
      data[at++] = v.y();
      data[at++] = v.z();
    }
    data[at++] = Rgb.red(colour);
    data[at++] = Rgb.green(colour);
    data[at++] = Rgb.blue(colour);
    data[at] = strength;
  }

  public int corners() {
    return corners;
  }

  /** A copy of what was packed. */
  public float[] packed() {
    return Arrays.copyOf(data, corners * STRIDE);
  }
}
