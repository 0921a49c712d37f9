package holloway.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.InputTrouble;
import holloway.pipeline.Networks;
import holloway.pipeline.Networks.Designed;
import holloway.pipeline.Thoroughness;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NetworkFileTest {
  @TempDir Path folder;

  private Designed design(String name, String... lines) throws IOException {
    Path file = folder.resolve(name);
    Files.write(file, List.of(lines));
    return Networks.design(file, Thoroughness.QUICK);
  }

  /** Three terminals round a middle: the star costs 6, the triangle's two sides 8. */
  @Test
  void aTreeThroughAPlaceNobodyAskedFor() throws IOException {
    Designed d =
        design(
            "star.stp",
            "E 1 2 4",
            "E 2 3 4",
            "E 1 3 5",
            "E 1 4 2",
            "E 2 4 2",
            "E 3 4 2",
            "T 1",
            "T 2",
            "T 3");
    assertEquals(new Designed(6, 6, 0), d);
    assertTrue(d.proven());
  }

  /** The short way is against the arc. */
  @Test
  void anArcIsWalkedOneWay() throws IOException {
    Designed d = design("round.dow", "", "3 3 1", "2 1 1 9 1", "1 3 5 9 10", "3 2 5 9 10", "1 2 3");
    assertEquals(new Designed(2 * (3 * 5 + 10), 50, 0), d);
  }

  /** Both runs start where they start; turning one round would find a way. */
  @Test
  void whatHasNoWayForwardIsNotRouted() throws IOException {
    Designed d = design("back.dow", "", "2 1 2", "1 2 1 9 1", "1 2 3", "2 1 1");
    assertEquals(1, d.unrouted());
    assertEquals(3 + 1, d.cost());
  }

  /** Five units, an arc for three and a dear one for the rest: 3 + 2 x 9 and both fixed costs. */
  @Test
  void flowIsDividedWhereAnArcIsFull() throws IOException {
    Designed d = design("full.dow", "", "2 2 1", "1 2 1 3 10", "1 2 9 9 10", "1 2 5");
    assertEquals(3 + 2 * 9 + 20, d.cost());
    assertTrue(d.bound() <= d.cost());
  }

  @ParameterizedTest
  @CsvSource({"2, 3", "1, 2", "3, 4", "10, 11"})
  void anArcTakesWhatItSaysAndNoMore(int capacity, int wanted) throws IOException {
    String arc = "1 2 1 " + capacity + " 10";
    assertEquals(0, design("a.dow", "", "2 1 1", arc, "1 2 " + capacity).unrouted());
    Designed d = design("b.dow", "", "2 1 2", arc, "1 2 " + capacity, "1 2 1");
    assertEquals(wanted - capacity, d.unrouted());
  }

  /** Set "R" of the open fixed-charge designs, instance r01.1; optimum 74079 by a MIP solver. */
  @Test
  void theKnownOptimumIsFoundAndNoBoundIsOverIt() throws IOException {
    List<String> arcs = new ArrayList<>();
    List<String> flows = new ArrayList<>();
    try (InputStream in = NetworkFileTest.class.getResourceAsStream("/cases/flow/r01.txt")) {
      for (String l : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        if (l.startsWith("arc ")) {
          arcs.add(l.substring(4));
        } else if (l.startsWith("flow ")) {
          flows.add(l.substring(5));
        }
      }
    }
    List<String> lines = new ArrayList<>(List.of("", "10 " + arcs.size() + " " + flows.size()));
    lines.addAll(arcs);
    lines.addAll(flows);
    Designed d = design("r01.dow", lines.toArray(String[]::new));
    assertEquals(74079, d.cost());
    assertTrue(d.bound() <= 74079 && d.bound() > 0.99 * 74079, "bound " + d.bound());
  }

  @ParameterizedTest
  @CsvSource({
    "a.txt, E 1 2 3, the name has to end in .stp or .dow",
    "a.stp, E 1 2 x, line 1: 'x' is not a whole number",
    "a.stp, E 1 2, line 1: there are only 3 words",
    "a.stp, E 1 2 -4, line 1: -4 is not between",
    "a.stp, E 1 2 3, no line 'T node' names a terminal",
    "a.stp, T 7, terminal 7 is on no edge",
    "a.dow, E, line 2 has to be: nodes arcs commodities"
  })
  void whatIsWrongIsSaid(String name, String line, String says) {
    InputTrouble e = assertThrows(InputTrouble.class, () -> design(name, line));
    assertTrue(e.getMessage().startsWith(name + ": " + says), e.getMessage());
  }
}
