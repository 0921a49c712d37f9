package holloway.view;

import holloway.look.Area;
import holloway.look.Pane;
import holloway.look.Tube;
import java.util.ArrayList;
import java.util.List;
import org.joml.Intersectionf;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.joml.Vector4fc;

/** Where the cables of a pane are on the picture, so that names can keep off them. */
final class Lines {
  private final List<float[]> all = new ArrayList<>();

  Lines(Pane pane) {
    for (Tube t : pane.bodies().tubes) {
      for (int i = 0; i + 1 < t.points().size(); i++) {
        add(pane, t.points().get(i), t.points().get(i + 1));
      }
    }
  }

  /** A stretch, without what the cuts of the pane take off, as on another level. */
  private void add(Pane pane, Vector3fc from, Vector3fc to) {
    float first = 0;
    float last = 1;
    for (Vector4fc cut : pane.tubeCuts()) {
      float p = cut.x() * from.x() + cut.y() * from.y() + cut.z() * from.z() + cut.w();
      float q = cut.x() * to.x() + cut.y() * to.y() + cut.z() * to.z() + cut.w();
      if (p < 0 && q < 0) {
        return;
      }
      first = p < 0 ? Math.max(first, p / (p - q)) : first;
      last = q < 0 ? Math.min(last, p / (p - q)) : last;
    }
    Vector3f a = pane.pixel(new Vector3f(from).lerp(to, first));
    Vector3f b = pane.pixel(new Vector3f(from).lerp(to, last));
    if (first <= last && a.z > 0 && b.z > 0) {
      all.add(new float[] {a.x, a.y, b.x, b.y});
    }
  }

  /** Whether a cable comes nearer to an area than so many pixels. */
  boolean crosses(Area area, float near) {
    float x0 = area.x() - near;
    float y0 = area.y() - near;
    float x1 = area.right() + near;
    float y1 = area.bottom() + near;
    return all.stream().anyMatch(l -> meets(l, x0, y0, x1, y1));
  }

  private static boolean meets(float[] l, float x0, float y0, float x1, float y1) {
    boolean in = l[0] > x0 && l[0] < x1 && l[1] > y0 && l[1] < y1;
    if (in || Math.max(l[0], l[2]) < x0 || Math.min(l[0], l[2]) > x1) {
      return in;
    }
    if (Math.max(l[1], l[3]) < y0 || Math.min(l[1], l[3]) > y1) {
      return false;
    }
    return Intersectionf.intersectLineSegmentAab(
            l[0], l[1], 0, l[2], l[3], 0, x0, y0, -1, x1, y1, 1, new org.joml.Vector2f())
        != Intersectionf.OUTSIDE;
  }
}
