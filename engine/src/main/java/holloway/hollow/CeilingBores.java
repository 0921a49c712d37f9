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
    Looked.Over over = over(points);
    intoAttic(over);
    intoOpenFloor(over, points.get(0));
    over.bays().forEach(this::keep);
  }

  /** The same, but into no joist bay. */
  void upPastJoists(List<Point2> points) {
    Looked.Over over = over(points);
    intoAttic(over);
    intoOpenFloor(over, points.get(0));
  }

  void intoAttic(List<Point2> points) {
    intoAttic(over(points));
  }

  private void intoAttic(Looked.Over over) {
    over.attics().forEach(this::keep);
  }

  private Looked.Over over(List<Point2> points) {
    return draft.looked.over(
        room.name(), points, () -> new Looked.Over(attics(points), open(points), bays(points)));
  }

  private List<Looked.Into> bays(List<Point2> points) {
    List<Looked.Into> out = new ArrayList<>();
    for (Hollow bay : draft.ofKind(HollowKind.JOIST_BAY)) {
      long bottom = bay.frame().origin().z() + bay.clear().z0();
      List<Point3[]> axes = new ArrayList<>();
      for (Point2 p : points) {
        if (Math.abs(bottom - room.ceilingZ()) < 80_000_000
            && PlateSites.inside(bay, p, 20_000_000)) {
          axes.add(new Point3[] {p.at(room.ceilingZ()), p.at(bottom)});
        }
      }
      into(out, bay.id(), axes);
    }
    return out;
  }

  private List<Looked.Into> attics(List<Point2> points) {
    List<Looked.Into> out = new ArrayList<>();
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
      attic.ifPresent(h -> into(out, h.id(), axes));
    }
    return out;
  }

  /** Keeps off what hangs below the ceiling. */
  private void into(List<Looked.Into> out, String hollow, List<Point3[]> axes) {
    List<Point3[]> free = axes.stream().filter(x -> !draft.isUnderBeam(room, x[0].plan())).toList();
    if (!free.isEmpty()) {
      out.add(new Looked.Into(hollow, free));
    }
  }

  private Optional<String> open(List<Point2> points) {
    return draft.hollows.values().stream()
        .filter(h -> UnderJoists.is(h.id()) && UnderJoists.room(h.id()).equals(room.name()))
        .filter(h -> h.area().orElseThrow().contains(points.get(0)))
        .map(Hollow::id)
        .findFirst();
  }

  /** Under open joists there is nothing to bore: the space leads into the joists. */
  private void intoOpenFloor(Looked.Over over, Point2 p) {
    if (over.open().isPresent()) {
      Point3 at = p.at(room.ceilingZ());
      String id = room.name() + "/open-ceiling/" + Tags.of(at.x()) + "-" + Tags.of(at.y());
      draft.keep(
          new Site(
              id,
              SiteKind.OPENING,
              at.withZ(at.z() - 20_000_000),
              at,
              from,
              over.open().get(),
              List.of(),
              List.of(),
              51,
              51,
              true,
              false));
    }
  }

  private void keep(Looked.Into into) {
    draft.keepBest(prefix, SiteKind.CEILING, into.axes(), from, into.hollow());
  }
}
