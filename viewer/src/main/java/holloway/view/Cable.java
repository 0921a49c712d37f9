package holloway.view;

import holloway.look.Dash;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * A run as it lies.
 *
 * @param number in the order of the plan's runs; colour and pattern follow from it
 * @param points metres, from its first end to its last
 * @param steps for each point, the step of the plan's run that it ends, from 0
 * @param guessed steps that nobody knows the way of; the line is straight there
 * @param lane its way beside its neighbours; {@code fan} by how many widths each point of that is
 *     moved, and where to; {@code laneSteps} the step that it ends
 * @param radius metres
 * @param length of the way, in words; what is cut is longer
 */
public record Cable(
    String id,
    int number,
    Dash dash,
    List<Vector3fc> points,
    List<Integer> steps,
    Set<Integer> guessed,
    List<Vector3fc> lane,
    List<Vector3fc> fan,
    List<Integer> laneSteps,
    float radius,
    String length) {
  public Cable {
    points = List.copyOf(points);
    steps = List.copyOf(steps);
    guessed = Set.copyOf(guessed);
    lane = List.copyOf(lane);
    fan = List.copyOf(fan);
    laneSteps = List.copyOf(laneSteps);
  }

  /** Half-way along a step. */
  public Vector3f middle(int step) {
    List<Vector3fc> own = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      boolean begins = i + 1 < points.size() && steps.get(i + 1) == step;
      if (steps.get(i) == step || begins) {
        own.add(points.get(i));
      }
    }
    if (own.isEmpty()) {
      // A step without length is where the one before it ends.
      int last = 0;
      for (int i = 0; i < points.size(); i++) {
        last = steps.get(i) < step ? i : last;
      }
      return new Vector3f(points.get(last));
    }
    return middle(own);
  }

  /** Half-way along all of it. */
  public Vector3f middle() {
    return middle(points);
  }

  private static Vector3f middle(List<Vector3fc> own) {
    float half = 0;
    for (int i = 0; i + 1 < own.size(); i++) {
      half += own.get(i).distance(own.get(i + 1)) / 2;
    }
    for (int i = 0; i + 1 < own.size(); i++) {
      float d = own.get(i).distance(own.get(i + 1));
      if (d >= half && d > 0) {
        return new Vector3f(own.get(i)).lerp(own.get(i + 1), half / d);
      }
      half -= d;
    }
    return new Vector3f(own.get(own.size() - 1));
  }
}
