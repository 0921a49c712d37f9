package holloway.view;

import org.joml.Matrix4f;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * An eye that goes round a place: a value, so that a view can be kept and gone back to.
 *
 * @param target what is looked at, metres
 * @param yaw radians from looking north, over 0 towards looking west
 * @param pitch radians that the eye looks down
 * @param distance metres from the eye to the target
 */
public record Orbit(Vector3fc target, float yaw, float pitch, float distance) {
  private static final float FIELD = (float) Math.toRadians(38);
  private static final float STEEP = (float) Math.toRadians(89);

  /** The whole of a model from the south-east and above. */
  public static Orbit whole(Model m) {
    float size = m.low().distance(m.high());
    return new Orbit(m.centre(), 0.6f, 0.62f, size * 1.25f);
  }

  public Orbit turned(float dYaw, float dPitch) {
    float p = Math.max(-STEEP, Math.min(STEEP, pitch + dPitch));
    return new Orbit(target, yaw + dYaw, p, distance);
  }

  public Orbit nearer(float times) {
    return new Orbit(target, yaw, pitch, Math.max(0.4f, Math.min(400, distance / times)));
  }

  public Orbit to(Vector3fc place) {
    return new Orbit(new Vector3f(place), yaw, pitch, distance);
  }

  public Orbit to(Vector3fc place, float away) {
    return new Orbit(new Vector3f(place), yaw, pitch, away);
  }

  /** Moves the target in the plane of the picture, in parts of the picture's height. */
  public Orbit shifted(float right, float up) {
    float seen = 2 * distance * (float) Math.tan(FIELD / 2);
    Vector3f t =
        new Vector3f(target).add(rightwards().mul(right * seen)).add(upwards().mul(up * seen));
    return new Orbit(t, yaw, pitch, distance);
  }

  private Vector3f ahead() {
    float level = (float) Math.cos(pitch);
    return new Vector3f(
        (float) -Math.sin(yaw) * level, (float) Math.cos(yaw) * level, (float) -Math.sin(pitch));
  }

  private Vector3f rightwards() {
    return new Vector3f((float) Math.cos(yaw), (float) Math.sin(yaw), 0);
  }

  private Vector3f upwards() {
    return rightwards().cross(ahead());
  }

  public Vector3f eye() {
    return new Vector3f(target).sub(ahead().mul(distance));
  }

  public Matrix4f view() {
    Vector3f e = eye();
    Vector3f u = upwards();
    return new Matrix4f().lookAt(e.x, e.y, e.z, target.x(), target.y(), target.z(), u.x, u.y, u.z);
  }

  public Matrix4f projection(float width, float height) {
    float near = Math.max(0.05f, distance * 0.02f);
    return new Matrix4f().perspective(FIELD, width / height, near, distance + 300);
  }
}
