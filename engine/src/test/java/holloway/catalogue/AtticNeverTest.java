package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who will not go into the attic gets another way, and no set-up of it. */
@Feature("attic left alone")
class AtticNeverTest {
  @Test
  void theAtticIsTakenUnlessItIsNever() {
    Plan mild = WrittenHouse.of(ToyAttic.TEXT).plan();
    assertEquals(List.of("attic"), mild.totals().zones());
    Plan summer = WrittenHouse.of(ToyAttic.TEXT + "wishes: { attic: summer }\n").plan();
    // 15 minutes more for an attic in summer, the same way
    assertEquals(150_000, summer.totals().objective() - mild.totals().objective());
    Plan never = WrittenHouse.of(ToyAttic.TEXT + "wishes: { attic: never }\n").plan();
    assertEquals(List.of(), never.totals().zones());
    assertEquals(List.of(), never.unrouted());
    assertTrue(never.totals().objective() > mild.totals().objective());
  }
}
