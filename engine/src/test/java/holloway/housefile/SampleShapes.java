package holloway.housefile;

import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.Room;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Geometry;

/** What of a sample is seen only in how its storeys lie over one another. */
final class SampleShapes {
  /** Of a room's plan: less is a wall's thickness, more is not the same room. */
  private static final double SOME = 0.05;

  private SampleShapes() {}

  /** A part of it lies over the open air, the rest over rooms. */
  static boolean overhangs(Placed p) {
    return pairs(p, (upper, lower) -> partly(upper, lower, outlineOf(p, lower)));
  }

  /** A part of the storey below has no storey over it. */
  static boolean setsBack(Placed p) {
    return pairs(p, (upper, lower) -> partly(lower, upper, outlineOf(p, upper)));
  }

  static boolean isOverPartOfAGarage(Placed p) {
    return pairs(
        p, (upper, lower) -> lower.room().garage() && partly(lower, upper, outlineOf(p, upper)));
  }

  /** Concrete with a room of ours under it. */
  static boolean hasSolidFloorOverARoom(Placed p) {
    return pairs(
        p,
        (upper, lower) ->
            floor(p, upper).kind() == FloorSpec.Kind.SLAB && shared(upper, lower) > SOME);
  }

  /** Eight square corners, none of its edges under 1 m: more than an alcove. */
  static boolean isT(PlacedRoom r) {
    List<Point2> c = r.outline().corners();
    for (int i = 0; i < c.size(); i++) {
      Point2 next = c.get((i + 1) % c.size());
      if (c.get(i).at(0).distanceTo(next.at(0)) < 1_000_000_000L) {
        return false;
      }
    }
    return c.size() == 8;
  }

  private static FloorSpec floor(Placed p, PlacedRoom r) {
    return r.room().floor().orElseGet(() -> p.getLevel(r.room().level()).level().floor());
  }

  private static boolean pairs(Placed p, BiPredicate<PlacedRoom, PlacedRoom> is) {
    return p.rooms().stream()
        .anyMatch(
            upper ->
                p.rooms().stream()
                    .filter(lower -> level(p, upper).isNextOver(level(p, lower)))
                    .anyMatch(lower -> is.test(upper, lower)));
  }

  private static PlacedLevel level(Placed p, PlacedRoom r) {
    return p.getLevel(r.room().level());
  }

  /** One room lies over the other, and a part of it beyond all of the other's level. */
  private static boolean partly(PlacedRoom one, PlacedRoom other, Geometry storey) {
    Geometry plan = one.outline().toJts();
    double beyond = Overlay.difference(plan, storey).getArea() / plan.getArea();
    return shared(one, other) > SOME && beyond > SOME && beyond < 1 - SOME;
  }

  private static double shared(PlacedRoom one, PlacedRoom other) {
    Geometry plan = one.outline().toJts();
    return Overlay.intersection(plan, other.outline().toJts()).getArea() / plan.getArea();
  }

  private static Geometry outlineOf(Placed p, PlacedRoom r) {
    return Overlay.union(level(p, r).footprint().stream().map(f -> f.toJts()).toList());
  }

  /** Its own floor's joists run across those of its level. */
  static boolean turned(House house, Room room) {
    FloorSpec level =
        house.levels().stream()
            .filter(l -> l.name().equals(room.level()))
            .findFirst()
            .orElseThrow()
            .floor();
    return room.floor()
        .filter(f -> f.kind() == FloorSpec.Kind.JOISTS && level.kind() == FloorSpec.Kind.JOISTS)
        .filter(f -> f.run() != level.run())
        .isPresent();
  }

  static int corners(PlacedRoom r) {
    return r.outline().corners().size();
  }

  static boolean square(PlacedRoom r) {
    List<Point2> c = r.outline().corners();
    for (int i = 0; i < c.size(); i++) {
      Point2 next = c.get((i + 1) % c.size());
      if (c.get(i).x() != next.x() && c.get(i).y() != next.y()) {
        return false;
      }
    }
    return true;
  }

  /** A room of the same level within the box round another one. */
  static boolean hasCloset(Placed p) {
    return p.rooms().stream()
        .anyMatch(
            r ->
                p.rooms().stream()
                    .anyMatch(
                        c ->
                            c != r
                                && c.room().level().equals(r.room().level())
                                && within(c.outline(), r.outline())));
  }

  /** A studded wall of full height between two rooms whose whole ceilings are lowered. */
  static boolean cutsAVoid(Placed p) {
    Set<String> lowered =
        p.house().soffits().stream()
            .filter(s -> s.face().isEmpty())
            .map(s -> s.room())
            .collect(Collectors.toSet());
    return p.walls().stream()
        .filter(w -> w.isFramed() && !w.isLow())
        .anyMatch(
            w ->
                IntStream.of(0, 1)
                    .allMatch(
                        side ->
                            w.faces().stream()
                                .filter(f -> f.side() == side)
                                .anyMatch(f -> lowered.contains(f.room()))));
  }

  private static boolean within(Polygon2 inner, Polygon2 outer) {
    return inner.xRange().lo() >= outer.xRange().lo()
        && inner.xRange().hi() <= outer.xRange().hi()
        && inner.yRange().lo() >= outer.yRange().lo()
        && inner.yRange().hi() <= outer.yRange().hi();
  }
}
