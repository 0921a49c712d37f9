package holloway.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Theme;
import holloway.pipeline.LiveHouse;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.view.Pictures;
import holloway.view.Ranch;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Stages of an answer, each thread stepped by hand: what is done on the person's own thread, what
 * is shown when, and what overtakes what.
 */
final class WorkTest {
  private final Queue<Runnable> sketching = new ArrayDeque<>();
  private final Queue<Runnable> judging = new ArrayDeque<>();
  private LiveHouse house;
  private Work work;
  private List<Plan.PlannedHole> holes;

  @BeforeEach
  void begin() {
    house = Ranch.live();
    work = new Work(house, Ranch.judged(), sketching::add, judging::add);
    holes = Ranch.judged().plan().holes();
  }

  private static void run(Queue<Runnable> all) {
    while (!all.isEmpty()) {
      all.poll().run();
    }
  }

  private static Change forbid(Plan.PlannedHole h) {
    return new Change.Forbid(h.id(), h.label());
  }

  private boolean has(Plan.PlannedHole h) {
    return work.plan().holes().stream().anyMatch(x -> x.id().equals(h.id()));
  }

  @Test
  void aChangeIsSketchedThenJudgedAndTheJudgedPlanIsThatWithoutStages() {
    work.change(forbid(holes.get(0)));
    assertFalse(work.poll(), "nothing is made on the person's own thread");
    assertTrue(work.isPlanning());
    run(sketching);
    assertTrue(work.poll());
    assertTrue(work.isSketch());
    assertFalse(has(holes.get(0)));
    assertEquals(List.of(), work.drawn().plan().findings());
    assertTrue(work.drawn().cards().isEmpty());
    Plan sketch = work.plan();
    run(judging);
    assertTrue(work.poll());
    assertFalse(work.isSketch());
    assertFalse(work.isPlanning());
    assertSame(sketch, work.replaced().orElseThrow());
    String plain = PlanJson.write(house.with(work.wanted()).judged().plan()).toString();
    assertEquals(plain, PlanJson.write(work.judged().plan()).toString());
  }

  @Test
  void aLaterChangeOvertakesTheJudgingOfAnEarlierOne() {
    work.change(forbid(holes.get(0)));
    run(sketching);
    work.poll();
    work.change(forbid(holes.get(1)));
    assertTrue(work.isSketch(), "what was sketched stays until there is more");
    run(judging);
    assertFalse(work.poll(), "nobody asks any more what the first one alone would cost");
    run(sketching);
    run(judging);
    assertTrue(work.poll());
    assertFalse(work.isSketch());
    assertFalse(has(holes.get(0)) || has(holes.get(1)));
    assertTrue(work.refusals().isEmpty());
  }

  @Test
  void whatWasJudgedComesBackAtOnce() {
    LiveHouse.Judged before = work.judged();
    work.change(forbid(holes.get(0)));
    run(sketching);
    run(judging);
    work.poll();
    LiveHouse.Judged after = work.judged();
    assertTrue(work.undo());
    assertTrue(work.poll());
    assertSame(before, work.judged());
    work.redo();
    work.poll();
    assertSame(after, work.judged());
    assertTrue(sketching.isEmpty() && judging.isEmpty(), "nothing was asked");
    assertFalse(work.isSketch() || work.isPlanning());
  }

  @Test
  void undoWhileASketchIsJudgedGoesBackToTheJudgedPlan() {
    work.change(forbid(holes.get(0)));
    run(sketching);
    work.poll();
    work.undo();
    assertTrue(work.poll());
    assertFalse(work.isSketch());
    assertSame(Ranch.judged(), work.judged());
    run(judging);
    assertFalse(work.poll(), "the answer to what was undone is not shown");
  }

  @Test
  void whatCannotBeIsTakenBackToTheChangeBeforeIt() {
    work.change(forbid(holes.get(0)));
    run(sketching);
    work.poll();
    String outlet = work.wanted().outlets().get(0).name();
    work.change(new Change.Slide(outlet, 100_000_000_000L));
    run(sketching);
    assertTrue(work.poll());
    assertEquals(1, work.changes().done().size());
    assertTrue(work.trouble().get(0).contains("is off the wall"), work.trouble()::toString);
    run(sketching);
    run(judging);
    work.poll();
    assertFalse(work.isSketch(), "the first change is judged after all");
    assertFalse(has(holes.get(0)));
  }

  @Test
  void aSlidOutletsWaysAreListedBesideAndOnce() {
    int before = house.derived();
    String outlet = work.wanted().outlets().get(1).name();
    work.change(new Change.Slide(outlet, 203_200_000));
    assertEquals(before, house.derived(), "not on the person's own thread");
    run(sketching);
    assertEquals(before + 1, house.derived());
    run(judging);
    work.poll();
    assertEquals(before + 1, house.derived());
    assertEquals(List.of(), work.trouble());
    assertFalse(work.isSketch());
  }

  @Test
  void aSketchIsNotPrinted() {
    work.change(forbid(holes.get(0)));
    run(sketching);
    work.poll();
    Pictures pictures = new Pictures(work.drawn());
    String level = pictures.model().storeys().get(0).name();
    Pictures.Paper paper =
        new Pictures.Paper(400, 300, Theme.LIGHT, (text, size, bold) -> text.length() * size);
    assertThrows(IllegalStateException.class, () -> pictures.level(level, paper));
    assertTrue(pictures.model().pins().stream().allMatch(p -> p.label().endsWith("?")));
  }
}
