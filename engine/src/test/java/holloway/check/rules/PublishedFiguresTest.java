package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.limits.Figure;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Published figures, each at its limit and just past it. The row's id is that of the list of facts;
 * its source stands beside the figure in the sheets of {@code limits}. Grades A and B were seen, D
 * is arithmetic on them.
 */
class PublishedFiguresTest {
  private static final String FILE = "/holloway/published-figures.csv";

  @ParameterizedTest(name = "{0} {2}")
  @CsvFileSource(resources = FILE, delimiter = ';', numLinesToSkip = 1)
  void theFigureHoldsAtItsLimitAndNotPastIt(
      String id, String grade, String published, String kind, String args, double at, double past) {
    PublishedLimit limit = new PublishedLimit(kind, args == null ? "" : args);
    assertTrue(limit.allows(at), id + ": " + published + ", at " + at);
    assertFalse(limit.allows(past), id + ": " + published + ", past it: " + past);
  }

  /** Kinds of row that ask a sheet of figures; the others ask what decides, or reckons. */
  private static final Set<String> SHEET = Set.of("most", "least", "newtons");

  private static List<String[]> rows() throws IOException {
    try (InputStream in = PublishedFiguresTest.class.getResourceAsStream(FILE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(l -> l.split(";"))
          .toList();
    }
  }

  /** No row twice in other words: what is asked, of what, and where it is past. */
  @Test
  void moreThan120AreAskedOfWhatDecides() throws IOException {
    Set<String> asked = new TreeSet<>();
    int decided = 0;
    for (String[] c : rows()) {
      assertTrue(Set.of("A", "B", "D").contains(c[1]), c[0] + " is of grade " + c[1]);
      assertTrue(asked.add(c[3] + ";" + c[4] + ";" + c[5]), "asked twice: " + c[2]);
      decided += SHEET.contains(c[3]) ? 0 : 1;
    }
    assertTrue(decided >= 120, "only " + decided + " ask what decides");
    System.out.printf("published figures: %d, %d of them of what decides%n", asked.size(), decided);
  }

  /** Just past: a hundredth, of the figure or of its unit; one more of what is counted. */
  @Test
  void pastIsJustPast() throws IOException {
    for (String[] c : rows()) {
      double at = Double.parseDouble(c[5]);
      double off = Math.abs(Double.parseDouble(c[6]) - at);
      boolean counted = at == Math.rint(at) && off == 1;
      assertTrue(counted || off <= Math.max(0.0101, 0.0101 * at), c[2] + ": off by " + off);
    }
  }

  /** A row of a sheet is of that figure's own id, and the figure was not remembered only. */
  @Test
  void noFigureFromMemoryIsAnOracle() throws IOException {
    for (String[] c : rows()) {
      if (SHEET.contains(c[3])) {
        Figure f = PublishedLimit.figure(c[4].split(" ")[0]);
        assertEquals(c[0], f.id(), c[2]);
        assertEquals(c[1], f.grade().name(), c[2]);
      }
    }
  }
}
