package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.hollow.SiteKind;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A breakfast bar: reached from below, or out of the wall that it ends against. */
@Feature("half-height wall")
class HalfHeightWallTest {
  /** The bar stands between kitchen and diner and ends against the store's wall. */
  static final String TEXT =
      """
      house: Bar Toy
      place: us
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
      rooms:
        store: { level: ground, size: 20 ft x 8 ft }
        kitchen: { level: ground, size: 9 ft 10 in x 12 ft, north-of: store, align: west }
        diner: { level: ground, size: 9 ft 10 in x 12 ft, east-of: kitchen, align: south }
      walls:
        - { between: [kitchen, diner], name: bar, height: 42 in }
        - { between: [store, kitchen], name: spine, bearing: no }
      roof:
        - { over: ground, shape: gable, ridge: east-west, pitch: 6/12, eaves: 16 in, frame: trusses,
            hatch: { in: store, at: [west 5 ft, north 4 ft], size: 22 in x 30 in } }
      cabinet: { in: store, wall: north, from: west 4 ft, height: 5 ft }
      outlets:
        - { name: bar, in: kitchen, wall: east, from: south 8 in, height: 16 in, cables: [cat6] }
      """;

  /** The same on joists over a crawlspace. */
  private static final String OVER_CRAWLSPACE =
      TEXT.replace(
          "{ floor: slab, ceiling",
          "{ floor: { joists: 2x10, run: north-south, over: { crawlspace: { clearance: 700 mm,"
              + " access: { floor-hatch: { in: store, at: [west 8 ft, south 4 ft] } } } } },"
              + " ceiling");

  @Test
  void itEndsBelowTheCeiling() {
    WrittenHouse house = WrittenHouse.of(TEXT);
    // 42 in less the cap of 19 mm
    assertEquals(1_066_800_000 - 19_000_000, house.placed().getWall("bar").height());
    assertTrue(!house.placed().getWall("bar").bearing().value());
    assertTrue(house.sites(SiteKind.TOP_PLATE).stream().noneMatch(s -> s.id().startsWith("bar/")));
    WrittenHouse whole = WrittenHouse.of(TEXT.replace(", height: 42 in", ""));
    assertTrue(whole.sites(SiteKind.TOP_PLATE).stream().anyMatch(s -> s.id().startsWith("bar/")));
  }

  @Test
  void cableComesOutOfTheWallItEndsAgainst() {
    Plan p = WrittenHouse.of(TEXT).plan("surface");
    assertEquals(List.of(), p.unrouted());
    List<String> way = WrittenHouse.way(p, "bar/cat6-1");
    assertTrue(way.contains("bar/end-post/low"), way::toString);
    Plan.PlannedHole post =
        p.holes().stream().filter(h -> h.id().equals("bar/end-post/low")).findFirst().orElseThrow();
    // set-up 4, a post 3, the void behind it 1, through the cut-out 2.2 times; seal 2
    assertEquals((4 + 3 + 1) * 2.2 + 2, post.minutes(), 1e-9);
  }

  @Test
  void overACrawlspaceItsPlateIsBored() {
    Plan p =
        WrittenHouse.of(OVER_CRAWLSPACE.replace("from: south 8 in", "from: south 6 ft"))
            .plan("surface");
    assertEquals(List.of(), p.unrouted());
    List<String> way = WrittenHouse.way(p, "bar/cat6-1");
    assertTrue(way.stream().anyMatch(s -> s.startsWith("bar/bottom-plate/")), way::toString);
  }

  @Test
  void aWholeWallThereIsEnteredFromTheAttic() {
    Plan p = WrittenHouse.of(TEXT.replace(", height: 42 in", "")).plan("surface");
    List<String> way = WrittenHouse.way(p, "bar/cat6-1");
    assertTrue(way.stream().anyMatch(s -> s.startsWith("bar/top-plate/")), way::toString);
  }

  @Test
  void underTheCeilingItRunsOnOnTheCeiling() {
    // From 7 ft to 7 ft past the bar: no wall at that height, so up, over the ceiling and down.
    String high =
        TEXT.replace(
                "in: store, wall: north, from: west 4 ft, height: 5 ft",
                "in: kitchen, wall: south, from: east 8 in, height: 7 ft")
            .replace(
                "in: kitchen, wall: east, from: south 8 in, height: 16 in",
                "in: kitchen, wall: north, from: east 8 in, height: 7 ft");
    Plan p = WrittenHouse.of(high).plan("attic", "outside");
    assertEquals(0, p.totals().holes());
    double top =
        p.runs().get(0).steps().stream()
            .flatMap(s -> s.path().stream())
            .mapToLong(q -> q.z())
            .max()
            .orElseThrow();
    assertEquals(2_438_400_000L - 12_000_000, top, 1_000_000);
  }

  @Test
  void nothingIsClippedInTheAirOverIt() {
    // Only in sight: from the store's wall along the ceiling, never along the top of a low wall.
    WrittenHouse low =
        WrittenHouse.of(
            TEXT.replace(
                    "in: store, wall: north, from: west 4 ft",
                    "in: kitchen, wall: west, from: north 2 ft")
                .replace("from: south 8 in, height: 16 in", "from: north 2 ft, height: 16 in"));
    Plan p = low.plan("attic");
    assertEquals(List.of(), p.unrouted());
    WrittenHouse whole =
        WrittenHouse.of(
            TEXT.replace(
                    "in: store, wall: north, from: west 4 ft",
                    "in: kitchen, wall: west, from: north 2 ft")
                .replace(
                    "from: south 8 in, height: 16 in",
                    "in: kitchen, wall: east, from: north 2 ft, height: 7 ft")
                .replace("in: kitchen, wall: east, in:", "in:")
                .replace(", height: 42 in", ""));
    Plan high = whole.plan("attic");
    assertTrue(
        Spoiled.refused(high, low).contains("hangs in the air"), () -> Spoiled.refused(high, low));
  }
}
