package holloway.routing;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.hollow.HollowHouse;
import holloway.hollow.Interest;
import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.Fact;
import holloway.house.Side;
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.PlacedBeam;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Where the cabinet and the outlets stand in the placed house, with the alternatives a range or an
 * "or" allows.
 */
public final class Ends {
  public static final String CABINET = "cabinet";

  /** One possible spot of an end. Exactly one of {@code onWall} and {@code ceiling} is present. */
  public record EndSpot(
      Optional<OnWall> onWall,
      Optional<Point2> ceiling,
      boolean outside,
      String room,
      Optional<Length> boxDepth,
      Optional<Under> under) {
    EndSpot(
        Optional<OnWall> onWall,
        Optional<Point2> ceiling,
        boolean outside,
        String room,
        Optional<Length> boxDepth) {
      this(onWall, ceiling, outside, room, boxDepth, Optional.empty());
    }

    /** The same box at another spot of the wall. */
    EndSpot at(OnWall other) {
      return new EndSpot(Optional.of(other), ceiling, outside, room, boxDepth, under);
    }
  }

  /** A place under the roof of a porch; its spot on the wall lies behind it, below the ceiling. */
  public record Under(String porch, Point2 at) {}

  /** A spot that cannot be: where it stands in the file and why. */
  public record Problem(Where where, String text) {}

  /** Half a box and the plate under the cap of a half-height wall. */
  private static final long CAPPED = 100_000_000;

  private final Map<String, List<EndSpot>> spots = new TreeMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Placed placed;
  private final Map<String, Length> boxes = new TreeMap<>();

  private Ends(Placed placed) {
    this.placed = placed;
  }

  /**
   * Resolves every end; problems (off the wall, in an opening, outside the room) are gathered, not
   * thrown.
   */
  public static Ends of(Placed placed, Request request) {
    Ends e = new Ends(placed);
    e.wall(CABINET, request.cabinet().at(), Optional.empty(), false, request.cabinet().where());
    for (Outlet o : request.outlets()) {
      o.boxDepth().ifPresent(d -> e.boxes.put(o.name(), d.value()));
      for (Spot s : o.spots()) {
        if (s instanceof Spot.OnWall w) {
          e.wall(o.name(), w.at(), w.upTo(), false, o.where());
        } else if (s instanceof Spot.Outside w) {
          w.under()
              .ifPresentOrElse(
                  u -> e.add(o.name(), PorchEnds.spot(placed, u, e.box(o.name()))),
                  () -> e.wall(o.name(), w.at(), Optional.empty(), true, o.where()));
        } else if (s instanceof Spot.OnCeiling c) {
          e.ceiling(o.name(), c.at(), o.where());
        }
      }
    }
    e.problems.addAll(LinkEnds.problems(placed));
    return e;
  }

  /** The same ends with one spot left where {@code chosen} gives its index. */
  public Ends only(Map<String, Integer> chosen) {
    Ends e = new Ends(placed);
    spots.forEach(
        (name, list) ->
            e.spots.put(
                name, chosen.containsKey(name) ? List.of(list.get(chosen.get(name))) : list));
    return e;
  }

  /** The same ends, an outlet exactly on a stud with a spot on each side of it. */
  public Ends besideStuds(HollowHouse house) {
    BaysBehind bays = new BaysBehind(house);
    Ends e = new Ends(placed);
    spots.forEach(
        (name, list) ->
            e.spots.put(
                name,
                name.equals(CABINET)
                    ? list
                    : list.stream().flatMap(s -> bays.bothSides(s).stream()).toList()));
    return e;
  }

  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  public Map<String, List<EndSpot>> spots() {
    return spots;
  }

  /** The spots as interests for the hollow stage. */
  public List<Interest> interests() {
    List<Interest> out = new ArrayList<>();
    spots
        .values()
        .forEach(
            l ->
                l.forEach(
                    s ->
                        out.add(
                            new Interest(
                                s.onWall(),
                                s.outside(),
                                s.ceiling(),
                                s.under().map(Under::at),
                                s.room()))));
    return out;
  }

  private Optional<Length> box(String name) {
    return Optional.ofNullable(boxes.get(name));
  }

  private void add(String name, EndSpot spot) {
    spots.computeIfAbsent(name, k -> new ArrayList<>()).add(spot);
  }

  private void wall(String name, WallSpot at, Optional<Length> upTo, boolean outside, Where where) {
    long height = at.height().value().nm();
    Optional<OnWall> first = placed.findSpot(at.face(), at.along(), height);
    if (first.isEmpty()) {
      problems.add(
          new Problem(
              where,
              name
                  + ": "
                  + at.along().distance().value()
                  + " from "
                  + at.along().from().word()
                  + " is off the wall at '"
                  + at.face()
                  + "'"
                  + lengths(at)));
      return;
    }
    if (outside && !first.get().wall().isOuter()) {
      problems.add(
          new Problem(
              where,
              name
                  + ": the wall at '"
                  + at.face()
                  + "' has no outside: another room lies behind it"));
      return;
    }
    if (!fits(name, first.get(), height, where)) {
      return;
    }
    add(name, new EndSpot(first, Optional.empty(), outside, at.face().room(), box(name)));
    upTo.ifPresent(end -> range(name, at, end, height));
  }

  private String lengths(WallSpot at) {
    var faces = placed.listFaces(at.face().room(), at.face().side());
    if (at.face().ordinal() > faces.size()) {
      return ": that side has " + faces.size() + " face(s)";
    }
    var f = faces.get(at.face().ordinal() - 1);
    return ", which is " + new Length(f.start().at(0).distanceTo(f.end().at(0))) + " long";
  }

  private boolean fits(String name, OnWall s, long height, Where where) {
    Optional<Wall.WallOpening> in =
        s.wall().openings().stream()
            .filter(o -> o.s().contains(s.s()) && o.z().contains(s.z()))
            .findFirst();
    if (in.isPresent()) {
      problems.add(
          new Problem(
              where,
              name
                  + ": it lies in a "
                  + in.get().opening().kind().name().toLowerCase(java.util.Locale.ROOT)
                  + " (line "
                  + in.get().opening().where().line()
                  + ")"));
      return false;
    }
    if (s.wall().isOpen()) {
      problems.add(new Problem(where, name + ": no wall stands there, the side is open"));
      return false;
    }
    Optional<Wall.WallFace> face = s.wall().findFace(s.side(), s.s());
    if (s.wall().isLow() && face.isPresent() && s.z() > face.get().ceilingZ() - CAPPED) {
      problems.add(
          new Problem(
              where,
              name
                  + ": the wall there is "
                  + s.wall().traits().height().orElseThrow().value()
                  + " high, its height of "
                  + new Length(height)
                  + " does not lie "
                  + new Length(CAPPED)
                  + " below its cap"));
      return false;
    }
    if (height < 0 || face.isPresent() && s.z() > face.get().ceilingZ()) {
      problems.add(
          new Problem(
              where,
              name
                  + ": its height of "
                  + new Length(height)
                  + " is not between floor and ceiling"));
      return false;
    }
    return true;
  }

  /** Further spots of a range, 200 mm apart up to its far end; those in openings are left out. */
  private void range(String name, WallSpot at, Length end, long height) {
    long from = at.along().distance().value().nm();
    Interval range = new Interval(Math.min(from, end.nm()), Math.max(from, end.nm()));
    for (long d = range.lo(); d <= range.hi(); d += 200_000_000) {
      Along along = new Along(at.along().from(), Fact.stated(new Length(d), Where.NOWHERE));
      Optional<OnWall> s = d == from ? Optional.empty() : placed.findSpot(at.face(), along, height);
      boolean clear =
          s.isPresent()
              && s.get().wall().openings().stream()
                  .noneMatch(o -> o.s().contains(s.get().s()) && o.z().contains(s.get().z()));
      if (clear) {
        add(name, new EndSpot(s, Optional.empty(), false, at.face().room(), box(name)));
      }
    }
  }

  private void ceiling(String name, CeilingSpot at, Where where) {
    PlacedRoom room = placed.getRoom(at.room());
    Interval x = room.outline().xRange();
    Interval y = room.outline().yRange();
    long dx = at.eastWest().distance().value().nm();
    long dy = at.northSouth().distance().value().nm();
    Point2 p =
        new Point2(
            at.eastWest().from() == Side.WEST ? x.lo() + dx : x.hi() - dx,
            at.northSouth().from() == Side.SOUTH ? y.lo() + dy : y.hi() - dy);
    Optional<PlacedBeam> beam =
        PlacedBeam.of(placed).stream()
            .filter(b -> b.hangs() && b.room().name().equals(room.name()) && b.covers(p))
            .findFirst();
    if (beam.isPresent()) {
      problems.add(
          new Problem(where, name + ": the spot lies on the beam " + beam.get().beam().name()));
    } else if (!room.outline().contains(p)) {
      problems.add(
          new Problem(where, name + ": the spot lies outside the ceiling of '" + at.room() + "'"));
    } else {
      add(name, new EndSpot(Optional.empty(), Optional.of(p), false, at.room(), box(name)));
    }
  }
}
