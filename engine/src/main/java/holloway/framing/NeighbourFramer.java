package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Standing;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is somebody else's, as solids that nothing enters: their rooms with the floor and ceiling
 * that bound them and the roof space over them, and a skin before each face of a shared wall, since
 * nothing may be fixed there either.
 */
final class NeighbourFramer {
  /** Cable clipped to a face lies 12 mm off it, so this depth keeps it away; from experience. */
  private static final long SKIN = 20_000_000;

  /** Ground below a lowest floor that nobody digs in; from experience. */
  private static final long BELOW = 300_000_000;

  /** A roof that sits this little over a ceiling is the one over that room. */
  private static final long PLATE_OVER_CEILING = 120_000_000;

  private static final long SLIVER = 5_000_000;

  private final Placed placed;
  private final List<Deck> decks;
  private final List<Attic> attics;
  private final List<Member> members;

  private NeighbourFramer(
      Placed placed, List<Deck> decks, List<Attic> attics, List<Member> members) {
    this.placed = placed;
    this.decks = decks;
    this.attics = attics;
    this.members = members;
  }

  static void frame(Placed placed, List<Deck> decks, List<Attic> attics, List<Member> members) {
    NeighbourFramer f = new NeighbourFramer(placed, decks, attics, members);
    placed.rooms().stream()
        .filter(r -> r.room().standing() == Standing.SOMEBODY_ELSES)
        .forEach(f::room);
    placed.walls().stream().filter(Wall::isParty).forEach(f::skins);
  }

  private void room(PlacedRoom r) {
    List<Polygon2> parts = new ArrayList<>(Sheets.rectangles(r.outline()));
    for (Polygon2 p : parts) {
      add(r, "not-ours", p, new Interval(r.floorZ(), r.ceilingZ()));
    }
    for (Wall w : placed.walls()) {
      if (w.isParty() && w.faces().stream().anyMatch(f -> f.room().equals(r.name()))) {
        footprint(w).ifPresent(parts::add);
      }
    }
    for (Polygon2 p : parts) {
      add(r, "not-ours-under", p, new Interval(bottom(r, p), r.floorZ()));
      add(r, "not-ours-over", p, new Interval(r.ceilingZ(), top(r, p)));
    }
  }

  /** What a wall stands on, unless it stands askew: then its room's outline alone has to do. */
  private static Optional<Polygon2> footprint(Wall w) {
    Point2 a = w.world(0, 0, 0).plan();
    Point2 b = w.world(w.length(), w.thickness(), 0).plan();
    boolean square = Math.abs(w.frame().u().x() * w.frame().u().y()) < 1e-9;
    return square
        ? Optional.of(
            Polygon2.rectangle(
                Math.min(a.x(), b.x()),
                Math.min(a.y(), b.y()),
                Math.max(a.x(), b.x()),
                Math.max(a.y(), b.y())))
        : Optional.empty();
  }

  private void add(PlacedRoom r, String what, Polygon2 part, Interval z) {
    if (z.length() > 0) {
      Interval x = part.xRange();
      Interval y = part.yRange();
      Box box = new Box(x.lo(), x.hi(), y.lo(), y.hi(), z.lo(), z.hi());
      String id =
          r.name() + "/" + what + "-" + WallFramer.tag(box.x0()) + "-" + WallFramer.tag(box.y0());
      members.add(new Member(id, MemberKind.NOT_OURS, Frame.WORLD, box, r.name(), false));
    }
  }

  /**
   * Down through the joists they stand on (the ceiling board of a room under them is that room's)
   * and the crawlspace under those; a slab down into the ground.
   */
  private long bottom(PlacedRoom r, Polygon2 part) {
    return decks.stream()
        .filter(d -> d.level().equals(r.room().level()) && overlap(d.outline(), part))
        .mapToLong(d -> d.frame().origin().z() + d.joistZ().lo() - under(d))
        .min()
        .orElse(r.floorZ() - BELOW);
  }

  private static long under(Deck d) {
    return d.spec().crawlspace().map(c -> c.clearance().value().nm()).orElse(0L);
  }

  /** Up through the floor over them, or to the roof. */
  private long top(PlacedRoom r, Polygon2 part) {
    long z = r.ceilingZ();
    PlacedLevel own = placed.getLevel(r.room().level());
    for (Deck d : decks) {
      if (placed.getLevel(d.level()).isNextOver(own) && overlap(d.outline(), part)) {
        z = Math.max(z, d.frame().origin().z() + d.joistZ().hi());
      }
    }
    for (Attic a : attics) {
      boolean over = a.plateZ() >= r.ceilingZ() && a.plateZ() < r.ceilingZ() + PLATE_OVER_CEILING;
      if (over && overlap(a.outline(), part)) {
        z = Math.max(z, a.roofUnderside(mid(a)));
      }
    }
    return z;
  }

  private static Point2 mid(Attic a) {
    return new Point2(a.outline().xRange().mid(), a.outline().yRange().mid());
  }

  static boolean overlap(Polygon2 a, Polygon2 b) {
    return overlap(a.xRange(), b.xRange()) && overlap(a.yRange(), b.yRange());
  }

  /** Not by what rounding makes of two that only touch. */
  private static boolean overlap(Interval a, Interval b) {
    return a.cut(b).filter(i -> i.length() >= SLIVER).isPresent();
  }

  /** Between split levels nobody knows what is in the wall, but its face in a room is one's own. */
  private boolean isOurs(Wall w, int side) {
    return w.traits().isSplit()
        && w.faces().stream()
            .filter(f -> f.side() == side)
            .allMatch(f -> placed.getRoom(f.room()).room().standing().isOpen());
  }

  private void skins(Wall w) {
    for (int side = 0; side < 2; side++) {
      int of = side;
      if (w.faces().stream().anyMatch(f -> f.side() == of) && isOurs(w, side)) {
        continue;
      }
      Interval t =
          side == 0 ? new Interval(-SKIN, 0) : new Interval(w.thickness(), w.thickness() + SKIN);
      Box box = new Box(0, w.length(), t.lo(), t.hi(), 0, w.height());
      String id = w.id() + "/shared-face-" + side;
      members.add(new Member(id, MemberKind.NOT_OURS, w.frame(), box, w.id(), false));
    }
  }
}
