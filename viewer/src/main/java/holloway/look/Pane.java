package holloway.look;

import java.util.List;
import org.joml.Matrix4f;
import org.joml.Matrix4fc;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.joml.Vector4fc;

/**
 * A rectangle of the picture with its own eye.
 *
 * @param x pixels from the left, {@code y} from the top
 * @param view from world metres to the eye; {@code projection} from there to clip space
 * @param cuts planes (a, b, c, d) that keep what has a x + b y + c z + d over 0; two at most
 * @param tubeCuts the same for cables
 * @param leastPixels no cable is drawn thinner than so many pixels across
 */
public record Pane(
    int x,
    int y,
    int width,
    int height,
    Matrix4fc view,
    Matrix4fc projection,
    List<Vector4fc> cuts,
    List<Vector4fc> tubeCuts,
    Bodies bodies,
    float leastPixels) {
  public Pane {
    cuts = List.copyOf(cuts);
    tubeCuts = List.copyOf(tubeCuts);
    if (Math.max(cuts.size(), tubeCuts.size()) > 2) {
      throw new IllegalArgumentException("two cuts at most, not " + cuts + ", " + tubeCuts);
    }
  }

  /** Cables are cut as everything else is. */
  public Pane(
      int x,
      int y,
      int width,
      int height,
      Matrix4fc view,
      Matrix4fc projection,
      List<Vector4fc> cuts,
      Bodies bodies,
      float leastPixels) {
    this(x, y, width, height, view, projection, cuts, cuts, bodies, leastPixels);
  }

  /** The pixel of a point of the house, and its depth: under 0 it lies behind the eye. */
  public Vector3f pixel(Vector3fc world) {
    var p = new Matrix4f(projection).mul(view).transform(new org.joml.Vector4f(world, 1));
    float w = p.w == 0 ? 1e-9f : p.w;
    return new Vector3f(
        x + (p.x / w * 0.5f + 0.5f) * width, y + (0.5f - p.y / w * 0.5f) * height, p.w);
  }

  /** Whether a pixel lies in this pane. */
  public boolean holds(float px, float py) {
    return px >= x && px < x + width && py >= y && py < y + height;
  }
}
