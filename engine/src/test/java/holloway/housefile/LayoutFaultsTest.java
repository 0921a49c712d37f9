package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.House;
import holloway.house.LayoutCorner;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a newcomer writes for the corner that studs and joists were laid out from. */
class LayoutFaultsTest {
  @TempDir Path dir;

  private Written layout(String line) throws IOException {
    return new Written(dir).with("place: us\n", "place: us\n" + line + "\n");
  }

  private static House house(Written w) throws IOException {
    return assertInstanceOf(Reading.Sound.class, w.read()).house();
  }

  private void names(Problem p, String... words) {
    for (String word : words) {
      assertTrue((p.text() + " " + p.expected() + " " + p.nearest()).contains(word), p::toString);
    }
  }

  @Test
  void aCornerIsTaken() throws IOException {
    assertEquals(LayoutCorner.SOUTH_WEST, house(new Written(dir)).layout());
    for (LayoutCorner c : LayoutCorner.values()) {
      assertEquals(c, house(layout("layout-from: " + c.word())).layout());
    }
  }

  @Test
  void oneSideIsNoCorner() throws IOException {
    names(layout("layout-from: north").assertProblemAt("north", ""), "north-west", "north-east");
  }

  @Test
  void theOtherWayRound() throws IOException {
    names(layout("layout-from: west-north").assertProblemAt("west-north", ""), "north-west");
  }

  @Test
  void aMeasureIsNoCorner() throws IOException {
    names(layout("layout-from: west 7 in").assertProblemAt("west 7 in", ""), "south-west");
  }

  @Test
  void theKeyMisspelt() throws IOException {
    names(layout("layout: south-east").assertProblemAt("layout", ""), "layout-from");
    names(layout("studs-from: south-east").assertProblemAt("studs-from", ""), "studs-from");
  }

  @Test
  void aListOfCorners() throws IOException {
    List<Problem> all = layout("layout-from: [south-west, north-east]").problems();
    assertEquals(1, all.size(), all::toString);
  }
}
