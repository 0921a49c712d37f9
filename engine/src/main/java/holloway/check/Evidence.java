package holloway.check;

import holloway.catalog.Cable;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.hollow.Stand;
import holloway.house.Conduit;
import holloway.plan.Plan;
import holloway.request.Request;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A plan beside the house it is for, indexed once for all rules. */
final class Evidence {
  private final Plan plan;
  private final HollowHouse house;
  private final Request request;
  private final SolidGrid grid;
  private final Map<String, Plan.PlannedHole> holes = new TreeMap<>();
  private final Map<String, Plan.PlannedWork> works = new TreeMap<>();
  private final Map<String, Stand> stands = new TreeMap<>();

  Evidence(Plan plan, HollowHouse house, Request request) {
    this.plan = plan;
    this.house = house;
    this.request = request;
    this.grid = new SolidGrid(house.framed().members());
    plan.holes().forEach(h -> holes.putIfAbsent(h.id(), h));
    plan.works().forEach(w -> works.putIfAbsent(w.id(), w));
    house.stands().forEach(s -> stands.put(s.id(), s));
  }

  Plan plan() {
    return plan;
  }

  HollowHouse house() {
    return house;
  }

  Request request() {
    return request;
  }

  SolidGrid grid() {
    return grid;
  }

  List<Walk.At> steps() {
    return plan.runs().stream().flatMap(r -> Walk.of(r).stream()).toList();
  }

  Optional<Hollow> hollow(Walk.At leg) {
    return house.findHollow(leg.hollow());
  }

  /** The stated tube that a conduit hollow is. */
  Optional<Conduit> conduit(Hollow hollow) {
    return house.framed().placed().house().conduits().stream()
        .filter(c -> hollow.id().equals("conduit/" + c.name()))
        .findFirst();
  }

  Optional<Site> site(Walk.At crossing) {
    return house.findSite(crossing.step().id());
  }

  Optional<Plan.PlannedHole> hole(String id) {
    return Optional.ofNullable(holes.get(id));
  }

  Optional<Plan.PlannedWork> work(String id) {
    return Optional.ofNullable(works.get(id));
  }

  Optional<Stand> stand(String id) {
    return Optional.ofNullable(stands.get(id));
  }

  /**
   * Jacket radius of a run's cable in millimetres; 0 when the kind is unknown, refused elsewhere.
   */
  double cableRadius(Plan.PlannedRun run) {
    return Cable.find(run.cable()).map(c -> c.outside().toMm() / 2).orElse(0.0);
  }

  /** True when a work sets up the zone of this stand, by the zone's name or the stand's own. */
  boolean zoneOpened(Stand stand) {
    return plan.works().stream()
        .anyMatch(w -> w.kind().equals("zone") && isZoneOf(w.zone(), stand));
  }

  /** The stand whose set-up a zone's work is. */
  Optional<Stand> zoneStand(String zone) {
    return stands.values().stream()
        .filter(s -> s.id().equals(zone))
        .findFirst()
        .or(() -> stands.values().stream().filter(s -> isZoneOf(zone, s)).findFirst());
  }

  private static boolean isZoneOf(String zone, Stand stand) {
    return !stand.zone().isEmpty() && (zone.equals(stand.zone()) || zone.equals(stand.id()));
  }

  /** True for a crossing that is no bore: an opened patch, access or cut-out. */
  boolean isAccess(Walk.At crossing) {
    String id = crossing.step().id();
    return house.findSite(id).isEmpty()
        && (id.endsWith("/cut-out") || work(id).map(Evidence::opens).orElse(false));
  }

  /** True when the box of this run end is cut out: its work's id starts with the end's name. */
  boolean hasCutOut(String end) {
    return plan.works().stream()
        .anyMatch(
            w ->
                w.kind().equals("cut-out")
                    && (w.id().startsWith(end + "/") || w.id().startsWith(end + "@")));
  }

  static boolean opens(Plan.PlannedWork work) {
    return List.of("patch", "access", "cut-out").contains(work.kind());
  }
}
