package holloway.schedule;

import holloway.geometry.Frame.Axis;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.plan.Drilling;
import holloway.plan.Plan;
import holloway.survey.PlacedRoom;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Which holes of a plan get a pilot, and how it is found from the other side. */
public final class Pilots {
  /** 1/8 in. */
  static final int BIT_MM = 3;

  /** 1/4 in. */
  private static final int MASONRY_BIT_MM = 6;

  /** No wall is thicker, nanometres; looked along in steps thinner than any room. */
  private static final long THROUGH = 1_200_000_000;

  private static final long STEP = 20_000_000;

  private final HollowHouse house;
  private final Sight sight;
  private final Map<String, String> rooms = new TreeMap<>();
  private final DrillSide drill;

  private Pilots(Plan plan, HollowHouse house) {
    this.house = house;
    this.sight = new Sight(house);
    house.accesses().forEach(a -> rooms.put(a.id(), a.room()));
    this.drill = new DrillSide(plan, house);
  }

  /** By hole id, those that need one. */
  public static Map<String, Pilot> of(Plan plan, HollowHouse house) {
    Pilots pilots = new Pilots(plan, house);
    Map<String, Pilot> out = new TreeMap<>();
    for (Plan.PlannedHole h : plan.holes()) {
      house
          .findSite(h.id())
          .filter(s -> !s.a().equals(s.b()))
          .flatMap(s -> pilots.find(h, s))
          .ifPresent(p -> out.put(h.id(), p));
    }
    return out;
  }

  private Optional<Pilot> find(Plan.PlannedHole hole, Site site) {
    boolean fromA = drill.isA(hole, site);
    Optional<String> room = Optional.ofNullable(rooms.get(hole.stand()));
    List<Dimension> here = sight.from(site, fromA, sight.farRoom(site, fromA, room));
    List<Dimension> there = sight.from(site, !fromA, sight.farRoom(site, !fromA, room));
    double tolerance = Tolerance.of(site, house);
    boolean bare = here.isEmpty() || there.isEmpty();
    if (!bare && tolerance <= Tolerance.LOCATOR_MM) {
      return Optional.empty();
    }
    boolean turned = here.isEmpty() && !there.isEmpty() && isOutside(site, fromA);
    Optional<Pilot.From> from = turned ? behind(site, fromA) : Optional.empty();
    String beyond = fromA ? site.hollowB() : site.hollowA();
    boolean reached = house.findHollow(beyond).map(h -> !h.blind()).orElse(false);
    Pilot.Find how = from.isPresent() ? Pilot.Find.FROM_INSIDE : how(reached, !there.isEmpty());
    Pilot.Why why = bare ? Pilot.Why.NOTHING_TO_MEASURE : Pilot.Why.FAR_OFF;
    int bit = Drilling.isStone(hole) ? MASONRY_BIT_MM : BIT_MM;
    return Optional.of(new Pilot(hole.id(), bit, why, how, 2 * tolerance, there, from));
  }

  private boolean isOutside(Site site, boolean atA) {
    return house
        .findHollow(atA ? site.hollowA() : site.hollowB())
        .filter(h -> h.kind() == HollowKind.OUTSIDE_FACE || h.kind() == HollowKind.PORCH_VOID)
        .isPresent();
  }

  /** Where somebody inside can bore: in what lies behind, or in the room before a closed bay. */
  private Optional<Pilot.From> behind(Site site, boolean fromA) {
    Optional<Hollow> hollow = house.findHollow(fromA ? site.hollowB() : site.hollowA());
    if (hollow.filter(h -> h.kind() == HollowKind.ROOM_SURFACE).isPresent()) {
      return hollow.map(Beyond::room).map(Pilot.From::room);
    }
    return hollow.filter(h -> !h.blind()).map(Pilot.From::space).or(() -> before(site, fromA));
  }

  /** The first room that a straight thin bit from outside would come out in. */
  private Optional<Pilot.From> before(Site site, boolean fromA) {
    Point3 out = fromA ? site.a() : site.b();
    Axis in = Lines.between(out, fromA ? site.b() : site.a());
    for (long nm = 0; nm <= THROUGH; nm += STEP) {
      Point3 p = Lines.walk(out, in, nm);
      for (PlacedRoom r : house.framed().placed().rooms()) {
        if (p.z() >= r.floorZ() && p.z() <= r.ceilingZ() && r.outline().contains(p.plan())) {
          return Optional.of(Pilot.From.room(r.name()));
        }
      }
    }
    return Optional.empty();
  }

  /** Behind a closed face nobody sees the wire, however well the face can be taped. */
  private static Pilot.Find how(boolean reached, boolean taped) {
    if (reached) {
      return taped ? Pilot.Find.BY_TAPE : Pilot.Find.BY_SIGHT;
    }
    return taped ? Pilot.Find.BY_MAGNET : Pilot.Find.BY_FEEL;
  }
}
