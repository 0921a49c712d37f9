package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Polygon2;
import holloway.house.FloorSpec;
import holloway.house.Lining;
import holloway.house.WallTraits;
import holloway.survey.Makeup;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

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
      behindBattens(w, 0, low, members);
      behindBattens(w, 1, high, members);
      cap(w, members);
    }
    for (PlacedRoom r : placed.rooms()) {
      ceiling(placed, r, members);
      slab(placed, r, members);
    }
    StrapVoid.of(placed, decks).forEach(v -> members.addAll(v.members()));
    decks(placed, decks, members);
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
        long foot = w.isOpen() ? HeaderFramer.underside(w) : f.floorZ();
        Interval z = new Interval(Math.min(foot, f.ceilingZ()), f.ceilingZ());
        List<Interval> layers = layers(w, side, t);
        for (int k = 0; k < layers.size(); k++) {
          String which = k == 0 ? "" : "-layer-" + (k + 1);
          boxes(
              w,
              "lining-" + side + which + "-" + WallFramer.tag(f.s().lo()),
              MemberKind.LINING,
              f.s(),
              layers.get(k),
              z,
              members);
        }
      }
    }
  }

  /** The lining that a wall had before battens and another one came before it. */
  private static void behindBattens(Wall w, int side, Interval skin, List<Member> members) {
    Optional<Interval> t = BoardVoid.behind(w, side, skin);
    for (Wall.WallFace f : w.faces()) {
      if (f.side() == side && t.isPresent()) {
        String name = "behind-battens-" + side + "-" + WallFramer.tag(f.s().lo());
        Interval z = new Interval(Math.min(f.floorZ(), f.ceilingZ()), f.ceilingZ());
        boxes(w, name, MemberKind.LINING, f.s(), t.get(), z, members);
      }
    }
  }

  /** The board on top of a half-height wall. */
  private static void cap(Wall w, List<Member> members) {
    if (w.isLow()) {
      Interval z = new Interval(w.height(), w.height() + Makeup.CAP);
      Box box = new Box(0, w.length(), 0, w.thickness(), z.lo(), z.hi());
      members.add(new Member(w.id() + "/cap", MemberKind.LINING, w.frame(), box, w.id(), false));
    }
  }

  /** The layers of a lining from the studs outward, each its share of what the gap leaves. */
  private static List<Interval> layers(Wall w, int side, Interval t) {
    Optional<WallTraits.Layers> stated = w.findLayers(side);
    if (stated.isEmpty()) {
      return List.of(t);
    }
    List<Interval> out = new ArrayList<>();
    long from = 0;
    for (WallTraits.Layer l : stated.get().layers()) {
      long to = from + l.thickness().value().nm();
      long a = share(t.length(), from, stated.get().nm());
      long b = share(t.length(), to, stated.get().nm());
      out.add(
          side == 0 ? new Interval(t.hi() - b, t.hi() - a) : new Interval(t.lo() + a, t.lo() + b));
      from = to;
    }
    return out;
  }

  private static long share(long whole, long part, long of) {
    return Math.round(whole * (part / (double) of));
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

  /** Its layers from what is seen up to the joists or straps. */
  private static void ceiling(Placed placed, PlacedRoom r, List<Member> members) {
    long thick = Ceilings.lining(placed, r) - r.room().overhead().strapsNm();
    if (thick == 0 || r.room().vaulted()) {
      return;
    }
    List<WallTraits.Layer> layers = r.room().overhead().layers();
    long top = r.ceilingZ() + thick;
    for (int k = 0; k < Math.max(1, layers.size()); k++) {
      long foot = layers.isEmpty() ? r.ceilingZ() : top - layers.get(k).thickness().value().nm();
      sheet(
          r.outline(),
          Wells.inCeiling(placed, r.room().level()),
          foot,
          top,
          MemberKind.LINING,
          r.name() + (k == 0 ? "/ceiling" : "/ceiling-layer-" + (k + 1)),
          r.name(),
          members);
      top = foot;
    }
  }

  /** On the ground: between the walls. Over a storey it is {@link #decks}. */
  private static void slab(Placed placed, PlacedRoom r, List<Member> members) {
    if (isSlab(placed, r) && isOnGround(placed, r)) {
      sheet(
          r.outline(),
          Wells.inFloor(placed, r.room().level()),
          r.floorZ() - SLAB,
          r.floorZ(),
          MemberKind.SLAB,
          r.name() + "/slab",
          r.name(),
          members);
    }
  }

  private static boolean isSlab(Placed placed, PlacedRoom r) {
    FloorSpec usual = placed.getLevel(r.room().level()).level().floor();
    return r.room().floor().orElse(usual).kind() == FloorSpec.Kind.SLAB;
  }

  /** Of the lowest storey, or with no room of ours below: an addition beside a cellar. */
  private static boolean isOnGround(Placed placed, PlacedRoom r) {
    PlacedLevel own = placed.getLevel(r.room().level());
    var here = r.outline().toJts();
    return own.storey() == 0
        || placed.rooms().stream()
            .filter(o -> own.isOver(placed.getLevel(o.room().level())))
            .noneMatch(o -> Overlay.intersection(o.outline().toJts(), here).getArea() > 10_000);
  }

  /**
   * Concrete between storeys runs on over the walls that carry it, except where a wall stands on
   * the joists of the room beside.
   */
  private static void decks(Placed placed, List<Deck> joisted, List<Member> members) {
    for (PlacedLevel level : placed.levels()) {
      if (level.storey() > 0) {
        Geometry all =
            Outlines.of(
                placed, level.name(), r -> isSlab(placed, r) && !isOnGround(placed, r), true);
        for (Deck d : joisted) {
          all = d.level().equals(level.name()) ? Overlay.difference(all, d.outline().toJts()) : all;
        }
        List<Polygon2> parts = Outlines.parts(all);
        for (int i = 0; i < parts.size(); i++) {
          sheet(
              parts.get(i),
              Wells.inFloor(placed, level.name()),
              level.floorZ() - Makeup.CONCRETE_DECK,
              level.floorZ(),
              MemberKind.SLAB,
              level.name() + "/slab-" + (i + 1),
              level.name() + "/slab",
              members);
        }
      }
    }
  }

  private static void sheet(
      Polygon2 outline,
      List<Box> wells,
      long z0,
      long z1,
      MemberKind kind,
      String name,
      String owner,
      List<Member> members) {
    for (Polygon2 p : Wells.cut(Sheets.rectangles(outline), wells)) {
      Box box = new Box(p.xRange().lo(), p.xRange().hi(), p.yRange().lo(), p.yRange().hi(), z0, z1);
      String id = name + "-" + WallFramer.tag(box.x0()) + "-" + WallFramer.tag(box.y0());
      members.add(new Member(id, kind, Frame.WORLD, box, owner, false));
    }
  }
}
