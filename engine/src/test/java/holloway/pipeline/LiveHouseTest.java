package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.request.Request;
import holloway.request.Wishes;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A house that is asked again: the plans are those that {@code plan} would find, and sound. */
final class LiveHouseTest {
  private static final Path FILE = Path.of("..", "samples", "quince-ranch.yaml");
  private static LiveHouse first;

  @BeforeAll
  static void open() {
    first = LiveHouse.open(FILE, Progress.SILENT);
  }

  private static Request without(Request r, String word) {
    Wishes w = r.wishes();
    List<String> bans = new ArrayList<>(w.bans());
    bans.add(word);
    return r.with(
        new Wishes(
            w.hourIsWorth(), w.visibleMetre(), w.attic(), w.avoid(), bans, w.profile(), w.crew()));
  }

  @Test
  void theFirstPlanIsThatOfTheCommand() {
    Plan plan = new Pipeline(Progress.SILENT).plan(FILE, PlanSettings.USUAL).plan();
    LiveHouse.Judged live = first.judged();
    assertEquals(plan.totals().objective(), live.plan().totals().objective());
    assertTrue(live.plan().totals().bound() <= plan.totals().objective());
    assertEquals(plan.runs(), live.plan().runs());
    assertEquals(plan.holes(), live.plan().holes());
    assertEquals(plan.findings(), live.plan().findings());
    assertEquals(plan.materials(), live.plan().materials());
    assertEquals(plan.inputs(), live.plan().inputs());
    assertEquals(plan.totals().money(), live.plan().totals().money());
    assertEquals(List.of(), live.refusals());
  }

  @Test
  void aForbiddenHoleIsGoneAndTheRefereeAgrees() {
    String hole = first.plan().holes().get(0).id();
    LiveHouse next = first.with(without(first.request(), hole));
    LiveHouse.Judged judged = next.judged();
    assertTrue(judged.plan().holes().stream().noneMatch(h -> h.id().equals(hole)));
    assertTrue(judged.plan().totals().objective() >= first.plan().totals().bound());
    assertEquals(List.of(), judged.refusals());
    assertFalse(first.plan().holes().stream().noneMatch(h -> h.id().equals(hole)));
  }

  @Test
  void whatIsUndoneIsThePlanOfBefore() {
    String hole = first.plan().holes().get(0).id();
    LiveHouse back = first.with(without(first.request(), hole)).with(first.request());
    assertEquals(first.plan(), back.plan());
  }

  @Test
  void theSameWantsAreTheSameHouse() {
    assertEquals(first, first.with(first.request()));
  }
}
