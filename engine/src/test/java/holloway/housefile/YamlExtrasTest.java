package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** YAML that is allowed elsewhere and refused here. */
class YamlExtrasTest {
  @TempDir Path dir;

  @Test
  void aKeyTwice() throws IOException {
    Problem p =
        new Written(dir)
            .with("built: 1994", "built: 1994\nplace: uk")
            .assertProblemAt("place: uk", "'place' is written twice", "line 2");
    assertEquals("place", p.read());
  }

  @Test
  void aRoomTwice() throws IOException {
    new Written(dir)
        .with("  office:", "  garage: { level: ground, size: 3 m x 3 m }\n  office:")
        .assertProblemAt(
            "garage: { level: ground, size: 3 m", "'garage' is written twice", "line 8");
  }

  @Test
  void anAnchorAndItsAlias() throws IOException {
    List<Problem> all =
        new Written(dir)
            .with("size: 20 ft x 22 ft", "size: &s 20 ft x 22 ft")
            .with("size: 14 ft x 12 ft", "size: *s")
            .problems();
    assertTrue(all.get(0).text().contains("anchors are not used"), all::toString);
    assertEquals(8, all.get(0).where().line());
    assertEquals("&s", all.get(0).read());
    assertTrue(all.stream().anyMatch(p -> p.text().contains("aliases are not used")));
    assertEquals(9, all.get(1).where().line());
  }

  @Test
  void aBombOfAliasesIsOnlyAListOfProblems() throws IOException {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
    for (int i = 1; i < 40; i++) {
      bomb.append("a%d: &a%d [*a%d, *a%d, *a%d]\n".formatted(i, i, i - 1, i - 1, i - 1));
    }
    assertTrue(new Written(dir).plus(bomb.toString()).problems().size() > 40);
  }

  @Test
  void aTag() throws IOException {
    new Written(dir)
        .with("built: 1994", "built: !!int 1994")
        .assertProblemAt("!!int", "tags are not used");
  }

  @Test
  void aMergeKey() throws IOException {
    new Written(dir)
        .with("level: upper, size", "<<: { plain: yes }, level: upper, size")
        .assertProblemAt("<<", "merge keys are not used");
  }

  @Test
  void aKeyThatIsAList() throws IOException {
    assertTrue(
        new Written(dir)
            .plus("? [a, b]\n: 1\n")
            .problem()
            .text()
            .contains("a key must be a plain word"));
  }
}
