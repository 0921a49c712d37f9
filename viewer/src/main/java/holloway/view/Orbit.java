package holloway.view;

import java.util.function.Consumer;
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
 * @param aside part of the picture's width that the target is seen right of its middle
 */
public record Orbit(Vector3fc target, float yaw, float pitch, float distance, float aside) {
  private static final float FIELD = (float) Math.toRadians(38);
  private static final float STEEP = (float) Math.toRadians(89);

  /** Of half the picture's height what the whole house fills at most. */
  private static final float FILLED = 0.92f;

  /** The whole of a model from the south-east and above, as near as a square picture shows it. */
  public static Orbit whole(Model m) {
    Orbit o = new Orbit(m.centre(), 0.6f, 0.62f, 1, 0);
    Vector3f low = new Vector3f(Float.MAX_VALUE);
    Vector3f high = new Vector3f(-Float.MAX_VALUE);
    m.pieces()
        .forEach(
            p ->
                o.corners(
                    p,
                    c -> {
                      low.min(c);
                      high.max(c);
                    }));
    if (low.x > high.x) {
      return o.nearer(1 / m.low().distance(m.high()));
    }
    Vector3f middle = low.add(high).mul(0.5f);
    Vector3f target = m.centre().add(o.rightwards().mul(middle.x)).add(o.upwards().mul(middle.y));
    Orbit on = new Orbit(target, o.yaw, o.pitch, 1, 0);
    float slope = FILLED * (float) Math.tan(FIELD / 2);
    float[] away = {1};
    m.pieces()
        .forEach(
            p ->
                on.corners(
                    p,
                    c ->
                        away[0] =
                            Math.max(
                                away[0], Math.max(Math.abs(c.x), Math.abs(c.y)) / slope - c.z)));
    return new Orbit(target, o.yaw, o.pitch, away[0], 0);
  }

  /** The corners of the box round a piece, from the target: to the right, upwards, ahead. */
  private void corners(Piece p, Consumer<Vector3f> to) {
    Vector3f r = rightwards();
    Vector3f u = upwards();
    Vector3f a = ahead();
    Vector3f reach = p.reach();
    for (int i = 0; i < 8; i++) {
      Vector3f c = new Vector3f((i & 1) * 2 - 1, (i & 2) - 1, (i & 4) / 2 - 1).mul(reach);
      c.add(p.centre()).sub(target);
      to.accept(new Vector3f(c.dot(r), c.dot(u), c.dot(a)));
    }
  }

  /** The same with the target so far right of the middle, a part of the picture's width. */
  public Orbit aside(float part) {
    return new Orbit(target, yaw, pitch, distance, part);
  }

  public Orbit turned(float dYaw, float dPitch) {
    float p = Math.max(-STEEP, Math.min(STEEP, pitch + dPitch));
    return new Orbit(target, yaw + dYaw, p, distance, aside);
  }

  public Orbit nearer(float times) {
    return new Orbit(target, yaw, pitch, Math.max(0.4f, Math.min(400, distance / times)), aside);
  }

  public Orbit to(Vector3fc place) {
    return new Orbit(new Vector3f(place), yaw, pitch, distance, aside);
  }

  public Orbit to(Vector3fc place, float away) {
    return new Orbit(new Vector3f(place), yaw, pitch, away, aside);
  }

  /** Moves the target in the plane of the picture, in parts of the picture's height. */
  public Orbit shifted(float right, float up) {
    float seen = 2 * distance * (float) Math.tan(FIELD / 2);
    Vector3f t =
        new Vector3f(target).add(rightwards().mul(right * seen)).add(upwards().mul(up * seen));
    return new Orbit(t, yaw, pitch, distance, aside);
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
    return new Matrix4f()
        .translation(2 * aside, 0, 0)
        .perspective(FIELD, width / height, near, distance + 300);
  }
}
