package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.schedule.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A step that is about one cable says which. */
class StepNamesTest {
  private static final String PAGE =
      PackedHouse.paper(Language.ENGLISH, PaperSize.A4)
          .replaceAll("<[^>]*>", " ")
          .replaceAll("\\s+", " ");

  @Test
  void aTestNamesItsRun() {
    List<Step> tests = steps(Step.Kind.TEST);
    assertFalse(tests.isEmpty());
    tests.forEach(s -> assertSays(s.kind(), s.subject()));
  }

  /** A ready-made lead is no cable off a box: it is marked by its run's name. */
  @Test
  void whatIsMarkedHasItsBoxOrItsRun() {
    List<Step> marks = steps(Step.Kind.MARK);
    assertFalse(marks.isEmpty());
    marks.forEach(s -> assertSays(s.kind(), s.subject()));
  }

  private static void assertSays(Step.Kind kind, String subject) {
    String said = Language.ENGLISH.texts().get("step." + kind.word()) + " " + subject;
    assertTrue(PAGE.contains(said), () -> "nowhere: " + said);
  }

  private static List<Step> steps(Step.Kind kind) {
    return PackedHouse.get().work().steps().stream().filter(s -> s.kind() == kind).toList();
  }
}
