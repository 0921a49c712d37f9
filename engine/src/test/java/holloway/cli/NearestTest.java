package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {
  private static final List<String> WORDS = List.of("plan", "compare", "check", "routes");

  @Test
  void slipsOfTheFingersAreFound() {
    assertEquals(Optional.of("plan"), Nearest.of("plna", WORDS));
    assertEquals(Optional.of("compare"), Nearest.of("compair", WORDS));
    assertEquals(Optional.of("routes"), Nearest.of("route", WORDS));
    assertEquals(Optional.of("check"), Nearest.of("chek", WORDS));
  }

  @Test
  void anotherWordIsNotForced() {
    assertEquals(Optional.empty(), Nearest.of("drill everything", WORDS));
    assertEquals(Optional.empty(), Nearest.of("xyz", List.of()));
  }
}
