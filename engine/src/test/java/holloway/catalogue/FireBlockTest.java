package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import org.junit.jupiter.api.Test;

/** A block across the bays at 4 ft: the way up from the desk must get through it. */
@Feature("fire block")
class FireBlockTest {
  @Test
  void theBlockIsBoredOrGoneRoundAtAPrice() {
    Plan free = WrittenHouse.of(ToyAttic.TEXT).plan();
    WrittenHouse blocked =
        WrittenHouse.of(ToyAttic.TEXT.replace("name: middle", "name: middle, blocks-at: [4 ft]"));
    Plan p = blocked.plan();
    assertEquals(0, p.unrouted().size());
    // Nothing passes a block unbored, so the same way costs more.
    assertTrue(p.totals().objective() > free.totals().objective());
    boolean bored = p.holes().stream().anyMatch(h -> h.kind().equals("fire block"));
    boolean round =
        WrittenHouse.way(p, "desk/cat6-1").stream().noneMatch(s -> s.startsWith("attic/"));
    assertTrue(bored || round, p.holes()::toString);
  }
}
