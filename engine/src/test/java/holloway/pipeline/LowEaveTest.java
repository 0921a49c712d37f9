package holloway.pipeline;

import static holloway.pipeline.Minutes.leg;
import static holloway.pipeline.Minutes.total;
import static holloway.pipeline.Minutes.work;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A desk at an insulated outer wall under a low eave, with a crawlspace, and the other way round.
 */
class LowEaveTest {
  private static final String CRAWL =
      """
      house: Ranch Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      levels:
        main:
          floor: { joists: 2x8, every: 16 in, run: north-south, from: west 16 in, over: { crawlspace: {
            clearance: 2 ft 2 in, access: { floor-hatch: { in: hall, at: [west 3 ft, south 3 ft], size: 24 in x 24 in } } } } }
          ceiling-height: 8 ft
      rooms:
        bedroom: { level: main, size: 20 ft x 12 ft }
        hall: { level: main, size: 20 ft x 12 ft, north-of: bedroom, align: west }
      walls:
        - { between: [bedroom, hall], name: middle }
        - { side: bedroom south, name: eave wall }
      roof:
        - { over: main, shape: gable, ridge: east-west, pitch: 4/12, eaves: 16 in, frame: trusses, every: 24 in,
            hatch: { in: hall, at: [west 15 ft, south 2 ft], size: 22 in x 30 in } }
      cabinet: { in: hall, wall: south, from: west 4 ft, height: 5 ft }
      outlets:
        - { name: desk, in: bedroom, wall: south, from: west 4 ft, height: 16 in, cables: [cat6] }
      """;

  private static final String SLAB_RAISED_HEEL =
      CRAWL
          .replaceAll("(?s)floor: \\{.*?\\} \\} \\} \\} \\}", "floor: slab")
          .replace("eaves: 16 in,", "eaves: 16 in, heel: 28 in,");

  @Test
  void theCrawlspaceWinsUnderALowEave() {
    WrittenHouse h = WrittenHouse.of(CRAWL);
    assertTrue(h.findRefused("top plate over eave wall/bay-1240").isPresent());
    Plan p = h.plan();
    assertEquals(List.of("crawlspace"), p.totals().zones());
    // Plate and subfloor from below: (4 + 2.5 + 2) x 1.6 + 2 = 15.6
    assertEquals(15.6, work(p, "eave wall/bottom-plate/1420/bore/crawlspace/main"), 1e-9);
    assertEquals(15.6, work(p, "middle/bottom-plate/1420/bore/crawlspace/main"), 1e-9);
    // Cabinet at 5 ft down to the plate's 38 mm: 1486 + 159.15 sideways, empty bay
    leg(p, "middle/bay-1240", 1.64515, 5 + 1.64515 * 1.2);
    // To the box at 16 in: 406.4 - 38 = 368.4, 18 across the bay, 101.6 along; faced batt 2.4
    leg(p, "eave wall/bay-1240", 0.488, 5 + 0.488 * 2.4);
    // two cut-outs, the zone, two bores, fish, 4.3244 m at 1.5, fish
    leg(p, "crawlspace/main", 4.3244, 4.3244 * 1.5);
    total(p, 10 + 10 + 25 + 15.6 + 15.6 + 6.97418 + 4.3244 * 1.5 + 6.1712);
  }

  @Test
  void theAtticWinsWhereTheHeelIsHighAndTheFloorIsASlab() {
    // Room over the plate's middle: 711.2 - 93.7 + 44.45/3 = 632 mm, more than the 330 needed.
    Plan p = WrittenHouse.of(SLAB_RAISED_HEEL).plan();
    assertEquals(List.of("attic"), p.totals().zones());
    assertEquals(15.5, work(p, "eave wall/top-plate/1420/bore/attic/roof over main"), 1e-9);
    // 96.5 in - 76 - 406.4 = 1968.7 down, 101.6 along
    leg(p, "eave wall/bay-1240", 2.0703, 5 + 2.0703 * 2.4);
    leg(p, "middle/bay-1240", 1.01025, 5 + 1.01025 * 1.2);
    leg(p, "attic/roof over main", 4.1302, 4.1302 * 0.9);
    total(p, 10 + 10 + 25 + 15.5 + 15.5 + 6.2123 + 4.1302 * 0.9 + 9.96872);
  }

  @Test
  void withoutTheCrawlspaceThePlanNamesTheEave() {
    WrittenHouse h = WrittenHouse.of(CRAWL);
    Plan p = h.plan("under-floor", "surface", "outside");
    assertEquals(1, p.unrouted().size());
    assertTrue(
        p.unrouted().get(0).whyNot().stream()
            .anyMatch(
                w ->
                    w.startsWith("top plate over eave wall/bay-1240: only 27 mm between plate")
                        && w.contains("D23")),
        p.unrouted()::toString);
  }
}
