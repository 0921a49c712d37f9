package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.request.Request;
import holloway.request.Wishes;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
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

  /** Every hole of the plan forbidden in turn, every outlet slid. */
  @Test
  void aSketchLeavesAllOthersWhereTheyAreAndTheRefereeAgrees() {
    for (Plan.PlannedHole h : first.plan().holes()) {
      LiveHouse.Sketched sketch = first.sketch(without(first.request(), h.id()));
      assertEquals(new java.util.TreeSet<>(h.runs()), sketch.touched(), h.id());
      sound(sketch);
      assertTrue(sketch.plan().holes().stream().noneMatch(x -> x.id().equals(h.id())));
    }
    for (int o = 0; o < first.request().outlets().size(); o++) {
      String name = first.request().outlets().get(o).name();
      Request slid = SlidEndsTest.slid(first.request(), o, 101_600_000);
      if (slid.equals(first.request())) {
        continue; // on a ceiling
      }
      LiveHouse.Sketched sketch = first.sketch(slid);
      // Lines that cable is laid along in a crawlspace go by all that enters it: others may move.
      first.plan().runs().stream()
          .filter(r -> r.to().equals(name))
          .forEach(r -> assertTrue(sketch.touched().contains(r.id()), r.id()));
      sound(sketch);
    }
  }

  private static void sound(LiveHouse.Sketched s) {
    assertEquals(List.of(), s.plan().unrouted());
    assertTrue(s.plan().holes().stream().allMatch(h -> h.label().matches("H\\d+\\?")));
    assertFalse(s.drawn().judged());
    assertEquals(0, s.plan().totals().bound(), "nothing is proven");
    for (Plan.PlannedRun r : first.plan().runs()) {
      boolean same = ids(r).equals(ids(run(s.plan(), r.id())));
      assertTrue(same || s.touched().contains(r.id()), r.id());
    }
    assertEquals(
        List.of(),
        Referee.check(s.plan(), s.drawn().hollows(), s.drawn().request()).refusals().stream()
            .map(Object::toString)
            // The rules have not looked yet, so nothing can have asked for a nail plate.
            .filter(r -> !r.contains("no finding asks"))
            .toList());
  }

  private static Plan.PlannedRun run(Plan p, String id) {
    return p.runs().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<String> ids(Plan.PlannedRun r) {
    return r.steps().stream().map(Plan.PlanStep::id).toList();
  }

  @Test
  void theAnswerHangsNeitherOnASketchNorOnBeingWatched() {
    Request slid = SlidEndsTest.slid(first.request(), 0, 101_600_000);
    LiveHouse anew = LiveHouse.open(FILE, Progress.SILENT);
    LiveHouse.Judged plain = anew.with(slid).judged();
    LiveHouse other = LiveHouse.open(FILE, Progress.SILENT);
    other.sketch(slid);
    LiveHouse.Judged staged = other.with(slid, () -> false).judged();
    assertEquals(PlanJson.write(plain.plan()), PlanJson.write(staged.plan()));
    assertEquals(1, other.derived(), "the sketch's ways serve the plan too");
  }

  /**
   * Slid to and fro, another one slid, and a hole forbidden where the slid one then stands: the
   * sketch is that of a house that was never asked anything else.
   */
  @Test
  void aSketchHangsOnNothingThatWasAskedBefore() {
    Request there = SlidEndsTest.slid(first.request(), 0, 101_600_000);
    first.sketch(there);
    first.sketch(SlidEndsTest.slid(there, 0, 50_800_000));
    first.sketch(first.request());
    first.sketch(SlidEndsTest.slid(first.request(), 1, -101_600_000));
    Plan slid = first.sketch(there).plan();
    Request forbidden = without(there, slid.holes().get(0).id());
    Plan is = first.sketch(forbidden).plan();
    LiveHouse anew = LiveHouse.open(FILE, Progress.SILENT);
    assertEquals(PlanJson.write(anew.sketch(forbidden).plan()), PlanJson.write(is));
    assertEquals(PlanJson.write(anew.sketch(there).plan()), PlanJson.write(slid));
    assertEquals(
        PlanJson.write(anew.sketch(anew.request()).plan()),
        PlanJson.write(first.sketch(first.request()).plan()));
  }

  @Test
  void aSearchThatNobodyWaitsForIsGivenUp() {
    Request wanted = without(first.request(), first.plan().holes().get(1).id());
    assertThrows(CancellationException.class, () -> first.with(wanted, () -> true));
  }
}
