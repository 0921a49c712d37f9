package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keys and words that do not exist, with the nearest that does. */
class WordFaultsTest {
  @TempDir Path dir;

  private void nearest(String old, String wrong, String at, String nearest) throws IOException {
    Problem p = new Written(dir).with(old, wrong).assertProblemAt(at);
    assertEquals(nearest, p.nearest(), p::toString);
    assertTrue(!p.read().isEmpty() && !p.expected().isEmpty(), p::toString);
  }

  @Test
  void keys() throws IOException {
    nearest("built: 1994", "biult: 1994", "biult", "built");
    nearest("things:", "thing:", "thing:", "things");
    nearest("height: 5 ft }", "hieght: 5 ft, height: 5 ft }", "hieght", "height");
    nearest("separation: garage", "seperation: garage", "seperation", "separation");
    nearest("ridge: east-west", "Ridge: x, ridge: east-west", "Ridge", "ridge");
  }

  @Test
  void aKeyLikeNothing() throws IOException {
    Problem p = new Written(dir).plus("swimming-pool: yes\n").assertProblemAt("swimming-pool");
    assertEquals("", p.nearest());
    assertTrue(p.expected().contains("cabinet"), p::toString);
  }

  @Test
  void words() throws IOException {
    nearest("place: us", "place: usa", "usa", "us");
    nearest("shape: gable", "shape: gabel", "gabel", "gable");
    nearest("frame: trusses", "frame: truss", "truss", "trusses");
    nearest("run: east-west", "run: east west", "east west", "east-west");
    nearest("floor: slab", "floor: slap", "slap", "slab");
    nearest("cables: [cat6]", "cables: [cat-6]", "cat-6", "cat6");
    nearest("align: south }", "align: suoth }", "suoth", "south");
    nearest("align: south-east", "align: south-eats", "south-eats", "south-east");
    nearest("wall: east, from", "wall: eats, from", "eats", "east");
    nearest("studs: 2x6", "studs: 2x7", "2x7", "2x4");
  }

  @Test
  void namesOfRoomsLevelsAndFaces() throws IOException {
    nearest("east-of: garage", "east-of: garge", "garge", "garage");
    nearest("above: kitchen", "above: kichen", "kichen", "kitchen");
    nearest("level: upper", "level: uper", "uper", "upper");
    nearest("over: upper", "over: uppper", "uppper", "upper");
    nearest("in: garage", "in: garrage", "garrage", "garage");
    nearest("side: office east", "side: ofice east", "ofice east", "office");
    nearest("side: office east", "side: office eat", "office eat", "east");
    nearest("[garage, kitchen], studs", "[garage, kitchn], studs", "kitchn", "kitchen");
    nearest("to: attic", "to: atic", "atic", "attic");
  }

  @Test
  void wrongKinds() throws IOException {
    new Written(dir)
        .with("- { door, between", "- { dor, between")
        .problems()
        .forEach(p -> assertEquals(14, p.where().line()));
    new Written(dir)
        .with("{ door, between", "{ door, window, between")
        .assertProblemAt("{ door", "says twice what it is");
    new Written(dir)
        .with("{ door, between", "{ between")
        .assertProblemAt(
            "{ between: [garage, kitchen], from", "does not say what it is", "door, window");
    new Written(dir)
        .with("{ door, between", "{ door: oak, between")
        .assertProblemAt("oak", "'door' stands alone");
  }

  @Test
  void theLongFormOfAKindIsTakenToo() throws IOException {
    new Written(dir).with("{ door, between", "{ kind: door, between").sound();
    new Written(dir).with("{ door, between", "{ door: yes, between").sound();
  }

  @Test
  void yesAndNo() throws IOException {
    for (String yes : List.of("yes", "no", "true", "false", "Yes", "NO")) {
      new Written(dir).with("size: 20 ft x 22 ft", "size: 20 ft x 22 ft, plain: " + yes).sound();
    }
    new Written(dir)
        .with("size: 20 ft x 22 ft", "size: 20 ft x 22 ft, plain: maybe")
        .assertProblemAt("maybe", "yes or no");
  }

  @Test
  void listsMapsAndTextsInEachOthersPlace() throws IOException {
    new Written(dir)
        .with("place: us", "place: [us]")
        .assertProblemAt("[us]", "a list of 1", "us, uk");
    new Written(dir).with("cables: [cat6]", "cables: cat6").assertProblemAt("cat6", "a list, each");
    new Written(dir)
        .with("garage: { level: ground, size: 20 ft x 22 ft }", "garage: big")
        .assertProblemAt("big", "a map with keys of: level");
    new Written(dir).with("built: 1994", "built:").problem().text().contains("nothing is written");
    new Written(dir).with("built: 1994", "built: 94").assertProblemAt("94", "1500 to 2100");
    new Written(dir)
        .with("[garage, kitchen], studs", "[garage], studs")
        .assertProblemAt("[garage], studs", "two");
  }

  @Test
  void everyProblemIsReportedSortedByLine() throws IOException {
    List<Problem> all =
        new Written(dir)
            .with("place: us", "place: usa")
            .with("size: 20 ft x 22 ft", "size: 20 x 22 ft")
            .with("width: 32 in", "width: 32")
            .with("pitch: 6/12", "pitch: steep")
            .with("height: 5 ft", "height: 5")
            .problems();
    assertEquals(List.of(2, 8, 14, 17, 22), all.stream().map(p -> p.where().line()).toList());
  }
}
