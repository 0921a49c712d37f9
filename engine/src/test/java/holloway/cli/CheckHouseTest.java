package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code check HOUSE} prints and draws. */
class CheckHouseTest {
  private static final Path SAMPLES = Path.of("..", "samples");
  @TempDir Path folder;

  private Path house(String old, String changed) throws Exception {
    Path file = folder.resolve("h.yaml");
    if (!Files.exists(file)) {
      assertEquals(0, Said.whole("start", "--built", "1985", "--out", file.toString()).code());
    }
    String text = Files.readString(file);
    assertTrue(text.contains(old), old);
    return Files.writeString(file, text.replace(old, changed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "plumb-corner", "quince-ranch", "tin-street"})
  void theTextFitsAndNamesEveryLevelsParts(String house) {
    Said said = Said.whole("check", SAMPLES.resolve(house + ".yaml").toString());
    assertEquals(0, said.code(), said.err());
    said.out().lines().forEach(l -> assertTrue(l.length() <= 80, l));
    for (String part : new String[] {"LEVEL ", "WALLS OF ", "OPENINGS OF ", "all rooms", "--out"}) {
      assertTrue(said.out().contains(part), part);
    }
  }

  @Test
  void drawingsAreWrittenWholeOrNotAtAll() throws Exception {
    String house = SAMPLES.resolve("alder-lane.yaml").toString();
    Path out = folder.resolve("out");
    assertEquals(0, Said.whole("check", house, "--out", out.toString()).code());
    TreeSet<String> names = new TreeSet<>();
    try (var files = Files.list(out)) {
      files.forEach(f -> names.add(f.getFileName().toString()));
    }
    assertTrue(names.contains("plan-ground.svg") && names.contains("plan-upper.svg"), "" + names);
    Path other = Files.createDirectory(folder.resolve("other"));
    Files.writeString(other.resolve("plan-upper.svg"), "mine");
    Said refused = Said.whole("check", house, "--out", other.toString());
    assertEquals(2, refused.code());
    assertEquals("", refused.out());
    assertEquals("mine", Files.readString(other.resolve("plan-upper.svg")));
    assertFalse(Files.exists(other.resolve("plan-ground.svg")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "in: office, wall: west, from: south 2 ft, height: 16 in"
            + "|in: office, wall: south, from: west 4 ft, height: 5 ft|lies in a window",
        "cabinet: { in: hall, wall: north, from: west 2 ft"
            + "|cabinet: { in: hall, wall: south, from: west 1 ft|lies in a door",
      })
  void anEndInAnOpeningIsSaidAtOnce(String old, String changed, String says) throws Exception {
    Said said = Said.whole("check", house(old, changed).toString());
    assertEquals(3, said.code(), said.out());
    assertTrue(said.err().contains(says), said.err());
    assertEquals("", said.out());
  }

  @Test
  void whatIsAssumedSaysWhereToSayOtherwise() throws Exception {
    String taken = "outer studs 2x6, for outer walls";
    Path file = house("levels:\n", "levels:\n");
    assertTrue(Said.whole("check", file.toString()).out().contains(taken));
    house("levels:\n", "outer-walls: { studs: 2x4 }\nlevels:\n");
    Said said = Said.whole("check", file.toString());
    assertFalse(said.out().contains("outer studs 2x"), said.out());
  }

  @Test
  void theJsonTellsOpeningsAndLinings() throws Exception {
    Said said = Said.whole("check", SAMPLES.resolve("alder-lane.yaml").toString(), "--json");
    JsonNode root = new ObjectMapper().readTree(said.out());
    JsonNode door = root.get("openings").get(0);
    assertEquals("D1", door.get("tag").asText());
    assertEquals(2 * 304.8 + 203.2, door.get("width-mm").asDouble(), 0.1);
    JsonNode wall = root.get("walls").get(0);
    double core = wall.get("thickness-mm").asDouble();
    core -= wall.get("lining-low-mm").asDouble() + wall.get("lining-high-mm").asDouble();
    assertEquals(139.7, core, 0.1, "the 2x6 garage wall");
  }
}
