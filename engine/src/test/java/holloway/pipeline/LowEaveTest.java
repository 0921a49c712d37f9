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
    // To the box at 16 in: 406.4 - 38 = 368.4, 18 across the bay, 159.15 along; faced batt 2.4
    leg(p, "eave wall/bay-1240", 0.54555, 5 + 0.54555 * 2.4);
    // 18.3 + 184.15 + 25 - 18.3 = 209.15 down and up. Lines lie every 50 mm from the middle of the
    // floor, 3048 east and (24 ft + 4.5 in) / 2 = 3714.75 north: 1398 east is 11.7 off the bores at
    // 1409.7, and 3750 on from wall to wall leaves 3.9. Sum 4195.6 at 1.5.
    leg(p, "crawlspace/main", 4.1956, 4.1956 * 1.5);
    // two cut-outs, the zone, two bores, fish, the crawlspace, fish
    total(p, 10 + 10 + 25 + 15.6 + 15.6 + 6.97418 + 4.1956 * 1.5 + 6.30932);
  }

  @Test
  void theAtticWinsWhereTheHeelIsHighAndTheFloorIsASlab() {
    // Room over the plate's middle: 711.2 - 93.7 + 44.45/3 = 632 mm, more than the 330 needed.
    Plan p = WrittenHouse.of(SLAB_RAISED_HEEL).plan();
    assertEquals(List.of("attic"), p.totals().zones());
    assertEquals(15.5, work(p, "eave wall/top-plate/1420/bore/attic/roof over main"), 1e-9);
    // 96.5 in - 76 - 406.4 = 1968.7 down, 159.15 along
    leg(p, "eave wall/bay-1240", 2.12785, 5 + 2.12785 * 2.4);
    leg(p, "middle/bay-1240", 1.01025, 5 + 1.01025 * 1.2);
    // Over the chords: 113.9 up and down, the same lines as under the floor, 21.9 at the end.
    leg(p, "attic/roof over main", 4.0231, 4.0231 * 0.9);
    total(p, 10 + 10 + 25 + 15.5 + 15.5 + 6.2123 + 4.0231 * 0.9 + 10.10684);
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
                    w.startsWith("top plate, main level, ")
                        && w.contains(": only 27 mm between plate")
                        && w.endsWith("(pitch and heel of the roof; tool room from experience)")),
        p.unrouted()::toString);
  }
}
