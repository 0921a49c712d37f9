package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.house.Fact;
import holloway.house.Origin;
import holloway.units.Length;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lengths without a unit, out of range, or where a sign means nothing. */
class LengthFaultsTest {
  @TempDir Path dir;

  @Test
  void aBareNumberIsAnErrorThatSaysSo() throws IOException {
    Problem p =
        new Written(dir)
            .with("height: 16 in", "height: 16")
            .assertProblemAt(
                "16, cables",
                "a length needs a unit",
                "expected: a length like 12 ft 6 in, 12' 6 1/2\", 3.81 m");
    assertEquals("16", p.read());
  }

  @Test
  void bareNumbersInSizesAndDistances() throws IOException {
    new Written(dir).with("20 ft x 22 ft", "20 x 22").assertProblemAt("20 x 22", "needs a unit");
    new Written(dir).with("20 ft x 22 ft", "20 ft").assertProblemAt("20 ft }", "an x between");
    new Written(dir)
        .with("from: west 3 ft", "from: west 3")
        .assertProblemAt("west 3,", "needs a unit");
    new Written(dir)
        .with("from: west 3 ft", "from: 3 ft")
        .assertProblemAt("3 ft, height", "the end it is taped");
    new Written(dir)
        .with("from: west 3 ft", "from: west")
        .assertProblemAt("west, height", "missing");
  }

  @Test
  void signsAndRanges() throws IOException {
    new Written(dir)
        .with("width: 32 in", "width: -32 in")
        .assertProblemAt("-32 in", "cannot be negative");
    new Written(dir)
        .with("width: 32 in", "width: 0 in")
        .assertProblemAt("0 in", "more than nothing");
    new Written(dir)
        .with("ceiling-height: 8 ft", "ceiling-height: 8 in")
        .assertProblemAt("8 in", "too short here", "from 1.000 m to 12.000 m");
    new Written(dir)
        .with("size: 14 ft x 12 ft, above", "size: 14 ft x 12 in, above").problems().stream()
            .filter(p -> p.text().contains("room 'office' would be only 305 mm wide"))
            .filter(p -> p.where().line() == 10)
            .findFirst()
            .orElseThrow();
  }

  @Test
  void anElevationMayBeNegative() throws IOException {
    var house = new Written(dir).with("x 22 ft }", "x 22 ft, elevation: -4 in }").sound().house();
    assertEquals(Length.inches(-4), house.getRoom("garage").elevation().orElseThrow().value());
  }

  @Test
  void aSpreadIsKeptAndATapeHasItsOwn() throws IOException {
    var house = new Written(dir).with("20 ft x 22 ft", "20 ft +- 1 in x 22 ft").sound().house();
    var size = house.getRoom("garage").size().orElseThrow();
    assertEquals(Length.inches(1), size.eastWest().spread());
    assertEquals(Fact.TAPE, size.northSouth().spread());
    assertEquals(Origin.MEASURED, size.northSouth().origin());
    assertEquals(8, size.northSouth().where().line());
  }
}
