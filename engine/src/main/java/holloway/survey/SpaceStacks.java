package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Polygon2;
import holloway.house.FaceRef;
import holloway.house.House;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.house.Where;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Puts what nothing accounts for on each level together over the levels it passes. */
final class SpaceStacks {
  /** A wall between a face and the space is no thicker; from experience. */
  private static final long WALL = 350_000_000L;

  /** A shorter stretch of a face is a corner. */
  private static final long LEAST_TOUCH = 100_000_000L;

  private final Placed placed;
  private final TreeMap<Integer, List<Polygon>> free = new TreeMap<>();

  SpaceStacks(Placed placed) {
    this.placed = placed;
    for (Unaccounted u : placed.unaccounted()) {
      int order = placed.getLevel(u.level()).order();
      free.computeIfAbsent(order, k -> new ArrayList<>()).add(u.outline().toJts());
    }
  }

  /** From the lowest level up; on a level in the order of {@link Placed#unaccounted}. */
  List<UnaccountedSpace> list() {
    List<UnaccountedSpace> out = new ArrayList<>();
    for (int order = 0; order < placed.levels().size(); order++) {
      for (Polygon p : List.copyOf(free.getOrDefault(order, List.of()))) {
        out.add(stack(order, p));
      }
    }
    return out;
  }

  private UnaccountedSpace stack(int order, Polygon foot) {
    List<String> levels = new ArrayList<>(List.of(placed.levels().get(order).name()));
    Polygon common = foot;
    int part = placed.levels().get(order).part();
    for (int o = order + 1; o < placed.levels().size(); o++) {
      if (placed.levels().get(o).part() != part) {
        break;
      }
      Polygon over = takeOver(o, common);
      if (over == null) {
        break;
      }
      common = over;
      levels.add(placed.levels().get(o).name());
    }
    Polygon2 outline = Outline.clean(Polygon2.ofJts(common));
    List<UnaccountedSpace.Touch> touches = new ArrayList<>();
    levels.forEach(l -> touches.addAll(touches(l, outline)));
    boolean roof = underRoof(levels.get(levels.size() - 1), touches);
    return new SpaceGuess(placed, levels, roof, Polygon2.ofJts(foot), outline, touches).space();
  }

  /** The part of a space on the next level that goes on with this one; it is used up. */
  private Polygon takeOver(int order, Polygon below) {
    List<Polygon> there = free.getOrDefault(order, List.of());
    for (Polygon p : there) {
      Geometry both = Overlay.shared(p, below);
      boolean same = both.getArea() >= 0.5 * Math.min(p.getArea(), below.getArea());
      if (same && both instanceof Polygon shared) {
        there.remove(p);
        return shared;
      }
    }
    return null;
  }

  private List<UnaccountedSpace.Touch> touches(String level, Polygon2 outline) {
    List<UnaccountedSpace.Touch> out = new ArrayList<>();
    for (PlacedRoom r : placed.rooms()) {
      if (!r.room().level().equals(level)) {
        continue;
      }
      for (Side side : Side.values()) {
        List<Placed.Segment> faces = Faces.of(r.outline(), side);
        for (int i = 0; i < faces.size(); i++) {
          touch(level, new FaceRef(r.name(), side, i + 1, Where.NOWHERE), faces.get(i), outline)
              .ifPresent(out::add);
        }
      }
    }
    out.sort(
        Comparator.comparingLong((UnaccountedSpace.Touch t) -> -t.along().length())
            .thenComparing(t -> t.face().toString()));
    return out;
  }

  private static Optional<UnaccountedSpace.Touch> touch(
      String level, FaceRef face, Placed.Segment f, Polygon2 outline) {
    boolean ew = face.side().runsEastWest();
    boolean far = face.side() == Side.NORTH || face.side() == Side.EAST;
    Interval across = ew ? outline.yRange() : outline.xRange();
    Interval along = ew ? outline.xRange() : outline.yRange();
    long line = ew ? f.start().y() : f.start().x();
    long gap = far ? across.lo() - line : line - across.hi();
    long lo = ew ? f.start().x() : f.start().y();
    long hi = ew ? f.end().x() : f.end().y();
    boolean straight = ew ? f.start().y() == f.end().y() : f.start().x() == f.end().x();
    if (!straight || gap < 0 || gap > WALL) {
      return Optional.empty();
    }
    return new Interval(lo, hi)
        .cut(along)
        .filter(c -> c.length() >= LEAST_TOUCH)
        .map(c -> new UnaccountedSpace.Touch(level, face, new Interval(c.lo() - lo, c.hi() - lo)));
  }

  private boolean underRoof(String top, List<UnaccountedSpace.Touch> touches) {
    House h = placed.house();
    PlacedLevel last = placed.getLevel(top);
    if (placed.levels().stream().anyMatch(l -> l.isOver(last))) {
      return false;
    }
    return touches.stream()
        .filter(t -> t.level().equals(top))
        .anyMatch(t -> h.roofs().stream().anyMatch(r -> covers(r, top, t.face().room())));
  }

  private static boolean covers(Roof r, String level, String room) {
    return r.level().filter(level::equals).isPresent() || r.rooms().contains(room);
  }
}
