package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The help compared as whole text. */
class HelpTest {
  private static String kept(String name) throws Exception {
    try (InputStream in = HelpTest.class.getResourceAsStream("help" + name + ".txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void theProgram() throws Exception {
    assertEquals(new Said(0, kept(""), ""), Said.of("--help"));
    assertEquals(new Said(0, kept(""), ""), Said.of("-h"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "compare", "routes", "check", "pack", "model", "schema", "start"})
  void eachVerb(String verb) throws Exception {
    Said said = Said.of(verb, "--help");
    assertEquals(new Said(0, kept("-" + verb), ""), said);
    assertTrue(said.out().lines().allMatch(l -> l.length() <= 80));
  }
}
