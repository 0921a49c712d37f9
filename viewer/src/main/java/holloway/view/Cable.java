package holloway.view;

import holloway.look.Dash;
import java.util.List;
import org.joml.Vector3fc;

/**
 * A run as it lies.
 *
 * @param number in the order of the plan's runs; colour and pattern follow from it
 * @param points metres, from its first end to its last
 * @param steps for each point, the step of the plan's run that it ends, from 0
 * @param radius metres
 * @param length of cable on the way, in words
 */
public record Cable(
    String id,
    int number,
    Dash dash,
    List<Vector3fc> points,
    List<Integer> steps,
    float radius,
    String length) {
  public Cable {
    points = List.copyOf(points);
    steps = List.copyOf(steps);
  }
}
