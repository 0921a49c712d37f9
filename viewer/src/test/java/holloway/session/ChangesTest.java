package holloway.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ChangesTest {
  private static final Change A = new Change.Forbid("a", "H1");
  private static final Change B = new Change.Forbid("b", "H2");
  private static final Change C = new Change.Unpin("run");

  @Test
  void undoneChangesComeBackInTheirOrder() {
    Changes two = Changes.NONE.then(A).then(B);
    Changes none = two.undo().orElseThrow().undo().orElseThrow();
    assertEquals(List.of(), none.done());
    assertEquals(List.of(A), none.redo().orElseThrow().done());
    assertEquals(two, none.redo().orElseThrow().redo().orElseThrow());
  }

  @Test
  void aNewChangeForgetsWhatWasUndone() {
    Changes next = Changes.NONE.then(A).then(B).undo().orElseThrow().then(C);
    assertEquals(List.of(A, C), next.done());
    assertTrue(next.redo().isEmpty());
  }

  /** 101.6 mm are 4 in. */
  @Test
  void aSlideIsSaidInTheUnitsOfTheHouse() {
    Change slide = new Change.Slide("television", -101_600_000);
    String us = slide.says(UnitSystem.FT_IN);
    assertEquals("slide television by 4 in towards the end it is taped from", us);
    assertTrue(slide.says(UnitSystem.METRIC).contains(" 102 mm "), slide.says(UnitSystem.METRIC));
  }

  @Test
  void thereIsNothingToUndoAtFirst() {
    assertTrue(Changes.NONE.undo().isEmpty());
    assertTrue(Changes.NONE.redo().isEmpty());
  }
}
