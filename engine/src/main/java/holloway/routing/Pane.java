package holloway.routing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point3;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;

/** What an opening leaves free between its jambs: there is nothing to clip a cable to. */
record Pane(Frame frame, Box box) {
  /** Casing and jamb stand in a rough opening. */
  private static final long JAMB = 40_000_000;

  private static final long BEFORE = 30_000_000;

  /** The openings of the walls that show to a room. */
  static List<Pane> of(Placed placed, String room) {
    List<Pane> out = new ArrayList<>();
    for (Wall w : placed.walls()) {
      for (Wall.WallFace f : w.faces()) {
        for (Wall.WallOpening o : w.openings()) {
          long s0 = Math.max(f.s().lo(), o.s().lo() + JAMB);
          long s1 = Math.min(f.s().hi(), o.s().hi() - JAMB);
          long z0 = o.opening().sill().value().nm() > 0 ? o.z().lo() + JAMB : f.floorZ() - JAMB;
          long z1 = o.z().hi() - JAMB;
          if (f.room().equals(room) && s1 > s0 && z1 > z0) {
            out.add(new Pane(w.frame(), new Box(s0, s1, -BEFORE, w.thickness() + BEFORE, z0, z1)));
          }
        }
      }
    }
    return out;
  }

  /** True when a leg of the path goes over it; paths run along and up the wall, or away from it. */
  boolean crossedBy(List<Point3> path) {
    for (int i = 0; i + 1 < path.size(); i++) {
      Point3 a = frame.toLocal(path.get(i));
      Point3 b = frame.toLocal(path.get(i + 1));
      boolean meets =
          Math.max(a.x(), b.x()) > box.x0()
              && Math.min(a.x(), b.x()) < box.x1()
              && Math.max(a.y(), b.y()) > box.y0()
              && Math.min(a.y(), b.y()) < box.y1()
              && Math.max(a.z(), b.z()) > box.z0()
              && Math.min(a.z(), b.z()) < box.z1();
      if (meets) {
        return true;
      }
    }
    return false;
  }
}
