package holloway.hollow;

import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways from one room's surface straight into another's: through the wall between them, or through
 * the floor into the room above.
 */
final class RoomToRoomSites {
  private static final long LOW = 150_000_000;

  private final Draft draft;
  private final FloorWays floors;

  RoomToRoomSites(Draft draft, FloorWays floors) {
    this.draft = draft;
    this.floors = floors;
  }

  void find() {
    draft.framed.placed().walls().forEach(this::betweenRooms);
    floors.keep(draft);
  }

  /** One way through a wall near each end of the stretch that two rooms share. */
  private void betweenRooms(Wall w) {
    if (w.isParty()) {
      draft.refuse(
          "the wall " + w.id(),
          w.world(w.length() / 2, w.thickness() / 2, w.height() / 2),
          ShutWalls.through(w),
          ShutWalls.source(w));
      return;
    }
    if (w.isOpen()) {
      return; // cable goes through without a hole, see OpenSites
    }
    for (Wall.WallFace f : w.faces()) {
      for (Wall.WallFace g : w.faces()) {
        if (f.side() == 0 && g.side() == 1) {
          f.s()
              .cut(g.s())
              .filter(c -> c.length() > 200_000_000)
              .ifPresent(
                  c -> {
                    through(w, f, g, c, true);
                    through(w, f, g, c, false);
                  });
        }
      }
    }
  }

  private void through(Wall w, Wall.WallFace f, Wall.WallFace g, Interval shared, boolean fromLow) {
    long z = Math.max(f.floorZ(), g.floorZ()) + LOW;
    List<Point3[]> axes = new ArrayList<>();
    for (long step = 80_000_000;
        step < Math.min(shared.length(), 1_500_000_000L);
        step += 60_000_000) {
      long s = fromLow ? shared.lo() + step : shared.hi() - step;
      axes.add(new Point3[] {w.world(s, 0, z), w.world(s, w.thickness(), z)});
    }
    SiteKind kind = w.isFramed() ? SiteKind.WALL_THROUGH : SiteKind.MASONRY;
    draft
        .bores
        .best("?", kind, axes, RoomSpaces.surface(f.room()), RoomSpaces.surface(g.room()))
        .ifPresent(
            s -> {
              String id = w.id() + "/through/" + Tags.of(w.frame().toLocal(s.a()).x());
              if (!draft.has(id)) {
                draft.keep(s.named(id));
              }
            });
  }
}
