package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rooms that do not hang together. */
class PlacingFaultsTest {
  @TempDir Path dir;

  @Test
  void twoRoomsWithoutAPlace() throws IOException {
    List<Problem> all = new Written(dir).with(", east-of: garage, align: south", "").problems();
    assertEquals(List.of(8, 9), all.stream().map(p -> p.where().line()).toList());
    for (Problem p : all) {
      assertTrue(p.text().contains("garage, kitchen"), p::toString);
      assertTrue(p.expected().contains("east-of"), p::toString);
    }
  }

  @Test
  void noRoomWithoutAPlace() throws IOException {
    List<Problem> all =
        new Written(dir)
            .with("size: 20 ft x 22 ft", "size: 20 ft x 22 ft, west-of: kitchen, align: south")
            .problems();
    assertEquals(2, all.size(), all::toString);
    assertTrue(all.get(0).text().contains("no room starts the survey"), all::toString);
    assertTrue(all.get(1).text().contains("in a ring: garage, kitchen"), all::toString);
    assertEquals(8, all.get(1).where().line());
  }

  @Test
  void aPlaceTwice() throws IOException {
    new Written(dir)
        .with("east-of: garage", "east-of: garage, north-of: garage")
        .assertProblemAt("garage, align", "placed twice", "measures");
  }

  @Test
  void besideItself() throws IOException {
    new Written(dir)
        .with("east-of: garage", "east-of: kitchen")
        .assertProblemAt("kitchen, align", "itself");
  }

  @Test
  void noWordOnWhichFacesAreInLine() throws IOException {
    new Written(dir)
        .with("east-of: garage, align: south", "east-of: garage")
        .assertProblemAt("{ level: ground, size: 14 ft x 12 ft, east", "align: north or south");
    new Written(dir)
        .with("align: south }", "align: east }")
        .assertProblemAt("east }", "north or south");
    new Written(dir)
        .with("align: south-east", "align: south")
        .assertProblemAt("south }\nwalls", "corner");
  }

  @Test
  void theWrongLevel() throws IOException {
    new Written(dir)
        .with("above: kitchen, align: south-east", "east-of: kitchen, align: south")
        .assertProblemAt("upper, size: 14", "neighbour 'kitchen' is on 'ground'");
    new Written(dir)
            .with("level: upper, size: 14 ft x 12 ft", "level: ground, size: 14 ft x 12 ft")
            .problems()
            .stream()
            .filter(p -> p.text().contains("both are on level 'ground'"))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void keysThatMeanNothingHere() throws IOException {
    new Written(dir)
        .with("size: 20 ft x 22 ft", "size: 20 ft x 22 ft, align: south")
        .assertProblemAt("south }", "'align' goes with a neighbour");
    new Written(dir)
        .with("align: south }", "align: south, shift-east: 2 m }")
        .assertProblemAt("2 m }", "'shift-east' goes with above or below");
    new Written(dir)
        .with("align: south-east }", "align: south-east, shift: 2 m }")
        .assertProblemAt("2 m }", "'shift' goes with east-of");
  }

  @Test
  void sizeAndOutline() throws IOException {
    String outline = "outline: [[0 ft, 0 ft], [20 ft, 0 ft], [20 ft, 22 ft], [0 ft, 22 ft]]";
    new Written(dir).with("size: 20 ft x 22 ft", outline).sound();
    new Written(dir)
        .with("size: 20 ft x 22 ft", "size: 20 ft x 22 ft, " + outline)
        .assertProblemAt("[[0 ft", "both size and outline");
    new Written(dir)
        .with("garage: { level: ground, size: 20 ft x 22 ft }", "garage: { level: ground }")
        .assertProblemAt("{ level: ground }", "neither size nor outline");
  }

  @Test
  void outlinesThatAreNone() throws IOException {
    new Written(dir)
        .with("size: 20 ft x 22 ft", "outline: [[0 ft, 0 ft], [20 ft, 0 ft]]")
        .assertProblemAt("[[0", "has 2 items");
    new Written(dir)
        .with(
            "size: 20 ft x 22 ft",
            "outline: [[0 ft, 0 ft], [20 ft, 22 ft], [20 ft, 0 ft], [0 ft, 22 ft]]")
        .assertProblemAt("[[0", "crosses itself");
    new Written(dir)
        .with("size: 20 ft x 22 ft", "outline: [[0 ft, 0 ft], [20 ft, 0 ft], [0 ft, 0 ft]]")
        .assertProblemAt("[[0", "a corner twice");
    new Written(dir)
        .with("size: 20 ft x 22 ft", "outline: [[0 ft, 0 ft], [20 ft, 0 ft], [9 ft, 1/4 in]]")
        .assertProblemAt("[[0", "holds no room");
  }

  @Test
  void levels() throws IOException {
    new Written(dir)
        .with("above: ground", "above: upper")
        .assertProblemAt("upper, floor", "cannot lie above itself");
    new Written(dir)
        .with("  upper:", "  loft: { floor: slab }\n  upper:")
        .assertProblemAt("{ floor: slab }", "no room is on level 'loft'");
  }

  @Test
  void aLongChainOfRoomsIsReadInGoodTime() throws IOException {
    StringBuilder rooms = new StringBuilder();
    for (int i = 0; i < 3000; i++) {
      String by = i == 0 ? "kitchen" : "r" + (i - 1);
      rooms.append(
          "  r%d: { level: ground, size: 3 m x 3 m, east-of: %s, align: south }%n"
              .formatted(i, by));
    }
    // More rooms and floor than is planned for, and nothing else: the chain itself is sound.
    List<Problem> all =
        new Written(dir)
            .with("walls:\n", "")
            .with(
                "  - { between: [garage, kitchen], studs: 2x6, separation: garage }\n",
                rooms.toString())
            .problems();
    assertEquals(2, all.size(), all::toString);
    assertTrue(all.get(0).read().contains("27072 m2"), all::toString);
    assertTrue(all.get(1).read().contains("3003 rooms"), all::toString);
  }
}
