package holloway.desk;

import holloway.look.Pane;
import holloway.session.Choice;
import holloway.view.Cable;
import holloway.view.EndMark;
import holloway.view.Pin;
import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** What a pixel points at, found by looking at every pin, outlet and stretch of cable. */
final class EveryThing {
  private static final float PIN = 15;
  private static final float END = 13;
  private static final float CABLE = 9;

  private EveryThing() {}

  static Choice at(Table t, Seen seen, Pane pane, float x, float y) {
    Choice best = Choice.NONE;
    float least = PIN;
    for (Pin p : t.model().pins()) {
      float far = far(pane, p.middle(), x, y);
      if (seen.isShown(p) && far < least) {
        least = far;
        best = new Choice.Hole(p.id());
      }
    }
    if (!best.equals(Choice.NONE)) {
      return best;
    }
    least = END;
    for (EndMark e : t.model().ends()) {
      float far = far(pane, e.at(), x, y);
      if (!e.cabinet() && seen.isShown(e.at()) && far < least) {
        least = far;
        best = new Choice.Outlet(e.name());
      }
    }
    return best.equals(Choice.NONE) ? cable(t, pane, x, y, CABLE) : best;
  }

  private static float far(Pane pane, Vector3fc at, float x, float y) {
    Vector3f p = pane.pixel(at);
    return p.z <= 0 ? Float.MAX_VALUE : (float) Math.hypot(p.x - x, p.y - y);
  }

  private static Choice cable(Table t, Pane pane, float x, float y, float within) {
    Choice best = Choice.NONE;
    float least = within;
    for (Cable c : t.model().cables()) {
      List<Vector3fc> points = c.points();
      for (int i = 0; i + 1 < points.size(); i++) {
        float far = far(pane.pixel(points.get(i)), pane.pixel(points.get(i + 1)), x, y);
        if (far < least) {
          least = far;
          best = new Choice.Run(c.id());
        }
      }
    }
    return best;
  }

  /** From a pixel to a stretch on the picture. */
  private static float far(Vector3f a, Vector3f b, float x, float y) {
    if (a.z <= 0 || b.z <= 0) {
      return Float.MAX_VALUE;
    }
    float dx = b.x - a.x;
    float dy = b.y - a.y;
    float length = dx * dx + dy * dy;
    float t = length == 0 ? 0 : ((x - a.x) * dx + (y - a.y) * dy) / length;
    t = Math.max(0, Math.min(1, t));
    return (float) Math.hypot(a.x + t * dx - x, a.y + t * dy - y);
  }
}
