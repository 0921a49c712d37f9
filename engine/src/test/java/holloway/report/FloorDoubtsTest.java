package holloway.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whoever bores up or down past joists that nobody has found is told to find them first. */
class FloorDoubtsTest {
  private static List<String> lines(String... changes) {
    WrittenHouse house = WrittenHouse.of(TwoStoreys.with(changes));
    Plan plan = house.plan("outside");
    assertTrue(plan.unrouted().isEmpty() && !plan.holes().isEmpty(), plan.unrouted()::toString);
    return FloorDoubts.lines(plan, house.placed());
  }

  /** From the garage up through ceiling and floor, between joists 16 in apart. */
  @Test
  void aFloorWhoseJoistsNobodyFound() {
    List<String> said = lines(", from: south 16 in", "");
    assertEquals(1, said.size(), said::toString);
    assertTrue(
        said.get(0).startsWith("H1, H2: where the joists of the upper floor lie is assumed."),
        said.get(0));
  }

  @Test
  void nothingWhereOneWasFound() {
    assertEquals(List.of(), lines());
  }

  /** A box in the garage's ceiling hangs on them too, with no hole of its own. */
  @Test
  void aBoxBetweenThem() {
    List<String> said =
        lines(
            ", from: south 16 in",
            "",
            "in: office, wall: east, from: south 6 ft, height: 16 in",
            "in: den, ceiling: [west 5 ft, south 6 ft]");
    assertTrue(said.stream().anyMatch(l -> l.contains("desk: where the joists")), said::toString);
  }
}
