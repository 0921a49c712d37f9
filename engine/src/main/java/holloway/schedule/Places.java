package holloway.schedule;

import holloway.geometry.Point3;
import holloway.hollow.AccessPlace;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Stand;
import holloway.house.Opening;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.Wall;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a person stands for a hole, an opening, an end of a cable, or the way between. */
final class Places {
  static final String CABINET = "cabinet";

  /** Higher than this over the lowest floor that is not dug in, a ladder; from experience. */
  private static final long LADDER = 2_400_000_000L;

  private final Map<String, WorkPlace> stands = new TreeMap<>();
  private final Map<String, AccessPlace> accesses = new TreeMap<>();
  private final HollowHouse house;
  private final Request request;
  private final WorkPlace cabinet;

  Places(HollowHouse house, Request request) {
    this.house = house;
    this.request = request;
    house.stands().forEach(s -> stands.put(s.id(), place(s)));
    house.accesses().forEach(a -> accesses.put(a.id(), a));
    this.cabinet = room(request.cabinet().at().face().room());
  }

  private static WorkPlace place(Stand s) {
    WorkPlace.Kind kind =
        switch (s.zone()) {
          case "attic", "attic-low" -> WorkPlace.Kind.ATTIC;
          case "crawlspace" -> WorkPlace.Kind.CRAWLSPACE;
          case "cellar" -> WorkPlace.Kind.CELLAR;
          case "ladder" -> WorkPlace.Kind.LADDER;
          default -> s.id().equals("outside") ? WorkPlace.Kind.OUTSIDE : WorkPlace.Kind.ROOM;
        };
    return new WorkPlace(s.id(), kind, s.words().replaceFirst("^the ", ""));
  }

  WorkPlace cabinet() {
    return cabinet;
  }

  WorkPlace room(String name) {
    return new WorkPlace("room/" + name, WorkPlace.Kind.ROOM, name);
  }

  /** The place a stand's id, an opening's id or an outlet's name means. */
  Optional<WorkPlace> find(String stand, Point3 at) {
    String id = stand.replaceFirst("/cut-out$", "");
    if (stands.containsKey(id)) {
      return Optional.of(stands.get(id));
    }
    if (accesses.containsKey(id)) {
      return Optional.of(room(accesses.get(id).room()));
    }
    return request.outlets().stream()
        .filter(o -> o.name().equals(id))
        .findFirst()
        .map(o -> outlet(o, at));
  }

  private WorkPlace outlet(Outlet o, Point3 at) {
    Spot spot = o.spots().get(0);
    if (spot instanceof Spot.OnCeiling c) {
      return room(c.at().room());
    }
    return spot instanceof Spot.Outside
        ? outside(at)
        : room(((Spot.OnWall) spot).at().face().room());
  }

  /** Of a hole that a plan makes. */
  WorkPlace hole(Plan.PlannedHole h) {
    return find(h.stand(), h.at()).orElse(cabinet);
  }

  /** Of an end of a run. */
  WorkPlace end(String name, Point3 at) {
    return name.equals(CABINET) ? cabinet : find(name, at).orElse(cabinet);
  }

  /** The place hands work a hollow from; empty for one that nobody sees into. */
  Optional<WorkPlace> hollow(String id, Point3 at) {
    Optional<Hollow> hollow = house.findHollow(id);
    if (hollow.isPresent() && hollow.get().kind() == HollowKind.OUTSIDE_FACE) {
      return Optional.of(outside(at));
    }
    return hollow.flatMap(Hollow::stand).map(s -> stands.getOrDefault(s, room(s)));
  }

  /** Where an access is; empty for what is none. */
  Optional<OpenPlace> access(String id) {
    return Optional.ofNullable(accesses.get(id))
        .map(a -> new OpenPlace(a.id(), a.room(), on(a.kind()), a.at()));
  }

  private static OpenPlace.On on(AccessPlace.Kind kind) {
    return switch (kind) {
      case CEILING_PATCH -> OpenPlace.On.CEILING;
      case LIFTED_BOARDS -> OpenPlace.On.FLOOR;
      case WALL_PATCH, DATA_BOX, REGISTER -> OpenPlace.On.WALL;
    };
  }

  /** The room on that side of the wall, and at that spot along it, where a channel is cut. */
  Optional<WorkPlace> channel(String id) {
    for (Wall w : house.framed().placed().walls()) {
      Matcher m = Pattern.compile(Pattern.quote(w.id()) + "/channel-(\\d)/(\\d+)/.*").matcher(id);
      if (m.matches()) {
        long along = Long.parseLong(m.group(2)) * 1_000_000;
        return w.findFace(Integer.parseInt(m.group(1)), along).map(f -> room(f.room()));
      }
    }
    return Optional.empty();
  }

  boolean isAccess(String id) {
    return accesses.containsKey(id);
  }

  List<Outlet> outlets() {
    return request.outlets();
  }

  private WorkPlace outside(Point3 at) {
    String id = at.z() > groundZ() + LADDER ? "ladder" : "outside";
    return stands.getOrDefault(id, new WorkPlace(id, WorkPlace.Kind.OUTSIDE, id));
  }

  /** The floor of the first level with a door to the outside. */
  private long groundZ() {
    Placed placed = house.framed().placed();
    return placed.levels().stream()
        .filter(l -> placed.walls().stream().anyMatch(w -> outerDoor(w, l.name())))
        .mapToLong(PlacedLevel::floorZ)
        .findFirst()
        .orElse(placed.levels().get(0).floorZ());
  }

  private static boolean outerDoor(Wall w, String level) {
    return w.level().equals(level)
        && w.isOuter()
        && w.openings().stream().anyMatch(o -> o.opening().kind() == Opening.Kind.DOOR);
  }
}
