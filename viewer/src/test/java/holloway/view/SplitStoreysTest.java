package holloway.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of a split-level house each level has the share of its own part, in plan and in height. */
class SplitStoreysTest {
  private static final String HOUSE =
      """
      house: Step Toy
      place: us
      built: 1994
      levels:
        main: { floor: slab, ceiling-height: 8 ft }
        lower: { floor: slab, ceiling-height: 8 ft, beside: main, step: -4 ft 3 in }
        upper: { above: lower, floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 8 ft }
      rooms:
        store: { level: main, size: 12 ft x 12 ft, plain: yes }
        den: { level: lower, size: 12 ft x 12 ft, east-of: store, align: south, plain: yes }
        loft: { level: upper, size: 12 ft x 12 ft, above: den, align: south-west, plain: yes }
      cabinet: { in: den, wall: north, from: west 4 ft, height: 5 ft }
      outlets:
        - { name: desk, in: loft, wall: north, from: west 7 ft, height: 16 in, cables: [cat6] }
      """;

  @TempDir static Path dir;
  private static Pictures pictures;
  private static Model model;

  @BeforeAll
  static void plan() throws IOException {
    Path file = Files.writeString(dir.resolve("step.yaml"), HOUSE);
    LiveHouse live = LiveHouse.open(file, Progress.SILENT);
    pictures = new Pictures(live.drawn(live.judged()));
    model = pictures.model();
  }

  /** The main floor lies half-way up the lower level: one height, two levels. */
  @Test
  void oneHeightBelongsToTwoLevels() {
    float z = middle("store").z() + 0.1f;
    assertEquals("main", at("store", z));
    assertEquals("lower", at("den", z));
    assertEquals("upper", at("loft", middle("loft").z() + 0.1f));
    assertEquals("main", at("store", middle("loft").z() + 1), "over the store there is no more");
  }

  @Test
  void everyLevelHasAHeight() {
    for (Storey s : model.storeys()) {
      assertTrue(s.low() < s.floor() && s.ceiling() < s.high(), s::toString);
    }
  }

  @Test
  void whatEndsThereLiesThere() {
    assertEquals("upper", model.storeyAt(end("desk")).name());
    assertEquals("lower", model.storeyAt(end("cabinet")).name());
  }

  /** The store stands in the lower level's height, where the den's cable rises. */
  @Test
  void aLevelShowsNoCableOfThePartBeside() {
    assertEquals(0, tubes("main"));
    assertTrue(tubes("lower") > 0);
    assertTrue(tubes("upper") > 0);
  }

  private static long tubes(String level) {
    Pictures.Paper paper =
        new Pictures.Paper(800, 500, Theme.DUSK, (t, size, bold) -> t.length() * size / 2);
    Sheet sheet = pictures.level(level, paper).orElseThrow();
    return sheet.panes().stream().mapToLong(p -> p.bodies().tubes.size()).sum();
  }

  private static Vector3fc end(String name) {
    return model.ends().stream().filter(e -> e.name().equals(name)).findFirst().orElseThrow().at();
  }

  private static Vector3fc middle(String room) {
    return model.rooms().stream()
        .filter(r -> r.name().equals(room))
        .findFirst()
        .orElseThrow()
        .middle();
  }

  private static String at(String room, float z) {
    Vector3fc m = middle(room);
    return model.storeyAt(new Vector3f(m.x(), m.y(), z)).name();
  }
}
