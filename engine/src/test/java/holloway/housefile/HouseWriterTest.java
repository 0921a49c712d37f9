package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Pipeline;
import holloway.pipeline.Progress;
import holloway.plan.PlanJson;
import holloway.support.Differences;
import holloway.support.RandomHouseText;
import holloway.support.Rough;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house that is written and read again is the same house, and has the same plan. */
class HouseWriterTest {
  @TempDir Path folder;

  private Path put(String place, String name, String text) throws Exception {
    Path in = Files.createDirectories(folder.resolve(place));
    return Files.writeString(in.resolve(name), text);
  }

  private static Reading.Sound sound(Path file) {
    Reading r = HouseFile.read(file);
    return assertInstanceOf(Reading.Sound.class, r, r::toString);
  }

  /** The file as written by us, with its companions beside it. */
  private Path again(Path first) throws Exception {
    Files.deleteIfExists(folder.resolve("again/house.found.yaml"));
    Reading.Sound read = sound(first);
    Optional<String> effort = HouseWriter.effort(read.request());
    if (effort.isPresent()) {
      put("again", "effort.yaml", effort.get());
    }
    if (HouseWriter.found(read.house()).isPresent()) {
      put("again", "house.found.yaml", HouseWriter.found(read.house()).get());
    }
    String text = HouseWriter.house(read.house(), read.request(), effort.map(e -> "effort.yaml"));
    return put("again", "house.yaml", text);
  }

  private void assertSame(Path first) throws Exception {
    Path second = again(first);
    Reading.Sound one = sound(first);
    Reading.Sound other = sound(second);
    assertEquals(List.of(), Differences.between(one.house(), other.house()), first::toString);
    assertEquals(List.of(), Differences.between(one.request(), other.request()), first::toString);
  }

  /** Fingerprints and lines of the file are of the text, not of the house. */
  private static String plan(Path house) {
    String json = PlanJson.write(new Pipeline(Progress.SILENT).plan(house, Rough.SETTINGS).plan());
    return json.replaceAll("\"sha256\" ?: ?\"[0-9a-f]+\"", "\"sha256\": \"\"")
        .replaceAll("\\.yaml:\\d+(:\\d+)?", ".yaml");
  }

  private void assertSamePlan(Path first) throws Exception {
    String second = plan(again(first)).replace("house.yaml", first.getFileName().toString());
    assertEquals(plan(first), second, first::toString);
  }

  private Path everything() throws Exception {
    put("first", "house.found.yaml", resource("everything.found.yaml"));
    return put("first", "house.yaml", resource("everything.yaml"));
  }

  private static String resource(String name) throws Exception {
    try (InputStream in = HouseWriterTest.class.getResourceAsStream("/holloway/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void everythingThatCanBeSaidIsReadAgain() throws Exception {
    Path house = everything();
    assertSame(house);
    put("first", "effort.yaml", effortKey() + ": 7.25\n");
    put("first", "town.yaml", resource("everything.rules.yaml"));
    put("again", "town.yaml", resource("everything.rules.yaml"));
    String both = "effort: effort.yaml\nrules: town.yaml\n";
    Files.writeString(house, Files.readString(house) + both);
    assertTrue(sound(house).request().effort().overridden());
    assertEquals("Everywhere (invented)", sound(house).house().ownRules().name());
    assertSame(house);
  }

  private static String effortKey() {
    return EffortFile.defaults().minutes().keySet().stream().sorted().findFirst().orElseThrow();
  }

  @Test
  void theSamplesAreReadAgain() throws Exception {
    Path samples = Path.of(Files.isDirectory(Path.of("samples")) ? "samples" : "../samples");
    try (Stream<Path> files = Files.list(samples)) {
      for (Path f : files.filter(p -> isHouse(p)).sorted().toList()) {
        assertSame(f);
      }
    }
  }

  /** What was found at work lies in a file of its own beside its house. */
  private static boolean isHouse(Path p) {
    return p.toString().endsWith(".yaml") && !p.toString().endsWith(".found.yaml");
  }

  @Test
  void randomHousesAreReadAgain() throws Exception {
    for (long seed = 1; seed <= 60; seed++) {
      assertSame(put("first", "house.yaml", RandomHouseText.of(seed)));
    }
  }

  /** Names with marks that YAML reads, links with and without names, and a roof in degrees. */
  @Test
  void oddNamesAndLinksAreReadAgain() throws Exception {
    String odd =
        Written.SOUND
            .replace("desk,", "\"yes: {no} # 'x' \\u00e9\",")
            .replace("pitch: 6/12", "pitch: 33.333 deg")
            .replace("built: 1994\n", "")
            .replace("office", "null");
    String links =
        """
          - { name: shelf, in: kitchen, wall: north, from: west 3 ft }
        links:
          - { from: shelf, to: cabinet, cable: cat6, name: named }
          - { from: shelf, to: cabinet, cable: cat6 }
          - { from: cabinet, to: shelf, cable: cat6, name: to shelf }
        """;
    assertSame(
        put(
            "first",
            "house.yaml",
            odd.replace("in: null", "in: \"null\"")
                    .replace("beside: null west", "beside: null west")
                    .replace("  null:", "  \"null\":")
                + links));
  }

  @Test
  void thePlanIsTheSame() throws Exception {
    assertSamePlan(everything());
    for (long seed = 3; seed <= 5; seed++) {
      RandomHouseText.Shape shape = new RandomHouseText.Shape(2, 6, 4, seed == 4, seed);
      assertSamePlan(put("first", "random" + seed + ".yaml", RandomHouseText.of(shape)));
    }
  }
}
