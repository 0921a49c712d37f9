package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.hollow.Hollow;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.support.Chain;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * From outside through the rim into the joist bay behind it. Foam shuts every wall and nobody may
 * go up, so there is no other way into the void between the storeys.
 */
@Feature("through the rim from outside")
class RimTest {
  private static final String HOUSE =
      """
      house: Rim Toy
      place: us
      built: 1994
      outer-walls: { studs: 2x4, every: 16 in, fill: foam }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: RUN }, ceiling-height: 8 ft }
      rooms:
        hall: { level: ground, size: 12 ft x 12 ft }
        bed: { level: upper, size: 12 ft x 12 ft, above: hall, align: south-west, tied: measured }
      cabinet: { in: bed, wall: north, from: west 4 ft, height: 16 in }
      outlets:
        - { name: eye, in: hall, ceiling: [west 6 ft, south 4 ft], cables: [cat6] }
        - { name: box, outside: bed south, from: west 6 ft, height: 8 in, cables: [outdoor-cat6], feed: yes }
      """;

  private static final String EYE = "eye/cat6-1";

  private static WrittenHouse house(String run) {
    return WrittenHouse.of(HOUSE.replace("RUN", run));
  }

  /** Not down through the bedroom's floor, and not through the rim where {@code without} says. */
  private static Plan plan(WrittenHouse house, boolean without) {
    return house.plan(
        house.hollows().sites().stream()
            .filter(s -> s.id().startsWith("bed/floor/") || without && s.kind() == SiteKind.RIM)
            .map(Site::id)
            .toArray(String[]::new));
  }

  @Test
  void leadsIntoTheBayBehindIt() {
    WrittenHouse house = house("north-south");
    List<Site> rims = house.sites(SiteKind.RIM);
    // Two bays near the box, two near the cabinet.
    assertEquals(4, rims.size(), rims::toString);
    for (Site rim : rims) {
      assertEquals("outside/face", rim.hollowA());
      Hollow bay = find(house, rim.hollowB());
      assertTrue(bay.clear().contains(bay.frame().toLocal(rim.b()), -5_000_000), rim + " " + bay);
      // 1-1/2 in of rim less the 0.1 mm that it is drawn short by, and 22 mm of air.
      assertEquals(38_000_000, rim.layers().get(0).thickness());
      assertEquals(60_000_000, rim.a().distanceTo(rim.b()));
    }
  }

  private static Hollow find(WrittenHouse house, String id) {
    return house.hollows().hollows().stream()
        .filter(h -> h.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** Along joists that run beside the wall there is no rim across their ends, and no bay behind. */
  @Test
  void notWhereTheJoistsRunAlongTheWall() {
    assertEquals(List.of(), house("east-west").sites(SiteKind.RIM));
  }

  @Test
  void isTheOnlyWayIntoTheVoidBetweenTheStoreys() {
    WrittenHouse house = house("north-south");
    Plan plan = plan(house, false);
    assertEquals(List.of(), plan.unrouted());
    List<String> way = WrittenHouse.way(plan, EYE);
    assertEquals("outside/face", way.get(2), way::toString);
    Site rim =
        house.sites(SiteKind.RIM).stream()
            .filter(s -> way.get(3).equals(s.id()))
            .findFirst()
            .orElseThrow();
    assertEquals(rim.hollowB(), way.get(4));
    // (set-up 4 + rim 4 + void 1) x 1.4 from the ladder, seal 2
    assertEquals(14.6, hole(plan, rim.id()).minutes(), 1e-9);
    List<String> none = plan(house, true).unrouted().stream().map(Plan.Unrouted::id).toList();
    assertEquals(List.of(EYE), none);
  }

  /** Where the joists run the other way the same hole leads into the side of the first joist. */
  @Test
  void theRefereeWantsABayBehindIt() {
    Chain bays = Chain.of(HOUSE.replace("RUN", "north-south"));
    Chain along = Chain.of(HOUSE.replace("RUN", "east-west"));
    Plan plan = plan(house("north-south"), false);
    assertEquals("[]", Spoiled.saidIn(bays, bays, plan));
    String says = Spoiled.saidIn(along, bays, plan);
    assertTrue(says.contains("rim"), says);
  }

  private static Plan.PlannedHole hole(Plan plan, String id) {
    return plan.holes().stream().filter(h -> h.id().equals(id)).findFirst().orElseThrow();
  }

  /** What closes the ends of open-web joists, and what stands between them, nobody bores. */
  @Test
  void notThroughTheEndsOfOpenWebJoists() {
    String blocked = HOUSE.replace("run: RUN", "run: north-south, blocks-at: [1500 mm]");
    String web = blocked.replace("blocks-at", "kind: open-web, blocks-at");
    assertTrue(WrittenHouse.of(blocked).sites(SiteKind.BLOCKING).size() > 4);
    assertEquals(4, WrittenHouse.of(blocked).sites(SiteKind.RIM).size());
    assertEquals(List.of(), WrittenHouse.of(web).sites(SiteKind.BLOCKING));
    assertEquals(List.of(), WrittenHouse.of(web).sites(SiteKind.RIM));
  }
}
