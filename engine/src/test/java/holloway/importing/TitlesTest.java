package holloway.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TitlesTest {
  @Test
  void namesAreMadeFitAndUnique() {
    Titles t = new Titles("attic");
    assertEquals("Ground 1", t.unique(" Ground/1\n", "", "level"));
    assertEquals("Ground 1 B", t.unique("Ground 1", "B", "level"));
    assertEquals("Ground 1 (2)", t.unique("Ground 1", "", "level"));
    assertEquals("Ground 1 (3)", t.unique("Ground 1", "", "level"));
    assertEquals("attic (2)", t.unique("attic", "", "level"));
    assertEquals("level", t.unique("/\\", "", "level"));
    String longest = t.unique("x".repeat(200), "y".repeat(200), "level");
    assertTrue(longest.length() <= 60, longest);
    assertTrue(t.unique("x".repeat(200), "y".repeat(200), "level").length() <= 60);
    assertEquals("Küche", t.unique("Küche\u0000\u2028\ud800", "", "level"));
  }
}
