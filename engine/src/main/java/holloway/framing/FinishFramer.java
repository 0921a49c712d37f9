package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Polygon2;
import holloway.house.FloorSpec;
import holloway.house.Lining;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.List;

/** Linings of walls and ceilings, cladding outside, and slabs. */
final class FinishFramer {
  private static final long SLAB = 100_000_000;

  private FinishFramer() {}

  static void frame(Placed placed, List<Deck> decks, List<Member> members) {
    for (Wall w : placed.walls()) {
      Interval low = new Interval(0, w.core().lo());
      Interval high = new Interval(w.core().hi(), w.thickness());
      skin(placed, w, 0, BoardVoid.board(w, 0, low), w.lining0(), members);
      skin(placed, w, 1, BoardVoid.board(w, 1, high), w.lining1(), members);
    }
    for (PlacedRoom r : placed.rooms()) {
      ceiling(placed, r, members);
      slab(placed, r, members);
    }
  }

  private static void skin(
      Placed placed, Wall w, int side, Interval t, Lining lining, List<Member> members) {
    if (t.length() <= 0) {
      return;
    }
    boolean outer = w.outside() == side;
    if (outer) {
      boxes(
          w,
          "cladding-" + side,
          MemberKind.CLADDING,
          new Interval(0, w.length()),
          t,
          new Interval(0, w.height()),
          members);
      return;
    }
    if (lining == Lining.OPEN) {
      return;
    }
    for (Wall.WallFace f : w.faces()) {
      if (f.side() == side) {
        Interval z = new Interval(Math.min(f.floorZ(), f.ceilingZ()), f.ceilingZ());
        boxes(
            w,
            "lining-" + side + "-" + WallFramer.tag(f.s().lo()),
            MemberKind.LINING,
            f.s(),
            t,
            z,
            members);
      }
    }
  }

  private static void boxes(
      Wall w,
      String name,
      MemberKind kind,
      Interval s,
      Interval t,
      Interval z,
      List<Member> members) {
    for (Box b : Sheets.around(s, t, z, w.openings())) {
      String id = w.id() + "/" + name + "-" + WallFramer.tag(b.x0()) + "-" + WallFramer.tag(b.z0());
      members.add(new Member(id, kind, w.frame(), b, w.id(), false));
    }
  }

  private static void ceiling(Placed placed, PlacedRoom r, List<Member> members) {
    long thick = Ceilings.lining(placed, r);
    if (thick == 0 || r.room().vaulted()) {
      return;
    }
    sheet(
        r.outline(),
        r.ceilingZ(),
        r.ceilingZ() + thick,
        MemberKind.LINING,
        r.name() + "/ceiling",
        r.name(),
        members);
  }

  private static void slab(Placed placed, PlacedRoom r, List<Member> members) {
    FloorSpec floor = r.room().floor().orElse(placed.getLevel(r.room().level()).level().floor());
    if (floor.kind() == FloorSpec.Kind.SLAB) {
      sheet(
          r.outline(),
          r.floorZ() - SLAB,
          r.floorZ(),
          MemberKind.SLAB,
          r.name() + "/slab",
          r.name(),
          members);
    }
  }

  private static void sheet(
      Polygon2 outline,
      long z0,
      long z1,
      MemberKind kind,
      String name,
      String owner,
      List<Member> members) {
    for (Polygon2 p : Sheets.rectangles(outline)) {
      Box box = new Box(p.xRange().lo(), p.xRange().hi(), p.yRange().lo(), p.yRange().hi(), z0, z1);
      String id = name + "-" + WallFramer.tag(box.x0()) + "-" + WallFramer.tag(box.y0());
      members.add(new Member(id, kind, Frame.WORLD, box, owner, false));
    }
  }
}
