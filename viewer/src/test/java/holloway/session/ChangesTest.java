package holloway.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

  @Test
  void thereIsNothingToUndoAtFirst() {
    assertTrue(Changes.NONE.undo().isEmpty());
    assertTrue(Changes.NONE.redo().isEmpty());
  }
}
