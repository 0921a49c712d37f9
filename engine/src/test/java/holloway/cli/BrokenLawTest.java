package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.pipeline.TwoStoreys;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is asked for goes against a rule of law, and no route avoids it: the plan is given all the
 * same, with exit code 5, and says so before anything else.
 */
class BrokenLawTest {
  @TempDir Path folder;

  /** The den's desk is wanted where a socket hangs, or an inch past its plate. */
  private Path house(String name, String socketAt) throws Exception {
    String text =
        TwoStoreys.with("name: high wall,", "name: high wall,")
            + """
              - { name: den desk, in: den, wall: west, from: south 4 ft 2 in, height: 16 in, cables: [cat6] }
            things: [{ socket, in: den, wall: west, from: south SOCKET, height: 16 in }]
            """
                .replace("SOCKET", socketAt);
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void itIsSaidOnTopAndTheExitCodeIsFive() throws Exception {
    String file = house("shared.yaml", "4 ft 2 in").toString();
    Said text = Said.whole("plan", file, "--effort", "quick");
    assertEquals(5, text.code(), text.err());
    assertTrue(text.out().startsWith("DO NOT CARRY THIS OUT"), text.out());
    int top = text.out().indexOf("den desk lies where a socket is");
    assertTrue(top > 0 && top < text.out().indexOf("CHECK FIRST"), text.out());
    JsonNode plan =
        new ObjectMapper().readTree(Said.whole("plan", file, "--effort", "quick", "--json").out());
    assertTrue(plan.get("findings").toString().contains("\"broken\":true"));
    assertEquals(2, plan.get("runs").size());
  }

  @Test
  void nothingOfItJustBesideTheSocket() throws Exception {
    // Two plates of 70 mm: 2-3/4 in and a sixteenth from centre to centre.
    String file = house("beside.yaml", "4 ft 4-13/16 in").toString();
    Said text = Said.whole("plan", file, "--effort", "quick");
    assertEquals(0, text.code(), text.err());
    assertFalse(text.out().contains("DO NOT CARRY THIS OUT"), text.out());
  }
}
