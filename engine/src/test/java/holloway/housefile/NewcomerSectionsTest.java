package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The first slips in each section of a house file, and what is said of them. */
class NewcomerSectionsTest {
  @TempDir Path dir;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "place: us|place: usa|'place' cannot be 'usa'|us, uk, eu, none",
        "built: 1994|built: 94|'built' cannot be this|1500 to 2100",
        "ceiling-height: 8 ft|ceiling-height: 8|a length needs a unit|12 ft 6 in",
        "floor: slab, ceiling|ceiling|'ground' lacks 'floor:'|floor: slab, or",
        "run: east-west } }|run: east } }|'run' cannot be 'east'|east-west, north-south",
        "size: 20 ft x 22 ft|size: 20 x 22|a length needs a unit|12 ft 6 in",
        ", east-of: garage, align: south|, east-of: garage|are in line|align: north or south",
        "[garage, kitchen], studs|[garage], studs|'between' has 1|of two",
        "[garage, kitchen], studs|[garage, kichen], studs|no room 'kichen'|kitchen",
        "{ door, between|{ between|does not say what it is|door, window, opening",
        ", width: 32 in|''|lacks 'width:'|12 ft 6 in",
        "from: north 2 ft|from: 2 ft|starts with the end it is taped from|west 3 ft 2 in",
        ", pitch: 6/12|''|a gable roof needs a pitch|pitch: 6/12",
        "over: upper|over: attic|there is no level 'attic'|ground, upper",
        ", size: 10 in x 22 in|''|an item of 'hollows' lacks 'size:'|east-west x north-south",
        "{ socket|{ plug|an item of 'things' does not say what it is|socket, switch",
        ", from: west 1 ft|''|an item of 'things' lacks 'from:'|west 3 ft 2 in",
        "east, from: south 4 ft, height: 5 ft|east, from: south 4 ft|'cabinet' lacks 'height:'|12"
            + " ft",
        "cables: [cat6]|cables: [cat7]|cannot be 'cat7'|cat5e, cat6",
        "built: 1994|crew: 3|'crew' cannot be this|1 to 2",
      })
  void aSlipIsSaidWithWhatToWrite(String old, String changed, String says, String expected)
      throws IOException {
    List<Problem> all = new Written(dir).with(old, changed).problems();
    Problem p =
        all.stream()
            .filter(q -> q.text().contains(says))
            .findFirst()
            .orElseThrow(() -> new AssertionError("not said: " + says + " in " + all));
    assertTrue(p.expected().contains(expected), p::toString);
    assertTrue(p.where().line() > 0, p::toString);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "wishes: { visible-metre: 30 }|a time needs a unit|30 min",
        "obstacles: [{ duct }]|an obstacle lies in one place|above-ceiling-of",
        "obstacles: [{ tank, below-ceiling-of: office, at: [west 1 m, north 1 m], size: 1 m x 1 m,"
            + " height: 1 m }]|below a ceiling only|fluorescent-light",
        "outer-walls: 2x6|'outer-walls' is not written like this|studs",
        "inner-walls: { studs: 4 in }|this is not a timber size|2x4 to 2x12",
      })
  void aSlipInASectionThatMayBeLeftOut(String more, String says, String expected)
      throws IOException {
    List<Problem> all = new Written(dir).plus(more + "\n").problems();
    assertTrue(
        all.stream().anyMatch(p -> p.text().contains(says) && p.expected().contains(expected)),
        () -> "not said: " + says + " in " + all);
  }
}
