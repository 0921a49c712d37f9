package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cables that go the same way share a hole; the bit grows with them (E7, A6-1). */
@Feature("hole shared by several cables")
class SharedHoleTest {
  private static List<Integer> bits(String cables) {
    Plan p = WrittenHouse.of(ToyAttic.TEXT.replace("cables: [cat6]", "cables: " + cables)).plan();
    return p.holes().stream().map(Plan.PlannedHole::diameterMm).distinct().toList();
  }

  @Test
  void theBitForOneTwoAndThreeCables() {
    // cat6 of 6.1 mm: 29.2 mm2 each. One may fill 53 %: 13 mm (132.7 mm2) takes 70.3.
    assertEquals(List.of(13), bits("[cat6]"));
    // Two may fill 31 %: 58.4 / 0.31 = 188.5 mm2; 13 mm is 132.7, 16 mm is 201.1.
    assertEquals(List.of(16), bits("[cat6, cat6]"));
    // Three may fill 40 %: 87.7 / 0.40 = 219.2 mm2; 16 mm is 201.1, 19 mm is 283.5.
    assertEquals(List.of(19), bits("[cat6, cat6, cat6]"));
  }

  @Test
  void theSecondCablePaysNoSecondSetUp() {
    Plan one = WrittenHouse.of(ToyAttic.TEXT).plan();
    Plan two =
        WrittenHouse.of(ToyAttic.TEXT.replace("cables: [cat6]", "cables: [cat6, cat6]")).plan();
    // The legs again and two bits one size wider, 0.5 each. The bays are fished, 6.2123 and
    // 7.55342.
    // In the attic cable lies 25 mm over the chords of 88.9 on the ceiling: from the plates' top
    // 113.9 up and down again; the holes are 6 bays of 16 in, 2438.4, apart, and the
    // attic's lines stand every 50 mm from its end at -102: the one at 1398 is 11.7 from the first
    // hole, at 1409.7, there and back:
    // 2 x 113.9 + 2438.4 + 2 x 11.7 = 2689.6, at 0.9 a metre; in all 16.1863.
    assertEquals(16.1863 + 2 * 0.5, two.totals().minutes() - one.totals().minutes(), 0.002);
    assertEquals(one.totals().holes(), two.totals().holes());
  }
}
