package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.pipeline.TwoStoreys;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The dearest effort table that is read: every price far from what sums overflow at and from what
 * means "cannot be had", in both profiles that add them up, with a proof that the checker accepts.
 */
class DearestHouseTest {
  @TempDir Path folder;

  private Path house(int minutes, int factor) throws Exception {
    String defaults;
    try (var in =
        DearestHouseTest.class.getResourceAsStream("/holloway/request/effort-default.yaml")) {
      defaults = new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    }
    Map<String, Integer> table = new TreeMap<>();
    defaults
        .lines()
        .filter(l -> l.matches("[a-z].*: *\\d.*"))
        .map(l -> l.substring(0, l.indexOf(':')))
        .forEach(k -> table.put(k, k.endsWith("factor") ? factor : minutes));
    assertTrue(table.size() > 50, table::toString);
    StringBuilder text = new StringBuilder();
    table.forEach((k, v) -> text.append(k).append(": ").append(v).append('\n'));
    Files.writeString(folder.resolve("dear.yaml"), text);
    String many = String.join(", ", Collections.nCopies(4, "cat6"));
    return Files.writeString(
        folder.resolve("house.yaml"),
        TwoStoreys.with("cables: [cat6]", "cables: [" + many + "]")
            + "effort: dear.yaml\nwishes: { visible-metre: 10000 h }\n");
  }

  @Test
  void isPlannedAndProvenAsAnyOther() throws Exception {
    String file = house(10_000, 10).toString();
    for (String profile : new String[] {"least-work", "fewest-holes"}) {
      Said said =
          Said.whole(
              "plan", file, "--effort", "quick", "--profile", profile, "--json", "--certificate");
      assertEquals(0, said.code(), profile + said.err());
      JsonNode plan = new ObjectMapper().readTree(said.out());
      assertEquals(4, plan.get("runs").size(), profile);
      assertEquals(0, plan.get("unrouted").size(), profile);
      long bound = plan.at("/totals/bound").asLong();
      assertTrue(bound > 0 && bound <= plan.at("/totals/objective").asLong(), profile + bound);
    }
  }

  @Test
  void dearerIsRefusedWithItsLine() throws Exception {
    Said minutes = Said.whole("plan", house(10_001, 1).toString());
    assertEquals(3, minutes.code());
    assertTrue(minutes.err().contains("dear.yaml:1:"), minutes.err());
    assertTrue(minutes.err().contains("10000 at most"), minutes.err());
    assertTrue(Said.whole("plan", house(1, 11).toString()).err().contains("10 at most"));
  }
}
