package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Fact;
import holloway.house.FloorSpec;
import holloway.house.Timber;
import holloway.survey.Makeup;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Joists, rims, blocking over bearing walls and subfloor of every joisted floor. */
final class DeckFramer {
  private static final long RIM = 38_000_000;

  private final Placed placed;
  private final BalloonLines lines;
  private final List<Member> members;

  DeckFramer(Placed placed, BalloonLines lines, List<Member> members) {
    this.placed = placed;
    this.lines = lines;
    this.members = members;
  }

  List<Deck> decks() {
    List<Deck> out = new ArrayList<>();
    for (PlacedLevel level : placed.levels()) {
      if (level.level().floor().kind() == FloorSpec.Kind.JOISTS) {
        out.addAll(decks(level));
      }
    }
    return out;
  }

  private List<Deck> decks(PlacedLevel level) {
    List<FloorRegions.Region> regions = FloorRegions.of(placed, level);
    int all = regions.stream().mapToInt(r -> Outlines.parts(r.outline()).size()).sum();
    List<Deck> out = new ArrayList<>();
    for (FloorRegions.Region r : regions) {
      for (Polygon2 part : Outlines.parts(r.outline())) {
        String number = all == 1 ? "" : "-" + (out.size() + 1);
        out.add(deck(level, r.spec(), part, level.name() + "/floor" + number));
      }
    }
    return out;
  }

  private Deck deck(PlacedLevel level, FloorSpec spec, Polygon2 outline, String id) {
    boolean ew = spec.run() == Direction.EAST_WEST;
    Interval x = outline.xRange();
    Interval y = outline.yRange();
    Frame frame =
        ew
            ? Frame.eastWest(new Point2(x.lo(), y.lo()).at(level.floorZ()))
            : Frame.northSouth(new Point2(x.hi(), y.lo()).at(level.floorZ()));
    long width = ew ? y.length() : x.length();
    Fact<Timber> timber = spec.joists().orElseGet(() -> Fact.assumed(Makeup.JOIST));
    long sheet = Makeup.subfloor(spec);
    Interval joistZ = new Interval(-sheet - timber.value().depth().nm(), -sheet);
    List<Box> wells = Wells.toLocal(Wells.inFloor(placed, level.name()), frame);
    List<Interval> joists =
        Wells.trimmed(
            layout(spec, timber.value(), width, ew == fromHigh(spec)),
            wells,
            timber.value().thickness().nm());
    Fact<Long> every =
        new Fact<>(
            spec.every().value().nm(), Length.ZERO, spec.every().origin(), spec.every().where());
    boolean assumed = spec.origin().isEmpty();
    Polygon2 local = toLocal(outline, frame);
    List<Interval> bearings = new ArrayList<>();
    Deck deck =
        new Deck(
            id,
            level.name(),
            frame,
            outline,
            timber,
            every,
            assumed,
            joistZ,
            new Interval(-sheet, 0),
            joists,
            bearings,
            wells,
            spec);
    Geometry through = throughWalls(level.name());
    joists(deck, local, through);
    rimsAcross(deck, local, through);
    headers(deck, local);
    BeamFramer.within(placed, frame, joistZ).stream()
        .filter(b -> b.y().length() > b.x().length())
        .forEach(b -> bearings.add(b.x()));
    BlockFramer blocks = new BlockFramer(placed, deck, local, members);
    blocks.overWalls(bearings);
    blocks.rows();
    subfloor(deck, through);
    return deck;
  }

  /** A found origin is stated from either edge; an assumed one lies where layouts begin. */
  private boolean fromHigh(FloorSpec spec) {
    return spec.origin()
        .map(f -> f.value().nm() < 0)
        .orElseGet(() -> RoofFramer.isFromHigh(placed, spec.run()));
  }

  /**
   * Joist positions across the deck: one along each edge, and the layout between from its origin,
   * counted up or down across the deck.
   */
  private static List<Interval> layout(FloorSpec spec, Timber timber, long width, boolean down) {
    long thick = timber.thickness().nm();
    long every = spec.every().value().nm();
    long origin = spec.origin().map(f -> Math.abs(f.value().nm())).orElse(every);
    List<Interval> out = new ArrayList<>();
    out.add(new Interval(0, thick));
    for (long c = Math.floorMod(origin, every); c < width; c += every) {
      long v = down ? width - c : c;
      Interval j = new Interval(v - thick / 2, v - thick / 2 + thick);
      if (j.lo() >= thick && j.hi() <= width - thick) {
        out.add(j);
      }
    }
    out.add(new Interval(width - thick, width));
    out.sort((a, b) -> Long.compare(a.lo(), b.lo()));
    return out;
  }

  static Polygon2 toLocal(Polygon2 outline, Frame frame) {
    return new Polygon2(
        outline.corners().stream()
            .map(c -> frame.toLocal(c.at(frame.origin().z())).plan())
            .toList());
  }

  /** Cores of balloon walls whose studs run through this floor: no rim and no sheet is in them. */
  private Geometry throughWalls(String level) {
    List<Geometry> cores = new ArrayList<>();
    for (Wall w : placed.walls()) {
      if (w.level().equals(level) && lines.findBelow(w).isPresent()) {
        cores.add(Outlines.core(w).toJts());
      }
    }
    return cores.isEmpty()
        ? Polygon2.rectangle(0, 0, 1, 1).toJts().buffer(-1)
        : UnaryUnionOp.union(cores);
  }

  private static boolean inside(Deck deck, Box box, Geometry through) {
    List<Point2> corners = new ArrayList<>();
    for (long[] c :
        new long[][] {
          {box.x0(), box.y0()}, {box.x1(), box.y0()}, {box.x1(), box.y1()}, {box.x0(), box.y1()}
        }) {
      corners.add(deck.frame().toWorld(c[0], c[1], 0).plan());
    }
    Geometry plan = new Polygon2(corners).toJts();
    return !through.isEmpty() && Overlay.shared(plan, through).getArea() > 0.5 * plan.getArea();
  }

  private void joists(Deck deck, Polygon2 local, Geometry through) {
    long inset = through.isEmpty() ? RIM : 0;
    List<Box> beams = BeamFramer.within(placed, deck.frame(), deck.joistZ());
    for (Interval v : deck.joists()) {
      for (Interval u : Sheets.insideAlong(local, v.lo(), v.hi())) {
        if (u.length() > 2 * inset + 50_000_000) {
          Interval inner = new Interval(u.lo() + inset, u.hi() - inset);
          List<Interval> wells =
              new ArrayList<>(
                  Wells.across(deck.wells(), v, deck.timber().value().thickness().nm()));
          wells.addAll(BeamFramer.across(beams, v));
          for (Interval part : inner.without(wells, 50_000_000)) {
            joist(deck, part, v, part.lo() == inner.lo() ? u.lo() : part.lo(), through);
          }
        }
      }
    }
  }

  private void joist(Deck deck, Interval u, Interval v, long named, Geometry through) {
    Box box = new Box(u.lo(), u.hi(), v.lo(), v.hi(), deck.joistZ().lo(), deck.joistZ().hi());
    if (!inside(deck, box, through)) {
      String name = "joist-" + WallFramer.tag(v.lo()) + "-" + WallFramer.tag(named);
      add(deck, MemberKind.JOIST, name, box, deck.layoutAssumed());
    }
  }

  /** Doubled headers at both ends of a well, where the floor's edge leaves room for them. */
  private void headers(Deck deck, Polygon2 local) {
    for (Box well : deck.wells()) {
      for (Box b : Wells.headers(well, deck.joistZ(), deck.timber().value().thickness().nm())) {
        if (inside(local, new Interval(b.x0() - RIM, b.x1() + RIM), b.y())) {
          String name = "header-" + WallFramer.tag(b.x0()) + "-" + WallFramer.tag(b.y0());
          add(deck, MemberKind.HEADER, name, b, false);
        }
      }
    }
  }

  /** Rim joists along the outline's edges that run across the joists, inside the outline. */
  private void rimsAcross(Deck deck, Polygon2 local, Geometry through) {
    List<Point2> c = local.counterClockwise().corners();
    for (int i = 0; i < c.size(); i++) {
      Point2 a = c.get(i);
      Point2 b = c.get((i + 1) % c.size());
      if (Math.abs(a.x() - b.x()) < 1000 && Math.abs(a.y() - b.y()) > RIM) {
        boolean interiorIsWest = b.y() > a.y();
        long u0 = interiorIsWest ? a.x() - RIM : a.x();
        Box box =
            new Box(
                u0,
                u0 + RIM,
                Math.min(a.y(), b.y()),
                Math.max(a.y(), b.y()),
                deck.joistZ().lo(),
                deck.joistZ().hi());
        if (!inside(deck, box, through)) {
          add(
              deck,
              MemberKind.RIM,
              "rim-" + WallFramer.tag(u0) + "-" + WallFramer.tag(box.y0()),
              box,
              false);
        }
      }
    }
  }

  private static boolean inside(Polygon2 local, Interval u, Interval v) {
    return Sheets.insideAlong(local, v.lo(), v.hi()).stream()
        .anyMatch(i -> i.lo() <= u.lo() && i.hi() >= u.hi());
  }

  private void subfloor(Deck deck, Geometry through) {
    List<Polygon2> sheets = new ArrayList<>();
    for (Polygon2 part : Outlines.parts(Overlay.without(deck.outline().toJts(), through))) {
      sheets.addAll(Sheets.rectangles(part));
    }
    for (Polygon2 r : Wells.cut(sheets, Wells.inFloor(placed, deck.level()))) {
      Box box =
          new Box(
              r.xRange().lo(),
              r.xRange().hi(),
              r.yRange().lo(),
              r.yRange().hi(),
              deck.frame().origin().z() + deck.subfloorZ().lo(),
              deck.frame().origin().z());
      String id =
          deck.id() + "/subfloor-" + WallFramer.tag(box.x0()) + "-" + WallFramer.tag(box.y0());
      members.add(new Member(id, MemberKind.SUBFLOOR, Frame.WORLD, box, deck.id(), false));
    }
  }

  private void add(Deck deck, MemberKind kind, String name, Box box, boolean assumed) {
    members.add(new Member(deck.id() + "/" + name, kind, deck.frame(), box, deck.id(), assumed));
  }
}
