package holloway.hollow;

import holloway.framing.Lowered;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.house.FloorSpec;
import holloway.house.Lining;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
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

  RoomToRoomSites(Draft draft) {
    this.draft = draft;
  }

  void find() {
    draft.framed.placed().walls().forEach(this::betweenRooms);
    for (PlacedRoom low : draft.framed.placed().rooms()) {
      for (PlacedRoom high : draft.framed.placed().rooms()) {
        throughFloor(low, high);
      }
    }
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

  /**
   * One way straight through the floor between two rooms on top of each other, in a corner of what
   * they share.
   */
  private void throughFloor(PlacedRoom low, PlacedRoom high) {
    PlacedLevel a = draft.framed.placed().getLevel(low.room().level());
    PlacedLevel b = draft.framed.placed().getLevel(high.room().level());
    if (b.isNextOver(a) && concrete(low, high)) {
      return;
    }
    if (b.isNextOver(a) && low.room().ceiling() != Lining.OPEN && !lowered(low)) {
      var shared =
          Spaces.grow(Overlay.intersection(low.outline().toJts(), high.outline().toJts()), -70);
      Spaces.largest(shared)
          .ifPresent(
              p ->
                  draft.keepBest(
                      low.name() + "/to-" + high.name() + "/",
                      SiteKind.CEILING_AND_FLOOR,
                      nearCorners(p, Away.of(draft)).stream()
                          .filter(c -> !draft.covered(low, c))
                          .map(c -> new Point3[] {c.at(low.ceilingZ()), c.at(high.floorZ())})
                          .toList(),
                      RoomSpaces.surface(low.name()),
                      RoomSpaces.surface(high.name())));
    }
  }

  /** A bore through the floor over a lowered ceiling would come out in its void. */
  private boolean lowered(PlacedRoom r) {
    return Lowered.visibleCeiling(draft.framed.placed(), r) < r.ceilingZ();
  }

  /** A core bore through concrete between storeys is not offered; told once for each two rooms. */
  private boolean concrete(PlacedRoom low, PlacedRoom high) {
    FloorSpec usual = draft.framed.placed().getLevel(high.room().level()).level().floor();
    boolean slab = high.room().floor().orElse(usual).kind() == FloorSpec.Kind.SLAB;
    var shared = Overlay.intersection(low.outline().toJts(), high.outline().toJts());
    if (slab && !shared.isEmpty() && shared.getArea() > 0) {
      Point2 mid =
          new Point2(
              Math.round(shared.getCentroid().getX() * 1e6),
              Math.round(shared.getCentroid().getY() * 1e6));
      draft.refuse(
          "floor between " + low.name() + " and " + high.name(),
          mid.at(high.floorZ()),
          "it is concrete: a core bore needs a specialist and somebody who knows its steel",
          "common practice, no published source");
    }
    return slab;
  }

  /** The corners, then places beside them, as far as they lie within. */
  private static List<Point2> nearCorners(Polygon2 shared, Away away) {
    List<Point2> near = new ArrayList<>();
    shared.corners().stream()
        .sorted(away.order())
        .forEach(
            c -> {
              for (long aside :
                  new long[] {0, 120_000_000, -120_000_000, 240_000_000, -240_000_000}) {
                near.add(away.plus(c, aside, 0));
                near.add(away.plus(c, 0, aside));
              }
            });
    return near.stream().filter(shared::contains).toList();
  }
}
