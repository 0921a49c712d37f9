package holloway.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Few steps whose visits can be told by thinking: a hole in an attic floor and a cable. */
class StepOrderTest {
  private static final WorkPlace ATTIC = new WorkPlace("attic", WorkPlace.Kind.ATTIC, "the attic");
  private static final WorkPlace ROOM = new WorkPlace("den", WorkPlace.Kind.ROOM, "the den");

  private static StepDraft step(Step.Kind kind, WorkPlace at) {
    return new StepDraft(kind.word(), kind, kind.word(), at).makes("done:" + kind.word());
  }

  private static WorkSchedule schedule(int crew, WorkPlace from, WorkPlace to) {
    Step drill = step(Step.Kind.DRILL, ATTIC).bring(Bring.bit(Bring.Item.WOOD_BIT, 22)).done();
    Step pull =
        step(Step.Kind.TERMINATE, from)
            .with(to)
            .needs("done:drill")
            .bring(Bring.of(Bring.Item.FISH_RODS))
            .bringOther(Bring.of(Bring.Item.CUTTERS))
            .done();
    Step seal =
        step(Step.Kind.SEAL, ATTIC)
            .needs("done:terminate")
            .bring(Bring.of(Bring.Item.FIRE_SEALANT))
            .done();
    return new StepOrder(List.of(seal, pull, drill), crew).schedule(List.of(), List.of());
  }

  /** Down to catch what was fed in above, and up again: nobody is at two places. */
  @Test
  void aloneOneGoesUpAgainToSeal() {
    WorkSchedule work = schedule(1, ATTIC, ROOM);
    assertEquals(List.of(), VisitReferee.faults(work));
    assertEquals(2, work.visits().size());
    assertEquals(2, work.visitsBound());
    assertEquals(List.of("drill", "terminate"), work.visits().get(0).steps());
    assertEquals(List.of("seal"), work.visits().get(1).steps());
    assertTrue(has(work.visits().get(0), Bring.Item.FISH_RODS));
    assertTrue(!has(work.visits().get(0), Bring.Item.FIRE_SEALANT), "carried up twice");
    assertTrue(has(work.visits().get(1), Bring.Item.FIRE_SEALANT));
  }

  /** The hole is bored, then the cable is pushed up from the room; only then is it caught above. */
  @Test
  void aloneOneCatchesAboveWhatWasPushedUpFromBelow() {
    WorkSchedule work = schedule(1, ROOM, ATTIC);
    assertEquals(List.of(), VisitReferee.faults(work));
    assertEquals(2, work.visits().size());
    assertEquals(List.of("drill"), work.visits().get(0).steps());
    assertEquals(List.of("terminate", "seal"), work.visits().get(1).steps());
    assertTrue(has(work.visits().get(1), Bring.Item.CUTTERS));
    assertTrue(!has(work.visits().get(1), Bring.Item.FISH_RODS), "they are below");
  }

  @Test
  void withASecondPersonOneGoesUpOnce() {
    for (WorkPlace from : List.of(ATTIC, ROOM)) {
      WorkSchedule work = schedule(2, from, from == ATTIC ? ROOM : ATTIC);
      assertEquals(List.of(), VisitReferee.faults(work));
      assertEquals(1, work.visits().size());
      assertEquals(List.of("drill", "terminate", "seal"), work.visits().get(0).steps());
    }
  }

  private static boolean has(Visit v, Bring.Item item) {
    return v.bring().stream().anyMatch(b -> b.item() == item);
  }
}
