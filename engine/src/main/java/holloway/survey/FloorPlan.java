package holloway.survey;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.House;
import holloway.house.Room;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.locationtech.jts.geom.Polygon;

/** The two horizontal networks of a house and the rooms they place. */
final class FloorPlan {
  private final House house;
  private final Network ew = new Network(Axis.X);
  private final Network ns = new Network(Axis.Y);
  private final TreeMap<String, RoomShape> shapes = new TreeMap<>();
  private final Placement placement;
  private final WallPriors priors;
  private final Texts texts;
  private final Problems problems;
  private Adjustment x;
  private Adjustment y;

  FloorPlan(House house, Columns columns, Specs specs, Texts texts, Problems problems) {
    this.house = house;
    this.texts = texts;
    this.problems = problems;
    this.priors = new WallPriors(specs, texts);
    for (Room r : house.rooms().stream().sorted(Comparator.comparing(Room::name)).toList()) {
      if (isSound(r)) {
        shapes.put(r.name(), RoomShape.of(r, ew, ns, texts));
      }
    }
    this.placement =
        new Placement(ew, ns, shapes, columns, priors, texts, problems, house.conduits());
  }

  private boolean isSound(Room r) {
    boolean sized =
        r.size().isPresent()
            && r.size().get().eastWest().value().nm() > 0
            && r.size().get().northSouth().value().nm() > 0;
    if (r.size().isPresent() ? !sized : r.outline().size() < 4 && r.outline().size() != 3) {
      problems.add(
          r.where(),
          "room %s needs a size larger than nothing, or an outline of at least three corners",
          r.name());
      return false;
    }
    if (r.size().isEmpty() && !isSimple(r)) {
      problems.add(r.where(), "the outline of room %s crosses or touches itself", r.name());
      return false;
    }
    return true;
  }

  private static boolean isSimple(Room r) {
    Polygon p =
        new Polygon2(
                r.outline().stream()
                    .map(c -> new Point2(c.x().value().nm(), c.y().value().nm()))
                    .toList())
            .toJts();
    return p.isValid() && p.getArea() > 0;
  }

  void adjust() {
    problems.throwIfAny();
    placement.walk();
    problems.throwIfAny();
    Closing closing = new Closing(shapes, ew, ns, texts);
    closing.addTapes(house.tapes(), problems);
    problems.throwIfAny();
    int heldX = placement.first().x().get(0);
    int heldY = placement.first().y().get(0);
    closing.addWalls(priors, Adjustment.of(ew, heldX), Adjustment.of(ns, heldY));
    x = Adjustment.of(ew, heldX);
    y = Adjustment.of(ns, heldY);
  }

  Closures closures() {
    return Loops.of(ew, placement.first().x().get(0), texts)
        .and(Loops.of(ns, placement.first().y().get(0), texts));
  }

  Gaps gaps() {
    return new Gaps(shapes, ew, ns, texts);
  }

  List<String> assumed() {
    return placement.assumed();
  }

  Spreads spreads() {
    Spreads spreads = new Spreads();
    shapes.values().forEach(s -> spreads.add(s, x, y));
    return spreads;
  }

  /** By name, shifted so that the box around all rooms starts at the origin. */
  List<PlacedRoom> rooms(Storeys storeys) {
    long west =
        shapes.values().stream()
            .flatMap(s -> s.x().stream())
            .mapToLong(u -> x.position()[u])
            .min()
            .orElse(0);
    long south =
        shapes.values().stream()
            .flatMap(s -> s.y().stream())
            .mapToLong(u -> y.position()[u])
            .min()
            .orElse(0);
    List<PlacedRoom> out = new ArrayList<>();
    for (RoomShape s : shapes.values()) {
      List<Point2> corners = new ArrayList<>();
      for (int i = 0; i < s.local().size(); i++) {
        corners.add(
            new Point2(x.position()[s.x().get(i)] - west, y.position()[s.y().get(i)] - south));
      }
      Polygon2 outline = new Polygon2(corners);
      if (!outline.toJts().isValid() || outline.signedAreaMm2() <= 0) {
        problems.add(
            s.room().where(),
            "the measurements of room %s contradict each other so that it turns inside out",
            s.room().name());
        continue;
      }
      out.add(
          new PlacedRoom(s.room(), outline, storeys.floorZ(s.room()), storeys.ceilingZ(s.room())));
    }
    return out;
  }
}
