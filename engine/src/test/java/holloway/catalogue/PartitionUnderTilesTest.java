package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.LoweredNotesView;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A partition that ends just over two lowered ceilings: the void runs on over it, so that no hole
 * is bored there.
 */
@Feature("partition that stops short of the ceiling")
class PartitionUnderTilesTest {
  /** Tiles at 9 ft less 10 in; the wall ends at 8 ft 6 in and leaves 6 in over it. */
  private static final String SHORT =
      PartitionOverTilesTest.HOUSE
          .replace("DROP", "10 in")
          .replace("name: far, studs", "name: far, height: 8 ft 6 in, studs");

  private static final String WHOLE = SHORT.replace(" height: 8 ft 6 in,", "");

  private static boolean overTheWall(Plan.PlanStep s) {
    return s.id().startsWith("far/over-the-top/");
  }

  /** Out of the store and into the desk's bay: two holes, where a whole wall asks for three. */
  @Test
  void theVoidRunsOnOverIt() {
    WrittenHouse house = WrittenHouse.of(SHORT);
    Plan p = house.plan("surface", "outside");
    assertEquals(List.of(), p.unrouted());
    assertEquals(2, p.totals().holes(), p.holes()::toString);
    List<Plan.PlanStep> over =
        p.runs().get(0).steps().stream().filter(s -> overTheWall(s)).toList();
    assertEquals(1, over.size(), p.runs()::toString);
    // between the wall's top, 8 ft 6 in, and the ceiling at 9 ft
    long z = over.get(0).path().get(0).z();
    assertTrue(z > 2_590_800_000L && z < 2_743_200_000L, () -> "at " + z);
    assertEquals("[]", Spoiled.refused(p, house));
    assertEquals(3, WrittenHouse.of(WHOLE).plan("surface", "outside").totals().holes());
  }

  /** 8 ft 11 in leaves 1 in: less than a hand passes a cable through. */
  @Test
  void aSlitOverItIsNoWay() {
    Plan p = WrittenHouse.of(SHORT.replace("8 ft 6 in,", "8 ft 11 in,")).plan("surface", "outside");
    assertTrue(p.runs().stream().flatMap(r -> r.steps().stream()).noneMatch(s -> overTheWall(s)));
  }

  /** The referee puts the wall's stated top and both ceilings against where the cable goes. */
  @Test
  void theRefereeMeasuresTheTop() {
    Plan p = WrittenHouse.of(SHORT).plan("surface", "outside");
    String whole = Spoiled.refused(p, WrittenHouse.of(WHOLE));
    assertTrue(whole.contains("the wall there goes on up to the ceiling"), whole);
    String higher = Spoiled.refused(p, WrittenHouse.of(SHORT.replace("8 ft 6 in,", "8 ft 11 in,")));
    assertTrue(higher.contains("over the floor, as high as the wall there"), higher);
  }

  @Test
  void checkDoesNotTakeItToGoOnUp() {
    assertEquals(List.of(), LoweredNotesView.of(WrittenHouse.of(SHORT).placed()));
    assertEquals(1, LoweredNotesView.of(WrittenHouse.of(WHOLE).placed()).size());
    assertEquals(
        Set.of(), Set.copyOf(WrittenHouse.of(SHORT).plan("surface", "outside").unrouted()));
  }
}
