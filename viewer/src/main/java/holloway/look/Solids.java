package holloway.look;

import java.util.Arrays;
import org.joml.Vector3fc;

/**
 * Boxes in any direction, packed for drawing all at once: centre, three half axes in metres, colour
 * and strength, sixteen numbers each.
 */
public final class Solids {
  /** Numbers a box. */
  public static final int STRIDE = 16;

  private float[] data = new float[STRIDE * 64];
  private int count;

  /**
   * @param u half of the box along its first axis, a vector in metres; {@code v}, {@code w}
   *     likewise
   * @param colour 0xRRGGBB
   * @param strength what the drawing makes of it: opacity of a veil, brightness of a glow
   */
  public void add(
      Vector3fc centre, Vector3fc u, Vector3fc v, Vector3fc w, int colour, float strength) {
    if ((count + 1) * STRIDE > data.length) {
      data = Arrays.copyOf(data, data.length * 2);
    }
    int at = count++ * STRIDE;
    for (Vector3fc p : new Vector3fc[] {centre, u, v, w}) {
      data[at++] = p.x();
      data[at++] = p.y();
      data[at++] = p.z();
    }
    data[at++] = Rgb.red(colour);
    data[at++] = Rgb.green(colour);
    data[at++] = Rgb.blue(colour);
    data[at] = strength;
  }

  public int count() {
    return count;
  }

  /** A copy of what was packed. */
  public float[] packed() {
    return Arrays.copyOf(data, count * STRIDE);
  }
}
