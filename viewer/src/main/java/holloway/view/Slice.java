package holloway.view;

import java.util.List;
import java.util.function.DoubleFunction;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.joml.Vector4f;

/**
 * What lies between two planes square to a world axis, metres.
 *
 * @param axis 0 measured from the west, 1 from the south, 2 up from the lowest floor
 */
public record Slice(int axis, float at, float thick) {
  boolean holds(Vector3fc p) {
    return contains(p);
  }

  /** Whether a point lies in the slice. */
  public boolean contains(Vector3fc p) {
    return Math.abs(p.get(axis) - at) <= thick / 2;
  }

  boolean touches(Vector3fc centre, Vector3fc reach) {
    return Math.abs(centre.get(axis) - at) <= thick / 2 + reach.get(axis);
  }

  boolean isUpright() {
    return axis != 2;
  }

  /**
   * A slice from the west is seen from the east, so that south is at the left; see {@link #says}.
   */
  Vector3f look() {
    return switch (axis) {
      case 0 -> new Vector3f(-1, 0, 0);
      case 1 -> new Vector3f(0, 1, 0);
      default -> new Vector3f(0, 0, -1);
    };
  }

  Vector3f up() {
    return axis == 2 ? new Vector3f(0, 1, 0) : new Vector3f(0, 0, 1);
  }

  public List<Vector4f> planes() {
    Vector4f from = new Vector4f(0, 0, 0, -(at - thick / 2));
    Vector4f to = new Vector4f(0, 0, 0, at + thick / 2);
    from.setComponent(axis, 1);
    to.setComponent(axis, -1);
    return List.of(from, to);
  }

  String says(DoubleFunction<String> length, String up) {
    String how = length.apply(thick) + " thick, ";
    return switch (axis) {
      case 0 -> how + length.apply(at) + " from the west side; seen from the east, south is left";
      case 1 -> how + length.apply(at) + " from the south side; seen from the south, west is left";
      default -> how + length.apply(at) + " over the lowest floor; from above, " + up;
    };
  }
}
