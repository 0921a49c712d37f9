package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing is wanted in rooms that nobody works in, and words of walls are checked. */
class StandingFaultsTest {
  private static final String HOUSE =
      """
      house: Fault Toy
      place: us
      built: 1994
      levels: { ground: { floor: slab, ceiling-height: 8 ft } }
      rooms:
        store: { level: ground, size: 20 ft x 12 ft }
        next: { level: ground, size: 20 ft x 12 ft, north-of: store, align: west, STANDING }
      walls:
        - { side: store south, WALL }
      cabinet: { in: store, wall: west, from: north 2 ft, height: 5 ft }
      outlets:
        - { name: desk, in: next, wall: west, from: south 2 ft, height: 16 in, cables: [cat6] }
      """;

  @TempDir Path dir;

  private String only(String standing, String wall) throws IOException {
    Path file = dir.resolve("house.yaml");
    Files.writeString(file, HOUSE.replace("STANDING", standing).replace("WALL", wall));
    List<Problem> all = assertInstanceOf(Reading.Faulty.class, HouseFile.read(file)).problems();
    assertEquals(1, all.size(), all::toString);
    return all.get(0).toString();
  }

  @Test
  void anOutletAtTheNeighbours() throws IOException {
    String says = only("ours: no", "bearing: yes");
    assertTrue(says.contains("outlet 'desk' would be in 'next', which is somebody else's"), says);
    assertTrue(says.contains("12:"), says);
  }

  @Test
  void anOutletWhereNobodyTaped() throws IOException {
    String says = only("surveyed: no", "bearing: yes");
    assertTrue(says.contains("not surveyed (surveyed: no); tape it first"), says);
  }

  @Test
  void aPartyWallIsYesOrNo() throws IOException {
    String says = only("plain: no", "party: half");
    assertTrue(says.contains("half") && says.contains("yes or no"), says);
  }

  @Test
  void knockoutsAreOfSteel() throws IOException {
    String says = only("plain: no", "studs: 2x4, knockouts: [12 in]");
    assertTrue(says.contains("only steel studs have knockouts"), says);
  }

  @Test
  void steelStudsAreOfADepth() throws IOException {
    String says = only("plain: no", "studs: steel 4");
    assertTrue(says.contains("steel 3-5/8 in, steel 92 mm"), says);
    assertTrue(only("plain: no", "studs: steel 3-2/7 in").contains("halves, quarters"));
  }

  @Test
  void aRoundWindowIsAsHighAsWide() throws IOException {
    String window =
        "}\nopenings:\n  - { window, shape: round, side: store south, from: west 4 ft, width: 2 ft,"
            + " sill: 3 ft, head: 6 ft";
    String says = only("plain: no", "bearing: yes " + window);
    assertTrue(says.contains("a round opening of"), says);
  }
}
