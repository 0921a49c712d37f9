package holloway.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Mark;
import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is written in pictures of a sample; nothing is drawn for it. */
class TextsInPicturesTest {
  private static final Pictures.Paper PAPER =
      new Pictures.Paper(1600, 1000, Theme.DUSK, (t, s, b) -> t.length() * s / 2);

  private static List<String> words(Sheet s) {
    return s.over().stream()
        .filter(m -> m instanceof Mark.Word)
        .map(m -> ((Mark.Word) m).text())
        .toList();
  }

  private static List<String> slice(int axis, float at) {
    return words(Ranch.pictures().slice(new Slice(axis, at, 0.3f), PAPER));
  }

  /** Who cuts the cable by the picture must not cut it too short. */
  @Test
  void aRunSaysWhatToCutAndNotOnlyItsWay() {
    Pictures p = Ranch.pictures();
    for (Plan.PlannedRun r : Ranch.judged().plan().runs()) {
      String way = p.model().findCable(r.id()).orElseThrow().length();
      String title = "way " + way + ", cut length " + p.words().cut(r);
      List<String> all = words(p.run(r.id(), PAPER).orElseThrow());
      assertTrue(all.stream().anyMatch(w -> w.startsWith(title)), title + ": " + all);
      assertTrue(r.cableM() > r.routeM(), r.id());
    }
  }

  /** The garage's is the lowest floor, 2 ft 6 in under the kitchen's, which is 8 ft high. */
  @Test
  void aLevelSliceNamesRoomsAtAnyHeightOfThem() {
    float floor = 0.762f;
    assertFalse(slice(2, floor - 0.1f).contains("kitchen"), "under the floor");
    for (float up : new float[] {0.5f, 1.2f, 2.0f}) {
      assertTrue(slice(2, floor + up).contains("kitchen"), up + " over the floor");
    }
    assertFalse(slice(2, floor + 3.2f).contains("kitchen"), "over the ceiling");
  }

  /** Beside the house there is no storey to measure. */
  @Test
  void heightsStandOnlyWhereThereIsAStorey() {
    assertEquals(1, slice(0, 5).stream().filter("8 ft"::equals).count());
    assertEquals(0, slice(0, -5).stream().filter("8 ft"::equals).count());
  }

  @Test
  void aRunNamesTheRoomsItPasses() {
    Pictures p = Ranch.pictures();
    List<String> all = words(p.run("west desk/cat6-1", PAPER).orElseThrow());
    assertTrue(all.contains("laundry"), all.toString());
    assertFalse(all.contains("family room"), "at the other end of the house");
  }
}
