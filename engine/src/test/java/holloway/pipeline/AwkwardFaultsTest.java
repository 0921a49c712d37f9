package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The smallest houses of what {@link AwkwardHousesTest} found wrong. */
class AwkwardFaultsTest {
  /** A wall shared with a neighbour has no bays, so none of its bays runs on upward. */
  @Test
  void aSharedWallOfBalloonFrame() {
    WrittenHouse house =
        WrittenHouse.of(
            """
            house: Shared Balloon
            place: us
            built: 1910
            framing: balloon
            levels:
              ground: { floor: slab, ceiling-height: 2.4 m }
              upper: { above: ground, ceiling-height: 2.4 m, floor: { joists: 2x10, every: 16 in, run: north-south } }
            rooms:
              den: { level: ground, size: 4 m x 3 m }
              bed: { level: upper, size: 4 m x 3 m, above: den, align: south-west }
            walls:
              - { side: den west, party: yes }
            cabinet: { in: den, wall: south, from: west 1 m, height: 1.2 m }
            outlets:
              - { name: desk, in: den, wall: south, from: east 1 m, height: 400 mm, cables: [cat6] }
            """);
    assertEquals(0, house.plan().unrouted().size());
  }

  /** Corners of an angled wall lie closer in the attic than plain cutting of plans can tell. */
  @Test
  void anAtticOverAnAngledWall() throws Exception {
    try (InputStream in =
        AwkwardFaultsTest.class.getResourceAsStream("/holloway/awkward-attic.yaml")) {
      String drawn = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(WrittenHouse.of(drawn).hollows().hollows().size() > 20);
    }
  }
}
