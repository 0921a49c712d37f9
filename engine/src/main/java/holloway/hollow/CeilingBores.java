package holloway.hollow;

import holloway.framing.Attic;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bores straight up through a room's ceiling board into an attic, joist bay or open floor, from
 * whatever space lies right under that board.
 *
 * @param from the hollow under the board
 * @param prefix of the ids
 */
record CeilingBores(Draft draft, PlacedRoom room, String from, String prefix) {
  /** From the room's own surface. */
  static CeilingBores of(Draft draft, PlacedRoom r) {
    return new CeilingBores(draft, r, RoomSpaces.surface(r.name()), r.name() + "/ceiling/");
  }

  /** One bore into each space over any of the points, at the first of them that will do. */
  void up(List<Point2> points) {
    intoAttic(points);
    intoOpenFloor(points);
    for (Hollow bay : draft.ofKind(HollowKind.JOIST_BAY)) {
      long bottom = bay.frame().origin().z() + bay.clear().z0();
      List<Point3[]> axes = new ArrayList<>();
      for (Point2 p : points) {
        if (Math.abs(bottom - room.ceilingZ()) < 80_000_000
            && PlateSites.inside(bay, p, 20_000_000)) {
          axes.add(new Point3[] {p.at(room.ceilingZ()), p.at(bottom)});
        }
      }
      keep(axes, bay.id());
    }
  }

  void intoAttic(List<Point2> points) {
    for (Attic a : draft.framed.attics()) {
      Optional<Hollow> attic = draft.find("attic/" + a.id());
      List<Point3[]> axes = new ArrayList<>();
      for (Point2 p : points) {
        boolean under =
            Math.abs(a.plateZ() - room.ceilingZ()) < 120_000_000 && room.outline().contains(p);
        if (under
            && attic.isPresent()
            && attic.get().area().orElseThrow().contains(p)
            && draft.solids.free(p.at(a.plateZ()), p.at(a.chordTopZ() + 60_000_000), 16_000_000)) {
          axes.add(new Point3[] {p.at(room.ceilingZ()), p.at(a.plateZ())});
        }
      }
      attic.ifPresent(h -> keep(axes, h.id()));
    }
  }

  /** Under open joists there is nothing to bore: the space leads into the joists. */
  void intoOpenFloor(List<Point2> points) {
    Optional<Hollow> open =
        draft.hollows.values().stream()
            .filter(h -> UnderJoists.is(h.id()) && UnderJoists.room(h.id()).equals(room.name()))
            .filter(h -> h.area().orElseThrow().contains(points.get(0)))
            .findFirst();
    if (open.isPresent()) {
      Point3 at = points.get(0).at(room.ceilingZ());
      String id = room.name() + "/open-ceiling/" + Tags.of(at.x()) + "-" + Tags.of(at.y());
      draft.keep(
          new Site(
              id,
              SiteKind.OPENING,
              at.withZ(at.z() - 20_000_000),
              at,
              from,
              open.get().id(),
              List.of(),
              List.of(),
              51,
              51,
              true,
              false));
    }
  }

  private void keep(List<Point3[]> axes, String to) {
    List<Point3[]> free = axes.stream().filter(x -> !draft.isUnderBeam(room, x[0].plan())).toList();
    draft.keepBest(prefix, SiteKind.CEILING, free, from, to);
  }
}
