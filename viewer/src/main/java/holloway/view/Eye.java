package holloway.view;

import holloway.look.Area;
import java.util.List;
import org.joml.Matrix4f;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * Where a picture is seen from, without perspective: a direction to look in, what is up, and the
 * part of the house that has to be in it.
 *
 * @param view from metres to the eye; {@code projection} on to clip space
 * @param perPixel metres a pixel
 */
public record Eye(Matrix4f view, Matrix4f projection, float perPixel) {
  /** The eye stands this far away, so that nothing lies behind it. */
  private static final float AWAY = 200;

  /**
   * As {@link #on}, moved so far that as little as can be of the picture is beside the house, while
   * the points keep their margin.
   *
   * @param there what there is to see
   */
  static Eye over(
      List<? extends Vector3fc> there,
      List<? extends Vector3fc> points,
      Vector3fc look,
      Vector3fc up,
      Area area,
      float least,
      float margin) {
    Eye eye = on(points, look, up, area, least, margin);
    Vector3f[] own = bounds(points, eye.view);
    Vector3f[] all = bounds(there, eye.view);
    float keep = 1 - 2 * margin;
    float x = moved(own[0].x, own[1].x, all[0].x, all[1].x, area.width() * eye.perPixel / 2, keep);
    float y = moved(own[0].y, own[1].y, all[0].y, all[1].y, area.height() * eye.perPixel / 2, keep);
    Matrix4f view = new Matrix4f().translate(-x, -y, 0).mul(eye.view);
    return new Eye(view, eye.projection, eye.perPixel);
  }

  private static Vector3f[] bounds(List<? extends Vector3fc> points, Matrix4f view) {
    Vector3f low = new Vector3f(Float.MAX_VALUE);
    Vector3f high = new Vector3f(-Float.MAX_VALUE);
    for (Vector3fc p : points) {
      Vector3f t = view.transformPosition(p, new Vector3f());
      low.min(t);
      high.max(t);
    }
    return new Vector3f[] {low, high};
  }

  /** How far along one axis, of a picture that reaches half to either side of 0. */
  private static float moved(float low, float high, float from, float to, float half, float keep) {
    float free = 0;
    if (from > -half && to < half) {
      free = (from + to) / 2;
    } else if (from > -half) {
      free = Math.min(from + half, to - half);
    } else if (to < half) {
      free = Math.max(to - half, from + half);
    }
    float room = half * keep;
    return Math.max(Math.min(0, high - room), Math.min(Math.max(0, low + room), free));
  }

  /**
   * Sees all of some points, as large as fits.
   *
   * @param least metres that are seen at least, across the shorter side
   * @param margin part of the picture that stays free on each side
   */
  static Eye on(
      List<? extends Vector3fc> points,
      Vector3fc look,
      Vector3fc up,
      Area area,
      float least,
      float margin) {
    Vector3f dir = new Vector3f(look).normalize();
    Matrix4f turn = new Matrix4f().lookAlong(dir, up);
    Vector3f[] ends = bounds(points, turn);
    Vector3f low = ends[0];
    Vector3f high = ends[1];
    Vector3f middle = new Vector3f(low).add(high).mul(0.5f);
    float keep = 1 - 2 * margin;
    float wide = Math.max(high.x - low.x, 1e-3f) / (area.width() * keep);
    float tall = Math.max(high.y - low.y, 1e-3f) / (area.height() * keep);
    float perPixel =
        Math.max(Math.max(wide, tall), least / (Math.min(area.width(), area.height()) * keep));
    float halfW = area.width() * perPixel / 2;
    float halfH = area.height() * perPixel / 2;
    Matrix4f view = new Matrix4f().translate(-middle.x, -middle.y, -middle.z - AWAY).mul(turn);
    Matrix4f projection = new Matrix4f().ortho(-halfW, halfW, -halfH, halfH, 1, 2 * AWAY);
    return new Eye(view, projection, perPixel);
  }
}
