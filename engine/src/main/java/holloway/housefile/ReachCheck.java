package holloway.housefile;

import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.FaceRef;
import holloway.house.House;
import holloway.house.Obstacle;
import holloway.house.Opening;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.Stair;
import holloway.house.Standing;
import holloway.house.Thing;
import holloway.house.WallRef;
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import holloway.units.Length;
import holloway.units.LengthText;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What can be told without placing the rooms: a spot beyond the end of its wall or above its
 * ceiling. Only rooms with a stated size are looked at; the survey knows the others.
 */
final class ReachCheck {
  private final Map<String, Room> rooms = new TreeMap<>();
  private final House house;
  private final Problems problems;

  private ReachCheck(House house, Problems problems) {
    this.house = house;
    this.problems = problems;
    house.rooms().forEach(r -> rooms.put(r.name(), r));
  }

  static void check(House house, Request request, Problems problems) {
    ReachCheck c = new ReachCheck(house, problems);
    c.open(
        request.cabinet().at().face().room(), request.cabinet().at().face().where(), "the cabinet");
    c.spot(request.cabinet().at(), "the cabinet");
    request.cabinet().others().forEach(o -> c.spot(o, "another place of the cabinet"));
    for (Outlet o : request.outlets()) {
      o.spots().forEach(s -> c.spot(s, "outlet '" + o.name() + "'"));
    }
    for (Thing t : house.things()) {
      c.spot(t.at(), "this thing");
    }
    house.roofs().forEach(r -> r.hatches().forEach(h -> c.over(h.at(), "this hatch")));
    house.roofs().forEach(r -> r.skylights().forEach(k -> c.over(k.at(), "this skylight")));
    for (Obstacle o : house.obstacles()) {
      o.inVoid().ifPresent(v -> c.over(v.at(), "this obstacle"));
    }
    house.stairs().forEach(c::stair);
    house.walls().forEach(w -> w.ref().ifPresent(c::between));
    for (Opening o : house.openings()) {
      c.between(o.wall());
      o.wall()
          .face()
          .ifPresent(
              f -> {
                long end = o.along().distance().value().nm() + o.width().value().nm();
                c.along(
                    f,
                    new Length(end),
                    o.along().distance().where(),
                    "the far side of this opening");
              });
    }
  }

  /** Nothing is wanted in a room that nobody works in. */
  private void open(String room, Where where, String what) {
    Standing standing = rooms.containsKey(room) ? rooms.get(room).standing() : Standing.OURS;
    if (!standing.isOpen()) {
      problems.add(
          where,
          room,
          "a room that is yours and surveyed",
          "",
          standing == Standing.SOMEBODY_ELSES
              ? "%s would be in '%s', which is somebody else's (ours: no)".formatted(what, room)
              : "%s would be in '%s', which is not surveyed (surveyed: no); tape it first"
                  .formatted(what, room));
    }
  }

  private void spot(Spot spot, String what) {
    if (spot instanceof Spot.OnWall w) {
      open(w.at().face().room(), w.at().face().where(), what);
      spot(w.at(), what);
      w.upTo()
          .ifPresent(
              to -> along(w.at().face(), to, w.at().along().distance().where(), what + " ('to')"));
    } else if (spot instanceof Spot.Outside o) {
      if (o.under().isEmpty()) {
        spot(o.at(), what);
      }
    } else if (spot instanceof Spot.OnCeiling c) {
      open(c.at().room(), c.at().where(), what);
      over(c.at(), what);
    }
  }

  /** Two sides of a room give its south and west walls' lengths. */
  private void over(CeilingSpot at, String what) {
    Along x = at.eastWest();
    Along y = at.northSouth();
    along(
        new FaceRef(at.room(), Side.SOUTH, 1, at.where()),
        x.distance().value(),
        x.distance().where(),
        what);
    along(
        new FaceRef(at.room(), Side.WEST, 1, at.where()),
        y.distance().value(),
        y.distance().where(),
        what);
  }

  private void stair(Stair s) {
    Along x = s.near().eastWest();
    Along y = s.near().northSouth();
    String what = "the far side of stair '" + s.name() + "'";
    along(
        new FaceRef(s.near().room(), Side.SOUTH, 1, s.near().where()),
        x.distance().value().plus(s.size().eastWest().value()),
        x.distance().where(),
        what);
    along(
        new FaceRef(s.near().room(), Side.WEST, 1, s.near().where()),
        y.distance().value().plus(s.size().northSouth().value()),
        y.distance().where(),
        what);
  }

  private void between(WallRef ref) {
    Room one = ref.between().map(b -> rooms.get(b.one())).orElse(null);
    Room other = ref.between().map(b -> rooms.get(b.other())).orElse(null);
    if (one != null && other != null && !one.level().equals(other.level())) {
      problems.add(
          ref.where(),
          one.name() + ", " + other.name(),
          "two rooms of one level, or side: %s SIDE for a wall between split levels"
              .formatted(one.name()),
          "",
          "there is no wall between '%s' on level '%s' and '%s' on level '%s'"
              .formatted(one.name(), one.level(), other.name(), other.level()));
    }
  }

  private void spot(WallSpot at, String what) {
    along(at.face(), at.along().distance().value(), at.along().distance().where(), what);
    Length height = at.height().value();
    ceiling(at.face().room())
        .filter(c -> height.compareTo(c) > 0)
        .ifPresent(
            c ->
                problems.add(
                    at.height().where(),
                    LengthText.metric(height),
                    "a height below the ceiling",
                    "",
                    "%s is above the ceiling of '%s', which is %s high"
                        .formatted(what, at.face().room(), LengthText.metric(c))));
  }

  private Optional<Length> ceiling(String room) {
    Room r = rooms.get(room);
    if (r == null) {
      return Optional.empty();
    }
    return r.ceilingHeight()
        .or(
            () ->
                house.levels().stream()
                    .filter(l -> l.name().equals(r.level()))
                    .findFirst()
                    .map(l -> l.ceilingHeight()))
        .map(f -> f.value());
  }

  private void along(FaceRef face, Length distance, Where where, String what) {
    Room room = rooms.get(face.room());
    if (room == null || room.size().isEmpty()) {
      return;
    }
    if (face.ordinal() > 1) {
      problems.add(
          face.where(),
          face.toString(),
          "no number",
          "",
          "room '" + face.room() + "' has a size, so it has one wall on each side");
    }
    Room.Size size = room.size().get();
    Length wall = (face.side().runsEastWest() ? size.eastWest() : size.northSouth()).value();
    if (distance.compareTo(wall) > 0) {
      problems.add(
          where,
          LengthText.metric(distance),
          "at most " + LengthText.metric(wall),
          "",
          "%s lies beyond the %s wall of '%s', which is %s long"
              .formatted(what, face.side().word(), face.room(), LengthText.metric(wall)));
    }
  }
}
