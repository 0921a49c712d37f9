package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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

  @Test
  void thereAreAtLeast120AndNoneIsFromMemory() throws IOException {
    Set<String> distinct = new TreeSet<>();
    try (InputStream in = getClass().getResourceAsStream(FILE)) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(l -> l.split(";"))
          .forEach(
              c -> {
                assertTrue(Set.of("A", "B", "D").contains(c[1]), c[0] + " is of grade " + c[1]);
                distinct.add(c[0] + c[2]);
              });
    }
    assertTrue(distinct.size() >= 120, "only " + distinct.size());
  }
}
