package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A model file is written whole or not at all, and never over another's file. */
class ModelFileTest {
  private static final byte[] OURS =
      "glTF........{\"asset\":{\"version\":\"2.0\",\"generator\":\"Holloway\"}}".getBytes();

  @TempDir Path folder;

  @Test
  void oursIsReplacedAndNothingIsLeftOver() throws Exception {
    Path file = Files.write(folder.resolve("x.glb"), OURS);
    OutModel out = new OutModel(file);
    out.refuseForeign();
    out.write(new byte[] {1, 2, 3});
    assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(file));
    assertEquals(1, folder.toFile().list().length);
  }

  @Test
  void anothersIsLeftAlone() throws Exception {
    Path file = Files.writeString(folder.resolve("x.glb"), "glTF of somebody else");
    OutModel out = new OutModel(file);
    assertTrue(
        assertThrows(CommandTrouble.class, out::refuseForeign)
            .getMessage()
            .contains("was not written by Holloway"));
  }

  @Test
  void theNameSaysWhatItIs() {
    OutModel out = new OutModel(folder.resolve("x.txt"));
    assertThrows(CommandTrouble.class, out::refuseForeign);
    assertFalse(Files.exists(folder.resolve("x.txt")));
  }
}
