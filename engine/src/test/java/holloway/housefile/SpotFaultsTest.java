package holloway.housefile;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spots that no wall, ceiling or opening has. */
class SpotFaultsTest {
  @TempDir Path dir;

  @Test
  void aWallTapedFromTheWrongEnd() throws IOException {
    new Written(dir)
        .with("wall: south, from: west 3 ft", "wall: south, from: south 3 ft")
        .assertProblemAt("south 3 ft, height", "runs east-west", "west or east");
    new Written(dir)
        .with("side: office east, from: south", "side: office east, from: west")
        .assertProblemAt("west 3 ft, width", "runs north-south");
  }

  @Test
  void beyondTheEnd() throws IOException {
    new Written(dir)
        .with("from: west 3 ft", "from: west 15 ft")
        .assertProblemAt("west 15 ft", "beyond the south wall of 'office'", "4.267 m long");
    new Written(dir)
        .with("from: west 3 ft", "from: west 3 ft, to: 15 ft")
        .assertProblemAt("west 3 ft, to", "beyond the south wall");
    new Written(dir)
        .with("from: south 3 ft, width: 4 ft", "from: south 9 ft, width: 4 ft")
        .assertProblemAt("south 9 ft", "the far side of this opening lies beyond");
  }

  @Test
  void aboveTheCeiling() throws IOException {
    new Written(dir)
        .with("height: 5 ft", "height: 9 ft")
        .assertProblemAt("9 ft", "above the ceiling of 'garage'");
  }

  @Test
  void aSecondFaceOfARectangle() throws IOException {
    new Written(dir)
        .with("wall: east, from", "wall: east 2, from")
        .assertProblemAt("east 2", "one wall on each side");
  }

  @Test
  void rangesThatRunBackwards() throws IOException {
    new Written(dir)
        .with("from: west 3 ft", "from: west 3 ft, to: 2 ft")
        .assertProblemAt("2 ft, height", "must lie beyond 'from'");
  }

  @Test
  void ceilings() throws IOException {
    String wall = "wall: south, from: west 3 ft, height: 16 in";
    new Written(dir).with(wall, "ceiling: [west 3 ft, south 4 ft]").sound();
    new Written(dir).with(wall, "ceiling: { east: 3 ft, north: 4 ft }").sound();
    new Written(dir)
        .with(wall, "ceiling: [west 3 ft, east 4 ft]")
        .assertProblemAt("[west", "one of west and east, and one of south and north");
    new Written(dir)
        .with(wall, "ceiling: { east: 3 ft }")
        .assertProblemAt("{ east", "one of west and east, and one of south and north");
    new Written(dir)
        .with(wall, "ceiling: [west 3 ft, south 13 ft]")
        .assertProblemAt("south 13 ft", "beyond the west wall of 'office'");
    new Written(dir)
        .with(wall, "ceiling: [west 3 ft, south 4 ft], height: 8 ft")
        .assertProblemAt("8 ft, cables", "'height' means nothing");
  }

  @Test
  void openingsAndWallsThatAreNowhere() throws IOException {
    new Written(dir)
        .with("{ door, between: [garage, kitchen], from", "{ door, from")
        .assertProblemAt("{ door, from", "does not say which wall");
    new Written(dir)
        .with(
            "between: [garage, kitchen], studs",
            "between: [garage, kitchen], side: office east, studs")
        .assertProblemAt("office east, studs", "both 'between' and 'side'");
    new Written(dir)
        .with("[garage, kitchen], studs", "[garage, garage], studs")
        .assertProblemAt("[garage, garage]", "two different rooms");
    new Written(dir)
        .with("[garage, kitchen], studs", "[office, kitchen], studs")
        .assertProblemAt("[office, kitchen]", "no wall between 'office' on level 'upper'");
    new Written(dir)
        .with("openings:", "  - { between: [kitchen, garage], fill: foam }\nopenings:")
        .assertProblemAt("[kitchen, garage]", "is already there", "line 12");
    new Written(dir)
        .with("width: 4 ft", "width: 4 ft, sill: 7 ft")
        .assertProblemAt("7 ft", "not above its sill");
  }

  @Test
  void obstacles() throws IOException {
    new Written(dir)
        .plus("obstacles:\n  - { duct, side: office east }\n")
        .problems()
        .forEach(
            p ->
                org.junit.jupiter.api.Assertions.assertTrue(
                    p.text().contains("an obstacle in a wall lacks")));
    new Written(dir)
        .plus("obstacles:\n  - { duct, size: 1 m x 1 m }\n")
        .assertProblemAt("{ duct", "an obstacle lies in one place");
    new Written(dir)
        .plus(
            "obstacles:\n  - { duct, below-floor-of: office, at: [west 1 m, north 1 m], size: 1 m x 1 m, height: 1 ft }\n")
        .sound();
  }

  @Test
  void tapesBetweenFacesThatDoNotFaceAlong() throws IOException {
    new Written(dir)
        .plus("measures:\n  - { from: garage west, to: kitchen north, distance: 9 m }\n")
        .assertProblemAt("kitchen north", "no tape runs straight");
  }
}
