package holloway.hollow;

import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Fill;
import holloway.house.Thing;
import holloway.survey.OnWall;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The bays of framed walls: what is left of a wall's plane between its members and openings, as
 * rectangles of distance along and height. Bays of balloon walls that stand on each other are one
 * bay, through the floor.
 */
final class StudBays {
  private static final long NARROWEST = 30_000_000;
  private static final long LOWEST = 60_000_000;
  private static final long SLIVER = 5_000_000;

  /** Ends the id of a bay in the second row of a double wall, and of what is bored there. */
  private static final String FAR = "-far";

  /** A rectangle of a wall's plane. */
  private record Cell(Interval s, Interval z) {}

  private final Framed framed;
  private final UnderSlopes slopes;
  private final Map<String, List<Member>> byOwner = new HashMap<>();

  StudBays(Framed framed) {
    this.framed = framed;
    slopes = new UnderSlopes(framed);
    framed
        .members()
        .forEach(m -> byOwner.computeIfAbsent(m.owner(), k -> new ArrayList<>()).add(m));
  }

  List<Hollow> bays() {
    Map<String, List<Hollow>> perWall = new java.util.TreeMap<>();
    for (Wall w : framed.placed().walls()) {
      if (w.isFramed() && !w.isParty()) {
        perWall.put(w.id(), baysOf(w));
      }
    }
    BalloonJoin.join(framed, perWall);
    return perWall.values().stream().flatMap(List::stream).toList();
  }

  private List<Hollow> baysOf(Wall w) {
    List<Hollow> out = new ArrayList<>();
    w.rows().forEach(t -> out.addAll(baysOf(w, t)));
    return out;
  }

  private List<Hollow> baysOf(Wall w, Interval t) {
    List<Cell> solid = new ArrayList<>();
    long low = 0;
    for (Member m : byOwner.getOrDefault(w.id(), List.of())) {
      boolean inCore = m.box().y0() < t.hi() && m.box().y1() > t.lo();
      if (inCore) {
        solid.add(new Cell(m.box().x(), m.box().z()));
        low = Math.min(low, m.box().z0());
      }
    }
    w.openings().forEach(o -> solid.add(new Cell(o.s(), o.z())));
    List<Hollow> out = new ArrayList<>();
    for (Cell whole : merge(columns(w, solid, low))) {
      long top = slopes.top(w, whole.s());
      Cell c = new Cell(whole.s(), new Interval(whole.z().lo(), whole.z().clamp(top)));
      if (c.s().length() >= NARROWEST && c.z().length() >= LOWEST) {
        out.add(bay(w, t, c, low));
      }
    }
    return out;
  }

  private static List<Cell> columns(Wall w, List<Cell> solid, long low) {
    TreeSet<Long> cuts = new TreeSet<>(List.of(0L, w.length()));
    solid.forEach(c -> cuts.addAll(List.of(c.s().lo(), c.s().hi())));
    List<Cell> out = new ArrayList<>();
    Long from = null;
    for (long s : cuts) {
      if (from != null && s - from > 1000 && from >= 0 && s <= w.length()) {
        Interval slab = new Interval(from, s);
        List<Interval> blocked =
            solid.stream().filter(c -> c.s().overlaps(slab)).map(Cell::z).toList();
        for (Interval z : new Interval(low, w.height()).without(blocked, SLIVER)) {
          out.add(new Cell(slab, z));
        }
      }
      from = s;
    }
    return out;
  }

  /** Joins neighbours of the same height range that touch. */
  private static List<Cell> merge(List<Cell> cells) {
    List<Cell> sorted = new ArrayList<>(cells);
    sorted.sort(
        Comparator.comparingLong((Cell c) -> c.z().lo())
            .thenComparingLong(c -> c.z().hi())
            .thenComparingLong(c -> c.s().lo()));
    List<Cell> out = new ArrayList<>();
    for (Cell c : sorted) {
      Cell last = out.isEmpty() ? null : out.get(out.size() - 1);
      if (last != null && last.z().equals(c.z()) && last.s().hi() == c.s().lo()) {
        out.set(out.size() - 1, new Cell(new Interval(last.s().lo(), c.s().hi()), c.z()));
      } else {
        out.add(c);
      }
    }
    return out;
  }

  private Hollow bay(Wall w, Interval t, Cell c, long low) {
    boolean lowest = c.z().lo() <= Math.max(low, 0) + 40_000_000;
    String id = w.id() + "/bay-" + Tags.of(c.s().lo()) + (lowest ? "" : "-z" + Tags.of(c.z().lo()));
    id += t.lo() == w.core().lo() ? "" : FAR;
    Box box = new Box(c.s().lo(), c.s().hi(), t.lo(), t.hi(), c.z().lo(), c.z().hi());
    HollowKind kind = isReturn(w, c) ? HollowKind.RETURN_AIR : HollowKind.STUD_BAY;
    Fill fill = w.fill().value();
    return new Hollow(id, kind, w.frame(), box, Optional.empty(), fill, w.id(), Optional.empty());
  }

  private boolean isReturn(Wall w, Cell c) {
    for (Thing t : framed.placed().house().things()) {
      if (t.kind() == Thing.Kind.RETURN_GRILLE) {
        Optional<OnWall> at =
            framed.placed().findSpot(t.at().face(), t.at().along(), t.at().height().value().nm());
        if (at.isPresent()
            && at.get().wall().id().equals(w.id())
            && c.s().contains(at.get().s())
            && c.z().contains(at.get().z())) {
          return true;
        }
      }
    }
    return false;
  }

  /** Marks the second row of a double wall. */
  static String row(Hollow bay) {
    return bay.id().endsWith(FAR) ? FAR : "";
  }

  /** Does the bay lie right behind the lining of that side, with no service layer between? */
  static boolean isBehind(Hollow bay, Wall w, int side) {
    if (w.findBattens(side).isPresent()) {
      return false;
    }
    return side == 0 ? bay.clear().y0() == w.core().lo() : bay.clear().y1() == w.core().hi();
  }

  /** The middle of a bay at a height of its frame. */
  static Point3 middle(Hollow bay, long z) {
    Box b = bay.clear();
    return bay.frame().toWorld((b.x0() + b.x1()) / 2, (b.y0() + b.y1()) / 2, z);
  }
}
