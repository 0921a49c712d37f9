package holloway.scene;

import holloway.framing.Member;
import holloway.geometry.Point2;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.house.Fill;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** The shapes of a house by itself. */
final class HouseShapes {
  /** Deeper and higher than any house, millimetres. */
  private static final double FAR = 1e6;

  /** The board under a floor's finish belongs to the level that walks on it. */
  private static final double UNDER_FLOOR = 20;

  private final HollowHouse house;
  private final Placed placed;
  private final Map<String, Integer> orders = new HashMap<>();

  HouseShapes(HollowHouse house) {
    this.house = house;
    this.placed = house.framed().placed();
    placed.levels().forEach(l -> orders.put(l.name(), l.order()));
  }

  List<Scene.Level> levels() {
    List<Scene.Level> out = new ArrayList<>();
    List<PlacedLevel> all = placed.levels();
    for (int i = 0; i < all.size(); i++) {
      PlacedLevel l = all.get(i);
      boolean top = i + 1 == all.size() || !all.get(i + 1).isNextOver(l);
      // A floor's joists belong to the level that walks on them.
      double low = l.storey() == 0 ? -FAR : out.get(i - 1).high();
      double high = top ? FAR : all.get(i + 1).floorZ() / 1e6 - UNDER_FLOOR;
      double floor = l.floorZ() / 1e6;
      double ceiling = l.ceilingZ() / 1e6;
      out.add(new Scene.Level(l.name(), l.order(), l.part(), floor, ceiling, low, high));
    }
    return out;
  }

  List<Scene.Room> rooms() {
    List<Scene.Room> out = new ArrayList<>();
    for (PlacedRoom r : placed.rooms()) {
      List<Vec> outline = new ArrayList<>();
      for (Point2 p : r.outline().corners()) {
        outline.add(new Vec(p.x() / 1e6, p.y() / 1e6, r.floorZ() / 1e6));
      }
      int level = orders.getOrDefault(r.room().level(), 0);
      out.add(new Scene.Room(r.name(), level, outline, middle(r)));
    }
    return out;
  }

  /** The centre of a room's floor, or a point well inside where the centre is not in it. */
  private static Vec middle(PlacedRoom r) {
    Polygon floor = r.outline().toJts();
    Point at = floor.getCentroid();
    if (!floor.contains(at)) {
      at = floor.getInteriorPoint();
    }
    return new Vec(at.getX(), at.getY(), r.floorZ() / 1e6);
  }

  List<Scene.Solid> solids(List<Scene.Level> levels) {
    Map<String, Integer> owners = new HashMap<>();
    Set<String> walls = new HashSet<>();
    placed.walls().forEach(w -> owners.put(w.id(), orders.getOrDefault(w.level(), 0)));
    placed.walls().forEach(w -> walls.add(w.id()));
    List<Scene.Solid> out = new ArrayList<>();
    for (Member m : house.framed().members()) {
      Brick brick = Brick.of(m.frame(), m.box());
      boolean flat = !walls.contains(m.owner());
      int level = flat ? levelAt(levels, brick.middle().z()) : owners.get(m.owner());
      out.add(
          new Scene.Solid(
              m.id(), m.kind(), Layer.of(m.kind()), level, flat, m.owner(), brick, m.assumed()));
    }
    out.sort(Comparator.comparing(Scene.Solid::id));
    return out;
  }

  private static int levelAt(List<Scene.Level> levels, double z) {
    return levels.stream()
        .filter(l -> z >= l.low() && z < l.high())
        .findFirst()
        .map(Scene.Level::order)
        .orElse(0);
  }

  List<Scene.Space> spaces(Map<String, List<String>> runs) {
    List<Scene.Space> out = new ArrayList<>();
    for (Hollow h : house.hollows()) {
      boolean open =
          h.area().isPresent()
              || h.kind() == HollowKind.ROOM_SURFACE
              || h.kind() == HollowKind.OUTSIDE_FACE
              || h.kind() == HollowKind.ATTIC
              || h.kind() == HollowKind.CRAWLSPACE
              || h.kind().isDrawn();
      out.add(
          new Scene.Space(
              h.id(),
              h.kind(),
              Brick.of(h.frame(), h.clear()),
              runs.getOrDefault(h.id(), List.of()),
              open,
              h.owner(),
              word(h.fill())));
    }
    out.sort(Comparator.comparing(Scene.Space::id));
    return out;
  }

  private static String word(Fill fill) {
    return fill.word();
  }
}
