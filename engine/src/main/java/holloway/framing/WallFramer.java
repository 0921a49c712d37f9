package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.house.Fact;
import holloway.house.LayoutCorner;
import holloway.survey.LaidOut;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/**
 * The members of one framed wall, in its own frame. Studs stand at the layout; openings get king
 * and jack studs, a header, sill and cripples; a butting wall gets two backing studs; ends are
 * posts. Practice of trade-facts D8 to D13.
 */
final class WallFramer {
  static final long PLATE = 38_000_000;
  private static final long BACKING = 25_000_000;

  private final Wall wall;
  private final long stud;
  private final long bottom;
  private final boolean bottomPlate;
  private final long studTop;
  private final boolean assumed;
  private final List<Interval> uprights = new ArrayList<>();
  private final List<Member> out = new ArrayList<>();
  private final Optional<Wall> below;
  private final boolean down;

  /**
   * @param layout where its openings and the walls that end at it are taken from in turn: a stud is
   *     left out where one stands already
   */
  WallFramer(Wall wall, BalloonLines lines, LayoutCorner layout) {
    this.wall = wall;
    this.down = LaidOut.fromHigh(layout, wall.frame());
    this.stud = wall.studs().value().thickness().nm();
    this.below = lines.findBelow(wall);
    boolean through = lines.findAbove(wall).isPresent();
    long lowest = below.map(b -> wall.frame().toLocal(b.world(0, 0, b.height())).z()).orElse(0L);
    this.bottom = Math.min(0, lowest);
    this.bottomPlate = below.isEmpty();
    long plies = through ? 0 : wall.singleTopPlate() ? 1 : 2;
    this.studTop = wall.height() - plies * PLATE;
    // of a double wall nobody says behind which face the studs were found
    this.assumed = wall.studOrigin().isAssumed() || wall.rows().size() > 1;
    frame(plies);
  }

  List<Member> members() {
    return out;
  }

  private void frame(long plies) {
    for (int k = 0; k < plies; k++) {
      topPlates("top-plate-" + (k + 1), studTop + k * PLATE);
    }
    bottomPlates();
    inTurn(wall.openings(), Wall.WallOpening::s).forEach(this::openingFrame);
    upright(MemberKind.POST, at(down ? wall.length() - stud : 0), false);
    upright(MemberKind.POST, at(down ? 0 : wall.length() - stud), false);
    for (Wall.Junction j : inTurn(wall.junctions(), Wall.Junction::s)) {
      long low = j.s().lo() - BACKING;
      long high = j.s().hi() + BACKING - stud;
      upright(MemberKind.POST, at(down ? high : low), false);
      upright(MemberKind.POST, at(down ? low : high), false);
    }
    for (long centre : layout()) {
      upright(MemberKind.STUD, at(centre - stud / 2), assumed);
    }
    wall.blocksAt().forEach(this::blocks);
  }

  /** From end to end, but for the gaps where the wall stops at a dormer's cheeks. */
  private void topPlates(String name, long z) {
    List<Interval> gaps =
        wall.openings().stream().filter(wall::isGap).map(Wall.WallOpening::s).toList();
    for (Interval piece : new Interval(0, wall.length()).without(gaps, 5_000_000)) {
      String tail = gaps.isEmpty() ? "" : "-" + tag(piece.lo());
      add(MemberKind.TOP_PLATE, name + tail, piece, new Interval(z, z + PLATE), false);
    }
  }

  /** From the end that layouts are counted from. */
  private <T> List<T> inTurn(List<T> all, Function<T, Interval> where) {
    ToLongFunction<T> near = t -> down ? -where.apply(t).hi() : where.apply(t).lo();
    ToLongFunction<T> far = t -> down ? -where.apply(t).lo() : where.apply(t).hi();
    return all.stream().sorted(Comparator.comparingLong(near).thenComparingLong(far)).toList();
  }

  private Interval at(long lo) {
    return new Interval(lo, lo + stud);
  }

  /** Bottom plates run between doors: an opening that reaches the floor cuts them. */
  private void bottomPlates() {
    if (!bottomPlate) {
      return;
    }
    List<Interval> doors =
        wall.openings().stream().filter(o -> o.z().lo() <= PLATE).map(Wall.WallOpening::s).toList();
    for (Interval piece : new Interval(0, wall.length()).without(doors, 5_000_000)) {
      add(
          MemberKind.BOTTOM_PLATE,
          "bottom-plate-" + tag(piece.lo()),
          piece,
          new Interval(0, PLATE),
          false);
    }
  }

  /** Stud centres of the layout, ascending; a balloon wall follows the studs of the wall below. */
  private List<Long> layout() {
    long every = wall.every().value().nm();
    long origin = wall.studOrigin().value();
    if (below.isPresent()) {
      Wall b = below.get();
      every = b.every().value().nm();
      origin = wall.frame().toLocal(b.world(b.studOrigin().value(), 0, 0)).x();
    }
    List<Long> centres = new ArrayList<>();
    for (long s = Math.floorMod(origin, every); s < wall.length(); s += every) {
      centres.add(s);
    }
    return centres;
  }

  private void openingFrame(Wall.WallOpening o) {
    String tag = tag(o.s().lo());
    long headTop = Math.min(studTop, o.z().hi() + headerDepth(o));
    king(new Interval(o.s().lo() - 2 * stud, o.s().lo() - stud));
    king(new Interval(o.s().hi() + stud, o.s().hi() + 2 * stud));
    jack(o, new Interval(o.s().lo() - stud, o.s().lo()));
    jack(o, new Interval(o.s().hi(), o.s().hi() + stud));
    Interval overJacks = new Interval(o.s().lo() - stud, o.s().hi() + stud);
    if (headTop > o.z().hi()) {
      add(MemberKind.HEADER, "header-" + tag, overJacks, new Interval(o.z().hi(), headTop), false);
    }
    if (studTop - headTop >= 5_000_000) {
      cripples(o, new Interval(headTop, studTop), "above");
    }
    if (o.z().lo() > 2 * PLATE) {
      add(
          MemberKind.SILL,
          "sill-" + tag,
          o.s(),
          new Interval(o.z().lo() - PLATE, o.z().lo()),
          false);
      cripples(o, new Interval(studBottom(), o.z().lo() - PLATE), "below");
    }
    uprights.add(new Interval(o.s().lo() - stud, o.s().hi() + stud));
  }

  /**
   * Header depth by span where the wall carries load (practice, D11): up to 4 ft 2x6, 6 ft 2x8, 8
   * ft 2x10, else 2x12; a flat 2x else.
   */
  private long headerDepth(Wall.WallOpening o) {
    if (!wall.bearing().value() && !wall.isOuter()) {
      return PLATE;
    }
    long span = o.s().length() / 1_000_000;
    return (span <= 1220 ? 140 : span <= 1830 ? 184 : span <= 2440 ? 235 : 286) * 1_000_000L;
  }

  private void king(Interval s) {
    if (s.lo() >= 0 && s.hi() <= wall.length()) {
      upright(MemberKind.KING_STUD, s, false);
    }
  }

  private void jack(Wall.WallOpening o, Interval s) {
    if (s.lo() >= 0 && s.hi() <= wall.length()) {
      add(
          MemberKind.JACK_STUD,
          "jack-" + tag(s.lo()),
          s,
          new Interval(studBottom(), Math.min(studTop, o.z().hi())),
          false);
    }
  }

  private void cripples(Wall.WallOpening o, Interval z, String where) {
    for (long centre : layout()) {
      Interval s = at(centre - stud / 2);
      if (s.lo() >= o.s().lo() && s.hi() <= o.s().hi()) {
        add(MemberKind.CRIPPLE, "cripple-" + where + "-" + tag(s.lo()), s, z, assumed);
      }
    }
  }

  private long studBottom() {
    return bottomPlate ? PLATE : bottom;
  }

  /** A full-height upright, left out where an earlier one (or an opening) already stands. */
  private void upright(MemberKind kind, Interval s, boolean unsure) {
    if (s.lo() < 0 || s.hi() > wall.length() || uprights.stream().anyMatch(s::overlaps)) {
      return;
    }
    uprights.add(s);
    String name = kind == MemberKind.STUD ? "stud" : kind == MemberKind.KING_STUD ? "king" : "post";
    add(kind, name + "-" + tag(s.lo()), s, new Interval(studBottom(), studTop), unsure);
  }

  /** A block across every bay at a stated centre height. */
  private void blocks(Fact<Long> height) {
    List<Interval> bays = new Interval(0, wall.length()).without(uprights, 5_000_000);
    for (Interval bay : bays) {
      Interval z = new Interval(height.value() - PLATE / 2, height.value() + PLATE / 2);
      add(
          MemberKind.FIRE_BLOCK,
          "block-" + tag(bay.lo()) + "-" + tag(z.lo()),
          bay,
          z,
          height.isAssumed());
    }
  }

  private void add(MemberKind kind, String name, Interval s, Interval z, boolean unsure) {
    if (z.length() <= 0) {
      return;
    }
    for (int row = 0; row < wall.rows().size(); row++) {
      Interval t = wall.rows().get(row);
      Box box = new Box(s.lo(), s.hi(), t.lo(), t.hi(), z.lo(), z.hi());
      String id = wall.id() + "/" + name + (row == 0 ? "" : "-far");
      out.add(new Member(id, kind, wall.frame(), box, wall.id(), unsure));
    }
  }

  /** A distance along the wall to 10 mm, the stable part of an id. */
  static String tag(long s) {
    return String.valueOf(Math.round(s / 10_000_000.0) * 10);
  }
}
