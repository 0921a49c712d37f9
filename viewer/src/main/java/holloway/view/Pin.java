package holloway.view;

import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * A hole where it is: the ends of its axis in metres, its label on the schedule.
 *
 * @param a the end where the person stands who makes it
 */
public record Pin(
    String id, String label, Vector3fc a, Vector3fc b, List<String> runs, boolean breaksLaw) {
  public Pin {
    runs = List.copyOf(runs);
  }

  public Vector3f middle() {
    return new Vector3f(a).add(b).mul(0.5f);
  }

  /** From a to b, one metre long; level and to the east where both are one place. */
  public Vector3f axis() {
    Vector3f d = new Vector3f(b).sub(a);
    return d.lengthSquared() < 1e-10f ? new Vector3f(1, 0, 0) : d.normalize();
  }
}
