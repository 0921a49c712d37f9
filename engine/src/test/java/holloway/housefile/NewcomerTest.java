package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a first file leaves out, and the line to copy that each message gives. */
class NewcomerTest {
  @TempDir Path dir;

  private void lacks(String line, String says, String example) throws IOException {
    Written w = new Written(dir).with(line, "");
    List<Problem> all = w.problems();
    Problem p = all.get(0);
    assertTrue(p.text().contains(says), all::toString);
    assertTrue(p.expected().contains(example), all::toString);
    assertEquals(1, p.where().line());
  }

  @Test
  void theWholeFileAlmost() throws IOException {
    List<Problem> all = new Written(dir).with(Written.SOUND, "house: My Home\n").problems();
    assertEquals(5, all.size(), all::toString);
    for (String key : List.of("place", "levels", "rooms", "cabinet", "outlets")) {
      assertTrue(
          all.stream().anyMatch(p -> p.text().startsWith("the file lacks '" + key + ":'")), key);
    }
  }

  @Test
  void singleLines() throws IOException {
    lacks("place: us\n", "lacks 'place:'", "place: us (or uk, or none)");
    lacks(
        "cabinet: { in: garage, wall: east, from: south 4 ft, height: 5 ft }\n",
        "lacks 'cabinet:'",
        "cabinet: { in: garage, wall: east");
  }

  @Test
  void noOutlets() throws IOException {
    String line =
        "  - { name: desk, in: office, wall: south, from: west 3 ft, height: 16 in, cables: [cat6] }\n";
    Written nothing = new Written(dir).with(line, "");
    assertTrue(nothing.problem().text().contains("nothing is written for 'outlets'"));
    Written empty = new Written(dir).with("outlets:\n" + line, "outlets: []\n");
    Problem p = empty.assertProblemAt("[]", "at least one outlet");
    assertTrue(p.expected().contains("cables: [cat6]"), p::toString);
  }

  @Test
  void emptyRoomsAndLevels() throws IOException {
    List<Problem> all =
        new Written(dir)
            .with(
                Written.SOUND,
                "house: H\nplace: us\nlevels: {}\nrooms: {}\ncabinet: {}\noutlets: []\n")
            .problems();
    assertTrue(all.stream().anyMatch(p -> p.text().contains("at least one level")), all::toString);
    assertTrue(all.stream().anyMatch(p -> p.text().contains("at least one room")), all::toString);
    assertTrue(
        all.stream().anyMatch(p -> p.text().contains("'cabinet' lacks 'in:'")), all::toString);
  }

  @Test
  void anOutletWithoutCables() throws IOException {
    new Written(dir)
        .with(", cables: [cat6]", "")
        .assertProblemAt("{ name: desk", "no cable goes to outlet 'desk'");
    new Written(dir)
        .with(", cables: [cat6]", ", spare: 2")
        .assertProblemAt("{ name: desk", "no cable goes to outlet 'desk'");
  }

  @Test
  void anOutletNowhere() throws IOException {
    new Written(dir)
        .with(" wall: south, from: west 3 ft, height: 16 in,", "")
        .assertProblemAt("{ name: desk", "outlet 'desk' is nowhere");
    new Written(dir)
        .with("in: office, wall: south, from: west 3 ft", "wall: south, from: west 3 ft")
        .assertProblemAt("{ name: desk", "does not say which room");
    new Written(dir)
        .with("wall: south, from: west 3 ft", "wall: south")
        .assertProblemAt("{ name: desk", "lacks 'from:'");
    new Written(dir)
        .with("wall: south, from: west 3 ft", "wall: south, outside: office south, from: west 3 ft")
        .assertProblemAt("office south, from", "in two places");
  }

  @Test
  void anOutletOrRunNamedTwice() throws IOException {
    new Written(dir)
        .plus("  - { name: desk, in: kitchen, wall: south, from: west 3 ft, cables: [om4] }\n")
        .assertProblemAt("desk, in: kitchen", "the outlet 'desk' is already there, on line 24");
    new Written(dir)
        .with("cables: [cat6]", "cables: [{ kind: cat6, name: up }, { kind: cat6, name: up }]")
        .problems()
        .forEach(p -> assertTrue(p.text().contains("the run 'up' is already there"), p::toString));
  }

  @Test
  void anOutletCalledCabinet() throws IOException {
    new Written(dir)
        .with("name: desk", "name: cabinet")
        .assertProblemAt("cabinet, in", "cabinet's own name");
  }

  @Test
  void aFeedWithIndoorCable() throws IOException {
    new Written(dir)
        .with("cables: [cat6]", "cables: [cat6], feed: yes")
        .assertProblemAt("cat6]", "outdoor-cat6 or outdoor-fibre");
  }
}
