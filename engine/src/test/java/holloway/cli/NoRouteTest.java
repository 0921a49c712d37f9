package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.pipeline.TwoStoreys;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One run cannot be had, the other can: exit code 4, the limits that stopped it, and the plan. */
class NoRouteTest {
  @TempDir Path folder;

  @Test
  void theOthersArePlannedAndTheLimitsAreNamed() throws Exception {
    // Foam fills the desk's wall: nothing is fished through it, and surfaces are banned. The den's
    // desk is on the other side of the cabinet's wall.
    String house =
        TwoStoreys.with("name: high wall,", "name: high wall, fill: foam,")
            + """
              - { name: den desk, in: den, wall: west, from: south 4 ft 2 in, height: 16 in, cables: [cat6] }
            wishes: { bans: [surface] }
            """;
    Path file = Files.writeString(folder.resolve("foam.yaml"), house);
    Said said = Said.whole("plan", file.toString(), "--effort", "quick", "--json");
    assertEquals(4, said.code(), said.err());
    JsonNode plan = new ObjectMapper().readTree(said.out());
    assertEquals(1, plan.get("runs").size());
    assertEquals("den desk/cat6-1", plan.at("/runs/0/id").asText());
    assertEquals("desk/cat6-1", plan.at("/unrouted/0/id").asText());
    assertTrue(
        plan.at("/unrouted/0/why-not").toString().contains("foam"), plan.get("unrouted")::toString);
  }
}
