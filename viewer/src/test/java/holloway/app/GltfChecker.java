package holloway.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** The glTF format's own validator. */
final class GltfChecker {
  private static final Path CHECKER = Path.of("..", ".ci", "gltf").toAbsolutePath();

  private GltfChecker() {}

  static void findsNothing(Path dir, byte[] glb) throws Exception {
    JsonNode said = said(dir, glb, 0);
    assertEquals(0, said.get("errors").asInt(), said::toString);
    assertEquals(0, said.get("warnings").asInt(), said::toString);
    assertEquals(0, said.get("infos").asInt(), said::toString);
    assertTrue(said.get("triangles").asInt() > 1000, said::toString);
  }

  static JsonNode said(Path dir, byte[] glb, int code) throws Exception {
    Path file = Files.write(dir.resolve("house.glb"), glb);
    Process p =
        new ProcessBuilder("node", CHECKER.resolve("check.cjs").toString(), file.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String out = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(p.waitFor(60, TimeUnit.SECONDS));
    assertEquals(code, p.exitValue(), out);
    return new ObjectMapper().readTree(out);
  }

  static void orSkip() {
    boolean there =
        Played.isThere("node")
            && Files.isDirectory(CHECKER.resolve(Path.of("node_modules", "gltf-validator")));
    if (there) {
      return;
    }
    String must = System.getenv("HOLLOWAY_MODELS_MUST");
    String why = "models are not validated here: node or the packages of .ci/gltf are missing";
    if (must != null && !must.isEmpty()) {
      throw new AssertionError("HOLLOWAY_MODELS_MUST is set, and " + why);
    }
    System.err.println(why);
    Assumptions.abort(why);
  }
}
