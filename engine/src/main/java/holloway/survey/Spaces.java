package holloway.survey;

import holloway.geometry.Overlay;
import holloway.geometry.Polygon2;
import holloway.house.Chase;
import holloway.house.House;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Space within a level's footprint that no room, wall or stated chase accounts for, and what it is
 * likely to be. Geometry in JTS millimetres; the words are from experience.
 */
final class Spaces {
  private static final double HALF_LEAST_WIDTH = 50;
  private static final double LEAST_AREA = 0.05e6;

  private final House house;
  private final List<PlacedRoom> rooms;
  private final TreeMap<String, List<Polygon>> byLevel = new TreeMap<>();

  Spaces(House house, List<PlacedRoom> rooms) {
    this.house = house;
    this.rooms = rooms;
  }

  /** Looks at one level; call for every level, bottom up, before {@link #list}. */
  void look(PlacedLevel level, List<Polygon> walls) {
    List<Geometry> known = new ArrayList<>(walls);
    rooms.stream()
        .filter(r -> r.room().level().equals(level.name()))
        .forEach(r -> known.add(r.outline().toJts()));
    house.chases().stream().filter(c -> !c.inside()).forEach(c -> known.addAll(chase(c)));
    List<Polygon> found = new ArrayList<>();
    for (Polygon2 part : level.footprint()) {
      Geometry left = Overlay.without(part.toJts(), UnaryUnionOp.union(known));
      Geometry wide = Outdoors.square(Outdoors.square(left, -HALF_LEAST_WIDTH), HALF_LEAST_WIDTH);
      for (int i = 0; i < wide.getNumGeometries(); i++) {
        if (wide.getGeometryN(i) instanceof Polygon p && p.getArea() >= LEAST_AREA) {
          found.add(p);
        }
      }
    }
    byLevel.put(level.name(), found);
  }

  /**
   * In front of the face by the wall between and the shaft itself; generous by a wall's thickness.
   */
  private List<Geometry> chase(Chase c) {
    return rooms.stream()
        .filter(r -> r.name().equals(c.beside().room()))
        .flatMap(
            r ->
                Faces.of(r.outline(), c.beside().side()).stream()
                    .skip(c.beside().ordinal() - 1L)
                    .limit(1))
        .map(f -> chase(c, f))
        .toList();
  }

  private static Geometry chase(Chase c, Placed.Segment f) {
    Side side = c.beside().side();
    boolean ew = side.runsEastWest();
    double lo = (ew ? f.start().x() : f.start().y()) / 1e6;
    double hi = (ew ? f.end().x() : f.end().y()) / 1e6;
    double size = c.alongFace().value().toMm();
    double from = lo;
    if (c.along().isPresent()) {
      double d = c.along().get().distance().value().toMm();
      boolean start = c.along().get().from() == Side.WEST || c.along().get().from() == Side.SOUTH;
      from = start ? lo + d : hi - d - size;
    }
    double edge = (ew ? f.start().y() : f.start().x()) / 1e6;
    double deep = c.awayFromFace().value().toMm() + 2 * Makeup.WALL_2X4 / 1e6;
    boolean out = side == Side.NORTH || side == Side.EAST;
    double a = out ? edge : edge - deep;
    double b = out ? edge + deep : edge;
    double round = HALF_LEAST_WIDTH;
    return ew
        ? box(from - round, a, from + size + round, b)
        : box(a, from - round, b, from + size + round);
  }

  private static Geometry box(double x0, double y0, double x1, double y1) {
    return Polygon2.rectangle(
            Math.round(x0 * 1e6), Math.round(y0 * 1e6), Math.round(x1 * 1e6), Math.round(y1 * 1e6))
        .toJts();
  }

  List<Unaccounted> list(List<PlacedLevel> levels) {
    List<Unaccounted> out = new ArrayList<>();
    for (PlacedLevel l : levels) {
      for (Polygon p : byLevel.getOrDefault(l.name(), List.of())) {
        out.add(
            new Unaccounted(
                l.name(), Outline.clean(Polygon2.ofJts(p)), p.getArea() / 1e6, likely(l, p)));
      }
    }
    out.sort(
        Comparator.comparing(Unaccounted::level).thenComparing(u -> u.outline().corners().get(0)));
    return out;
  }

  private String likely(PlacedLevel level, Polygon p) {
    double area = p.getArea() / 1e6;
    boolean walkable = !Outdoors.square(p, -350).isEmpty();
    if (area >= 1 && walkable) {
      return "room not surveyed";
    }
    if (goesThrough(level, p)) {
      return "chase";
    }
    if (Outdoors.square(p, -125).isEmpty()) {
      return "boxed-in pipe";
    }
    if (area >= 0.3 && area <= 1.5 && !Outdoors.square(p, -200).isEmpty()) {
      return "chimney";
    }
    return area <= 0.5 ? "chase" : "dead corner";
  }

  /** Does space that nothing accounts for lie over or under it on another level too? */
  private boolean goesThrough(PlacedLevel level, Polygon p) {
    return byLevel.entrySet().stream()
        .filter(e -> !e.getKey().equals(level.name()))
        .flatMap(e -> e.getValue().stream())
        .anyMatch(o -> Overlay.shared(o, p).getArea() >= 0.5 * Math.min(o.getArea(), p.getArea()));
  }
}
