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
 * From the garage cabinet up a boxed-in vent of the office into the attic and down an inner wall to
 * the desk, with nothing in sight; each leg, bore and price added up by hand from the effort table.
 *
 * <p>Heights: garage ceiling 97 in = 2463.8 mm less 1/8 in, as a garage under rooms has 5/8 in of
 * board (C3-9) under joists at 2476.5 mm; office floor 2476.5 + 234.95 + 18.3 = 2729.75 mm; its
 * ceiling 8 ft on, 5168.15 mm; plates under the attic 1/2 in on, 5180.85 mm; chords to 5269.75.
 */
class GarageToOfficeTest {
  private static final String HOUSE =
      TwoStoreys.with(
          "beside: garage north", "beside: office north", "from: ground", "from: upper");

  private static final Plan PLAN = WrittenHouse.of(HOUSE).plan("surface");

  @Test
  void theWayIsTheOneAPersonWouldName() {
    assertEquals(
        List.of(
            "garage/surface",
            "chase/shaft/floor-upper",
            "chase/shaft/upper",
            "chase/shaft/way-attic",
            "attic/roof over upper",
            "high wall/top-plate/2040",
            "high wall/bay-1860"),
        WrittenHouse.way(PLAN, "desk/cat6-1"));
  }

  @Test
  void twoHolesAndWhoMakesThem() {
    assertEquals(2, PLAN.totals().holes());
    assertEquals(
        List.of("from the garage", "from the attic"),
        PLAN.holes().stream().map(Plan.PlannedHole::method).toList());
    // One cat6 of 6.1 mm: the smallest bit, 13 mm (E7).
    assertTrue(PLAN.holes().stream().allMatch(h -> h.diameterMm() == 13));
    // Board and subfloor in one stroke: set-up 4, board 1, void 1, subfloor 2, times 1.0; seal 2.
    assertEquals(10.0, work(PLAN, "chase/shaft/floor-upper/bore/room/garage"), 1e-9);
    // Two plies: (4 + 2 x 2.5) x 1.5 in the attic, seal 2.
    assertEquals(15.5, work(PLAN, "high wall/top-plate/2040/bore/attic/roof over upper"), 1e-9);
  }

  @Test
  void eachLegByHand() {
    // Cabinet at y = 4 ft, z = 5 ft, on the east wall (12 mm off it). Up to the line 40 mm under
    // the ceiling, 2460.625 - 40: 896.625; north to 12 mm off the wall, 3645.6 - 1219.2 = 2426.4;
    // west to the shaft's first free spot, 30 mm from its west side (48 in): 3645.6 - 1249.2 =
    // 2396.4; up 28 and 12, and 212 out from the wall: to y = 3433.6, 30 mm into the shaft
    // (144 - 10 in = 3403.6).  Sum 5971.425 mm at 2 min a metre of plain wall.
    leg(PLAN, "garage/surface", 5.971425, 5.971425 * 2);
    // Floor to ceiling of the office: 8 ft = 2438.4 mm at 1.0 a metre, and 5 to set up.
    leg(PLAN, "chase/shaft/upper", 2.4384, 5 + 2.4384);
    // Over the chords (+25 mm): up and down 113.9 each. Lines are laid every 50 mm from the attic's
    // middle, 288 in / 2 = 3657.6 east and 144 in / 2 = 1828.8 north: 3428.8 and 2028.8 north,
    // 3707.6 east. 4.8 + 2458.4 + 1400 + 7.15 + 3.2 = 3873.55; sum 4101.35 mm at 0.9 a metre.
    // The desk is wanted on a stud: of the bays beside it the one nearer to the chase is taken.
    leg(PLAN, "attic/roof over upper", 4.10135, 4.10135 * 0.9);
    // Plate's underside to the box: 96.5 in - 76 - 406.4 = 1968.7 mm and 159.15 sideways, from the
    // middle of the bay to 25 mm from its stud; 1.2 a metre, and 5.
    leg(PLAN, "high wall/bay-1860", 2.12785, 5 + 2.12785 * 1.2);
  }

  @Test
  void theSum() {
    // cut-out 10, attic set up 25, bores 10 + 15.5, legs 11.943 + 7.438 + 3.691 + 7.553
    total(PLAN, 10 + 25 + 10 + 15.5 + 11.94285 + 7.4384 + 3.691215 + 7.55342);
    assertEquals(List.of("attic"), PLAN.totals().zones());
    assertEquals(14.99685, PLAN.totals().routeM(), 0.0005);
  }

  @Test
  void aShaftThatTheCeilingClosesAsksForOneBoreMore() {
    Plan p = WrittenHouse.of(HOUSE.replace("attic: open", "attic: closed")).plan("surface");
    assertEquals(3, p.totals().holes());
    // (4 + board 1) x 1.5 + 2 = 9.5
    assertEquals(9.5, work(p, "chase/shaft/cap-attic/bore/attic/roof over upper"), 1e-9);
    total(p, 91.125885 + 9.5);
  }

  @Test
  void withSurfaceAllowedTheShortWayUpIsBetter() {
    // One board, one joist bay, one floor, and half a metre of trunking at 4 + 30 min a metre.
    Plan p = WrittenHouse.of(HOUSE).plan();
    assertEquals(2, p.totals().holes());
    // board (4 + 1) x 1 + 2 = 7; floor (4 + 2) x 1 + 2 = 8
    double works = 10 + 7 + 8;
    double legs = 1.512625 * 2 + 5 + 0.35655 * 1.2 + 0.4544 * 34;
    total(p, works + legs);
  }
}
