package holloway.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.scene.Glb;
import holloway.scene.SceneMaker;
import holloway.view.Ranch;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The format's own validator has nothing to say of a sample's model, and something of a bad one.
 */
class ModelValidTest {
  @TempDir Path dir;

  @Test
  void theValidatorFindsNothing() throws Exception {
    GltfChecker.orSkip();
    var house = Ranch.live().drawn(Ranch.judged());
    byte[] glb = Glb.of(SceneMaker.of(house.hollows(), house.plan()));
    GltfChecker.findsNothing(dir, glb);
    // A whole turned to nothing inside: the checker has to see that.
    String text = new String(glb, StandardCharsets.ISO_8859_1);
    byte[] bad =
        text.replaceFirst("\"roughnessFactor\":1", "\"roughnessFactor\":7")
            .getBytes(StandardCharsets.ISO_8859_1);
    assertTrue(GltfChecker.said(dir, bad, 1).get("errors").asInt() > 0);
  }
}
