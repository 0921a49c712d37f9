package holloway.pick;

import holloway.look.Pane;
import org.joml.Matrix4d;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.joml.Vector4fc;

/**
 * What the eye sees through a pixel: a half line, and the part of it that no slice takes away.
 *
 * @param origin metres, on the near plane of the picture
 * @param direction one metre long
 * @param from metres along it at which the shown part begins, {@code to} at which it ends; under
 *     {@code from} where a slice leaves nothing
 * @param spread metres that a pixel grows with each metre along the ray; {@code least} its size at
 *     the origin
 */
public record Ray(
    Vector3dc origin, Vector3dc direction, double from, double to, double spread, double least) {
  private static final double FAR = 1e4;

  /** The ray of a pixel of a pane. */
  public static Ray at(Pane pane, float px, float py) {
    Matrix4d back = new Matrix4d(pane.projection()).mul(new Matrix4d(pane.view())).invert();
    Vector3d near = through(back, pane, px, py, -1);
    Vector3d way = through(back, pane, px, py, 1).sub(near).normalize();
    Vector3d beside = through(back, pane, px + 1, py, -1);
    Vector3d besideFar = through(back, pane, px + 1, py, 1);
    Vector3d besideWay = besideFar.sub(beside, new Vector3d()).normalize();
    double least = beside.distance(near);
    double spread = new Vector3d(near).add(way).distance(beside.add(besideWay)) - least;
    double from = 0;
    double to = FAR;
    for (Vector4fc c : pane.cuts()) {
      double rate = c.x() * way.x + c.y() * way.y + c.z() * way.z;
      double value = c.x() * near.x + c.y() * near.y + c.z() * near.z + c.w();
      if (Math.abs(rate) < 1e-12) {
        to = value < 0 ? -1 : to;
      } else if (rate > 0) {
        from = Math.max(from, -value / rate);
      } else {
        to = Math.min(to, -value / rate);
      }
    }
    return new Ray(near, way, from, to, Math.max(0, spread), least);
  }

  private static Vector3d through(Matrix4d back, Pane pane, float px, float py, double depth) {
    double x = 2.0 * (px - pane.x()) / pane.width() - 1;
    double y = 1 - 2.0 * (py - pane.y()) / pane.height();
    return back.transformProject(new Vector3d(x, y, depth));
  }

  /** Metres that so many pixels are at a place along the ray. */
  public double pixels(double count, double along) {
    return count * (least + spread * along);
  }
}
