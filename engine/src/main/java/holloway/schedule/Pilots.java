package holloway.schedule;

import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.plan.Plan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Which holes of a plan get a pilot, and how it is found from the other side. */
public final class Pilots {
  /** 1/8 in. */
  static final int BIT_MM = 3;

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
    String beyond = fromA ? site.hollowB() : site.hollowA();
    boolean reached = house.findHollow(beyond).map(h -> !h.blind()).orElse(false);
    Pilot.Find how = how(reached, !there.isEmpty());
    Pilot.Why why = bare ? Pilot.Why.NOTHING_TO_MEASURE : Pilot.Why.FAR_OFF;
    return Optional.of(new Pilot(hole.id(), BIT_MM, why, how, 2 * tolerance, there));
  }

  /** Behind a closed face nobody sees the wire, however well the face can be taped. */
  private static Pilot.Find how(boolean reached, boolean taped) {
    if (reached) {
      return taped ? Pilot.Find.BY_TAPE : Pilot.Find.BY_SIGHT;
    }
    return taped ? Pilot.Find.BY_MAGNET : Pilot.Find.BY_FEEL;
  }
}
