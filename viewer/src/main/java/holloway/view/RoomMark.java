package holloway.view;

import java.util.List;
import org.joml.Intersectionf;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** A room's name and outline on its floor, metres; {@code middle} is well inside. */
public record RoomMark(String name, int level, List<Vector3fc> outline, Vector3fc middle) {
  public RoomMark {
    outline = List.copyOf(outline);
  }

  /** Metres in plan from a point to the room, 0 over or under it. */
  double away(Vector3fc p) {
    boolean inside = false;
    double least = Double.MAX_VALUE;
    Vector3f on = new Vector3f();
    for (int i = 0; i < outline.size(); i++) {
      Vector3fc a = outline.get(i);
      Vector3fc b = outline.get((i + 1) % outline.size());
      Intersectionf.findClosestPointOnLineSegment(
          a.x(), a.y(), 0, b.x(), b.y(), 0, p.x(), p.y(), 0, on);
      least = Math.min(least, Math.hypot(on.x - p.x(), on.y - p.y()));
      boolean between = a.y() > p.y() != b.y() > p.y();
      if (between && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        inside = !inside;
      }
    }
    return inside ? 0 : least;
  }
}
