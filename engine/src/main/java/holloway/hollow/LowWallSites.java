package holloway.hollow;

import holloway.geometry.Box;
import holloway.geometry.Point3;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * From the last bay of a half-height wall through its end post into the wall that it ends against:
 * into the narrow bay between the posts that back it there.
 */
final class LowWallSites {
  /** Over the foot of a bay, as stud bores. */
  private static final long[] HEIGHTS = {320_000_000, 400_000_000, 480_000_000};

  /** A bay that begins further than this from the end lies behind more than a post. */
  private static final long POST = 60_000_000;

  private final Draft draft;

  private LowWallSites(Draft draft) {
    this.draft = draft;
  }

  static void find(Draft draft) {
    LowWallSites s = new LowWallSites(draft);
    for (Wall w : draft.framed.placed().walls()) {
      if (w.isLow() && w.isFramed()) {
        s.end(w, true);
        s.end(w, false);
      }
    }
  }

  private void end(Wall w, boolean low) {
    Optional<Hollow> bay =
        draft.ofKind(HollowKind.STUD_BAY).stream()
            .filter(h -> h.owner().equals(w.id()))
            .filter(h -> (low ? h.clear().x0() : w.length() - h.clear().x1()) <= POST)
            .findFirst();
    for (Wall against : draft.framed.placed().walls()) {
      boolean meets = against.junctions().stream().anyMatch(j -> j.other().equals(w.id()));
      if (meets && bay.isPresent() && !against.isParty() && against.isFramed()) {
        bore(w, bay.get(), against, low);
      }
    }
  }

  private void bore(Wall w, Hollow bay, Wall against, boolean low) {
    Box b = bay.clear();
    long edge = low ? b.x0() : b.x1();
    long beyond = against.core().length() / 2;
    List<Point3[]> axes = new ArrayList<>();
    String into = "";
    for (long up : HEIGHTS) {
      long z = b.z0() + up;
      if (z < b.z1() - POST) {
        Point3 from = w.world(edge, b.y().mid(), z);
        Point3 to = w.world(low ? -beyond : w.length() + beyond, b.y().mid(), z);
        Optional<Hollow> behind = holding(against, to);
        if (behind.isPresent() && (into.isEmpty() || into.equals(behind.get().id()))) {
          into = behind.get().id();
          axes.add(new Point3[] {from, to});
        }
      }
    }
    String id = w.id() + "/end-post/" + (low ? "low" : "high");
    if (!axes.isEmpty()) {
      draft.bores.best(id, SiteKind.STUD, axes, bay.id(), into).ifPresent(draft::keep);
    }
  }

  private Optional<Hollow> holding(Wall wall, Point3 p) {
    Point3 q = wall.frame().toLocal(p);
    return draft.ofKind(HollowKind.STUD_BAY).stream()
        .filter(h -> h.owner().equals(wall.id()) && h.clear().x().contains(q.x()))
        .filter(h -> h.clear().y().contains(q.y()) && h.clear().z().contains(q.z()))
        .findFirst();
  }
}
