package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A stud stands exactly where the desk's box is wanted: it may go to either side of it. */
@Feature("outlet exactly on a stud")
class OnAStudTest {
  /** The bays of the middle wall from west to east, whole ones only. */
  private static final List<Hollow> BAYS =
      WrittenHouse.of(ToyAttic.TEXT).hollows().hollows().stream()
          .filter(h -> h.kind() == HollowKind.STUD_BAY && h.owner().equals("middle"))
          .filter(h -> h.clear().x().length() > 300_000_000)
          .sorted(Comparator.comparingLong(h -> h.clear().x().mid()))
          .toList();

  private static long east(Hollow bay, long s) {
    return bay.frame().toWorld(s, 0, 0).x();
  }

  private static String mm(long nm) {
    return String.format(Locale.ROOT, "%.6f mm", nm / 1e6);
  }

  /** The cabinet in the middle of a bay, the desk on the stud between the fourth and the fifth. */
  private static Plan plan(Hollow cabinet, long aside) {
    long stud =
        (east(BAYS.get(4), BAYS.get(4).clear().x1()) + east(BAYS.get(5), BAYS.get(5).clear().x0()))
            / 2;
    return WrittenHouse.of(
            ToyAttic.TEXT
                .replace(
                    "from: west 4 ft", "from: west " + mm(east(cabinet, cabinet.clear().x().mid())))
                .replace("from: west 12 ft", "from: west " + mm(stud + aside)))
        .plan();
  }

  @Test
  void theBoxGoesToTheSideThatSavesTheHoles() {
    for (int side = 4; side <= 5; side++) {
      Plan p = plan(BAYS.get(side), 0);
      assertEquals(0, p.totals().holes(), () -> p.runs().toString());
      String way = WrittenHouse.way(p, "desk/cat6-1").toString();
      assertTrue(way.contains(BAYS.get(side).id()), way);
    }
  }

  @Test
  void aHairAsideItGoesToTheNearer() {
    // 0.1 mm to the west the eastern bay is the further one: from there the stud is bored.
    assertEquals(0, plan(BAYS.get(4), -100_000).totals().holes());
    assertEquals(1, plan(BAYS.get(5), -100_000).totals().holes());
  }
}
