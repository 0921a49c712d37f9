package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.survey.Placed;
import holloway.survey.Survey;
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

  private Placed placed(String text) throws Exception {
    Path file = Files.writeString(folder.resolve("house.yaml"), text);
    return Survey.of(((Reading.Sound) HouseFile.read(file)).house()).value();
  }

  /** Two rooms side by side, 3 m by 4 m and 5 m by 2 m; the first is the corner of all. */
  private static final String TWO =
      """
      house: Two Rooms
      place: none
      built: 1990
      levels:
        ground: { floor: slab, ceiling-height: 2.4 m }
      rooms:
        den: { level: ground, size: 3 m x 4 m }
        hall: { level: ground, size: 5 m x 2 m, SIDE: den, align: south }
      cabinet: { in: den, wall: south, from: west 1 m, height: 1.2 m }
      outlets:
        - { name: desk, in: hall, wall: south, from: east 1 m, height: 400 mm, cables: [cat6] }
      """;

  /** Both sizes of a room count, and where it lies: its mirror image is another house. */
  @Test
  void sizesAndPlacesAreThoseOfTheRooms() throws Exception {
    Placed east = placed(TWO.replace("SIDE", "east-of"));
    Placed west = placed(TWO.replace("SIDE", "west-of"));
    assertEquals("3000,4000,5000,2000", StoreKey.sizes(east));
    assertEquals("3000,4000,5000,2000", StoreKey.sizes(west));
    String[] right = StoreKey.places(east).split(",");
    String[] left = StoreKey.places(west).split(",");
    assertEquals("1500,2000", right[0] + "," + right[1]);
    assertEquals("2500,1000", left[2] + "," + left[3]);
    // The wall between them is as thick either way.
    assertEquals(Integer.parseInt(right[2]) - 3000 - 2500, Integer.parseInt(left[0]) - 5000 - 1500);
    assertEquals("1000", right[3]);
    assertEquals("2000", left[1]);
  }
}
