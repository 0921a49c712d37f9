package holloway.look;

import java.util.List;
import org.joml.Vector3fc;

/**
 * A cable on its way, as it is drawn.
 *
 * @param points in metres, two at least
 * @param fan by how many widths each point is moved aside, and where to, so that cables that lie
 *     together are seen beside each other; one a point
 * @param radius true radius in metres; a picture never draws it thinner than its least width
 * @param strength 1 as usual, less to make it stand back
 */
public record Tube(
    List<Vector3fc> points,
    List<Vector3fc> fan,
    float radius,
    int colour,
    Dash dash,
    float strength) {
  public Tube {
    points = List.copyOf(points);
    fan = List.copyOf(fan);
    if (points.size() < 2 || fan.size() != points.size()) {
      throw new IllegalArgumentException(
          "a tube needs two points and a fan for each, not " + points.size() + ", " + fan.size());
    }
  }
}
