package holloway.schedule;

import holloway.framing.Attic;
import holloway.framing.Deck;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Frame;
import holloway.geometry.Frame.Axis;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.hollow.Solids;
import holloway.house.Direction;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a tape can start from. A line is looked along from the hole, so whatever it meets first is
 * both visible and unobstructed; the edges of the piece that is bored count too, where nothing of
 * its kind goes on beyond them.
 */
final class Landmarks {
  /** Longest tape line, nanometres. */
  static final long LONGEST = 3_000_000_000L;

  /** Nearer things are no help: the drill stands on them. */
  private static final long NEAREST = 8_000_000;

  /** Into a rim joist, as far as its other face. */
  private static final long BEHIND = 38_000_000;

  /** Deeper under a wall's foot no floor is. */
  private static final long FLOOR = 600_000_000;

  /**
   * A lining's edges lie behind plaster, casings and skirtings; masonry goes on behind floors and
   * other walls, and at an opening it ends behind the frame.
   */
  private static final Set<MemberKind> HIDDEN_EDGES =
      EnumSet.of(MemberKind.LINING, MemberKind.MASONRY, MemberKind.CLADDING);

  private final Framed framed;
  private final Solids solids;

  Landmarks(Framed framed) {
    this.framed = framed;
    this.solids = new Solids(framed.members().stream().filter(Landmarks::isThere).toList());
  }

  /** The skin before a shared wall only keeps cable off it: a tape goes on to the wall itself. */
  static boolean isThere(Member m) {
    return m.kind() != MemberKind.NOT_OURS || m.frame().equals(Frame.WORLD);
  }

  /** The nearest landmark on either side of the eye along a direction. */
  Optional<Dimension> nearest(Point3 eye, Axis along, Optional<Member> bored) {
    List<Dimension> found = new ArrayList<>();
    for (Axis a : List.of(along, Lines.turned(along))) {
      seen(eye, a).ifPresent(found::add);
      bored.flatMap(m -> edge(eye, a, m)).ifPresent(found::add);
    }
    Dimension best = null;
    for (Dimension d : found) {
      if (d.nm() >= NEAREST && d.nm() <= LONGEST && (best == null || d.nm() < best.nm())) {
        best = d;
      }
    }
    return Optional.ofNullable(best);
  }

  /** What a straight look meets first. */
  Optional<Dimension> seen(Point3 eye, Axis a) {
    List<Solids.Hit> hits = solids.hits(eye, Lines.walk(eye, a, LONGEST), 1);
    if (hits.isEmpty() || hits.get(0).from() <= 0 || showsNothing(hits.get(0).member())) {
      return Optional.empty();
    }
    long nm = hits.get(0).from();
    Point3 at = Lines.walk(eye, a, nm);
    if (hits.get(0).member().kind() == MemberKind.RIM && isBuiltIn(Lines.walk(at, a, BEHIND))) {
      return Optional.empty();
    }
    return Optional.of(new Dimension(words(hits.get(0).member(), a), at, Lines.turned(a), nm));
  }

  /**
   * What ends a look and is no place to start a tape from: what is a neighbour's cannot be named,
   * and a flight is drawn as one slope, its panels in steps below it, where it has treads.
   */
  private static boolean showsNothing(Member m) {
    return m.kind() == MemberKind.NOT_OURS
        || m.kind() == MemberKind.STAIR
        || m.owner().startsWith("stairs/");
  }

  /**
   * Whether masonry stands on the floor's edge here: what is drawn as its rim joist may be a ledger
   * on the wall, or joists in pockets with no timber across their ends.
   */
  private boolean isBuiltIn(Point3 rim) {
    return framed.placed().walls().stream()
        .filter(w -> !w.isFramed() && !w.isOpen())
        .anyMatch(
            w -> {
              Point3 p = w.frame().toLocal(rim);
              return new Interval(0, w.length()).contains(p.x())
                  && new Interval(-BEHIND, w.thickness() + BEHIND).contains(p.y())
                  && new Interval(-FLOOR, 0).contains(p.z());
            });
  }

  private static String edgeWord(Axis a) {
    return Math.abs(a.z()) > 0.9 ? a.z() > 0 ? "top" : "bottom" : Lines.word(a);
  }

  /**
   * A spot of the same face: the jamb of a door or window, or the corner where the face ends.
   *
   * @param at level with the eye
   */
  Optional<Dimension> onFace(Point3 eye, Point3 at, String words) {
    Axis away = Lines.between(eye, at);
    long nm = eye.distanceTo(at);
    boolean seen = nm >= NEAREST && nm <= LONGEST && solids.free(eye, at, 1);
    return seen ? Optional.of(new Dimension(words, at, Lines.turned(away), nm)) : Optional.empty();
  }

  /**
   * The edge of the bored piece, walked on over neighbours of its kind that continue it: where a
   * wall goes on before the next room or storey there is nothing to see.
   */
  private Optional<Dimension> edge(Point3 eye, Axis a, Member bored) {
    if (HIDDEN_EDGES.contains(bored.kind())) {
      return Optional.empty();
    }
    Member m = bored;
    long nm = 0;
    for (int i = 0; i < 20; i++) {
      nm = Math.max(nm, reach(eye, a, m));
      Point3 beyond = inPlane(Lines.walk(eye, a, nm + 5_000_000), bored);
      Optional<Member> next = next(beyond, bored);
      if (next.isEmpty()) {
        break;
      }
      m = next.get();
    }
    if (nm <= 0 || nm > LONGEST || !solids.free(eye, Lines.walk(eye, a, nm), 1)) {
      return Optional.empty();
    }
    String words = "the " + edgeWord(a) + " edge of the " + bored.kind().word();
    return Optional.of(new Dimension(words, Lines.walk(eye, a, nm), Lines.turned(a), nm));
  }

  /** How far the box goes on from the eye in a direction. */
  private static long reach(Point3 eye, Axis a, Member m) {
    long far = 0;
    for (int i = 0; i < 8; i++) {
      Point3 c =
          m.frame()
              .toWorld(
                  (i & 1) == 0 ? m.box().x0() : m.box().x1(),
                  (i & 2) == 0 ? m.box().y0() : m.box().y1(),
                  (i & 4) == 0 ? m.box().z0() : m.box().z1());
      double d = (c.x() - eye.x()) * a.x() + (c.y() - eye.y()) * a.y() + (c.z() - eye.z()) * a.z();
      far = Math.max(far, Math.round(d));
    }
    return far;
  }

  /** The eye hovers over the piece; the point below it inside the piece. */
  private static Point3 inPlane(Point3 p, Member m) {
    Point3 q = m.frame().toLocal(p);
    int thin = thinnest(m);
    return m.frame()
        .toWorld(
            thin == 0 ? m.box().x().mid() : q.x(),
            thin == 1 ? m.box().y().mid() : q.y(),
            thin == 2 ? m.box().z().mid() : q.z());
  }

  private static int thinnest(Member m) {
    long x = m.box().x().length();
    long y = m.box().y().length();
    long z = m.box().z().length();
    return x <= y && x <= z ? 0 : y <= z ? 1 : 2;
  }

  private Optional<Member> next(Point3 p, Member bored) {
    return framed.members().stream()
        .filter(m -> m.kind() == bored.kind() && m != bored)
        .filter(m -> m.box().contains(m.frame().toLocal(p), 0))
        .findFirst();
  }

  private String words(Member m, Axis a) {
    if (m.id().startsWith("soffit/")) {
      String board = a.z() < -0.9 ? "underside" : Lines.word(a) + " board";
      return "the " + board + " of the " + m.id().split("/")[1];
    }
    return switch (m.kind()) {
      case LINING, MASONRY ->
          Math.abs(a.z()) > 0.9
              ? a.z() > 0 ? "the ceiling" : "the floor"
              : "the inside corner at the " + Lines.word(a) + " wall";
      case SUBFLOOR, SLAB -> a.z() < 0 ? "the floor" : "the underside of the floor";
      case CHORD, CEILING_JOIST -> counted(m, a, chordNumber(m));
      case JOIST -> counted(m, a, joistNumber(m));
      case OBSTACLE -> "the " + m.id().replaceAll(".*-", "") + " to the " + Lines.word(a);
      case RIM -> "the " + Lines.word(a) + " rim joist";
      default -> "the face of the " + m.kind().word() + " to the " + Lines.word(a);
    };
  }

  private static String counted(Member m, Axis a, String number) {
    String thing = m.kind() == MemberKind.CHORD ? "truss chord" : m.kind().word();
    return "the face of the " + thing + " to the " + Lines.word(a) + number;
  }

  private String joistNumber(Member m) {
    for (Deck d : framed.decks()) {
      if (d.id().equals(m.owner())) {
        for (int i = 0; i < d.joists().size(); i++) {
          if (d.joists().get(i).overlaps(m.box().y())) {
            return number(i, Lines.word(Lines.turned(d.frame().v())));
          }
        }
      }
    }
    return "";
  }

  private String chordNumber(Member m) {
    for (Attic at : framed.attics()) {
      Point3 p = m.frame().toWorld(m.box().x0(), m.box().y0(), m.box().z0());
      Point3 q = m.frame().toWorld(m.box().x1(), m.box().y1(), m.box().z1());
      boolean ns = at.chordRun() == Direction.NORTH_SOUTH;
      long mid = ns ? (p.x() + q.x()) / 2 : (p.y() + q.y()) / 2;
      for (int i = 0; at.id().equals(m.owner()) && i < at.chords().size(); i++) {
        Interval c = at.chords().get(i);
        if (c.contains(mid)) {
          return number(i, ns ? "west" : "south");
        }
      }
    }
    return "";
  }

  private static String number(int index, String side) {
    return " (number " + (index + 1) + " counted from the " + side + ")";
  }
}
