package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** With free travel and one work an edge the problem is the Steiner tree problem. */
class SteinerTreeTest {
  /** Instances and optima: SteinLib, set B. */
  @ParameterizedTest
  @CsvSource({"b01, 82", "b04, 59", "b07, 111"})
  void costIsNearTheKnownOptimumAndTheBoundUnderIt(String name, long optimum) throws IOException {
    Solved s =
        JointPlanner.solve(graph(name).graph(), graph(name).order(), Budget.USUAL, Progress.SILENT);
    long units = optimum * SteinerCase.SCALE;
    long cost = s.plan().totals().objective();
    assertTrue(cost >= units, name + ": a tree of " + cost + " under the optimum");
    assertTrue(cost <= units * 1.03, name + ": " + cost + " for " + units);
    assertTrue(s.bound().bound() <= units, name + ": bound " + s.bound().bound());
    assertTrue(s.bound().bound() >= units * 0.97, name + ": weak bound " + s.bound().bound());
  }

  private static SteinerCase graph(String name) throws IOException {
    try (InputStream in =
        SteinerTreeTest.class.getResourceAsStream("/cases/steiner/" + name + ".txt")) {
      return SteinerCase.parse(
          new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
    }
  }
}
