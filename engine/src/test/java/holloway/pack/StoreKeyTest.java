package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoreKeyTest {
  @TempDir Path folder;

  private String key(String text) throws Exception {
    Path file = Files.writeString(folder.resolve("house.yaml"), text);
    return StoreKey.of(((Reading.Sound) HouseFile.read(file)).house());
  }

  @Test
  void twoHousesOfOneNameShareNoTicks() throws Exception {
    String text = Files.readString(PackedHouse.file(folder.resolve("first.yaml")));
    assertNotEquals(key(text), key(text.replace("living room", "lounge")));
    assertNotEquals(key(text), key(text.replace("First House", "Second House")));
  }

  /** What is edited between two packs of one house keeps its ticks. */
  @Test
  void aFoundStudOrAnotherSizeKeepsTheTicks() throws Exception {
    String text = Files.readString(PackedHouse.file(folder.resolve("first.yaml")));
    String edited = text.replace("built: 1985", "built: 1991");
    assertTrue(!edited.equals(text));
    assertEquals(key(text), key(edited));
  }
}
