package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.support.Rough;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Wrong houses through the whole program: clear words, the right exit code, nothing written. */
class BadInputTest {
  private static final String SOUND =
      """
      house: Two Rooms
      place: us
      built: 1990
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
      rooms:
        hall: { level: ground, size: 12 ft x 10 ft, plain: yes }
        den: { level: ground, size: 12 ft x 10 ft, east-of: hall, align: south }
      openings:
        - { door, between: [hall, den], from: south 1 ft, width: 30 in }
        - { window, side: den south, from: west 4 ft, width: 4 ft, sill: 3 ft, head: 6 ft 8 in }
      roof:
        - { over: ground, shape: gable, ridge: east-west, pitch: 6/12, frame: trusses,
            hatch: { in: hall, at: [west 6 ft, south 5 ft] } }
      cabinet: { in: hall, wall: north, from: west 3 ft, height: 4 ft }
      outlets:
        - { name: desk, in: den, wall: north, from: west 5 ft, height: 16 in, cables: [cat6] }
      """;

  @TempDir Path folder;

  private Said plan(String text) throws Exception {
    Path house = Files.writeString(folder.resolve("house.yaml"), text);
    return Said.whole(
        "plan", house.toString(), "--effort", "quick", "--out", folder.resolve("out").toString());
  }

  private static String with(String from, String to) {
    assertTrue(SOUND.contains(from), from);
    return SOUND.replace(from, to);
  }

  /** Exit code 3; every line of the answer begins with its place; nothing is written. */
  private void assertRefused(String text, int line, String words) throws Exception {
    Said said = plan(text);
    assertEquals(3, said.code(), said.toString());
    assertEquals("", said.out());
    assertClean(said);
    assertTrue(
        said.err().lines().anyMatch(l -> l.startsWith("house.yaml:" + line + ":")),
        "line " + line + ": " + said.err());
    assertTrue(said.err().contains(words), said.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  private static void assertClean(Said said) {
    assertFalse(said.err().contains("Exception"), said.err());
    assertFalse(said.err().contains("\tat "), said.err());
  }

  @Test
  void theSoundHouseIsPlanned() throws Exception {
    assertEquals(0, plan(SOUND).code());
    assertTrue(Files.exists(folder.resolve("out/plan.json")));
  }

  @Test
  void roomsThatOverlap() throws Exception {
    assertRefused(
        with("east-of: hall, align: south", "at: [6 ft, 2 ft]"), 7, "rooms den and hall overlap");
  }

  @Test
  void outletsWhereNoneCanBe() throws Exception {
    assertRefused(
        with("north, from: west 5 ft", "north, from: west 13 ft"), 17, "beyond the north wall");
    assertRefused(with("north, from: west 5 ft", "west, from: south 2 ft"), 17, "door");
    String window = "south, from: west 6 ft, height: 4 ft";
    assertRefused(with("north, from: west 5 ft, height: 16 in", window), 17, "window");
  }

  @Test
  void placingThatContradictsItself() throws Exception {
    assertRefused(with("x 10 ft, plain: yes", "x 10 ft, west-of: den, align: south"), 7, "");
    assertRefused(with("level: ground, size: 12 ft x 10 ft, plain", "level: ground, plain"), 7, "");
    String third = "  box: { level: ground, size: 4 ft x 4 ft, west-of: den, align: south }\n";
    assertRefused(with("openings:\n", third + "openings:\n"), 7, "box and hall overlap");
  }

  @Test
  void housesOfNothing() throws Exception {
    String rooms = SOUND.substring(SOUND.indexOf("  hall:"), SOUND.indexOf("openings:"));
    assertEquals(3, plan(SOUND.replace(rooms, "")).code());
    assertEquals(3, plan(with("  ground: { floor: slab, ceiling-height: 8 ft }\n", "")).code());
    assertEquals(3, plan("house: x\n").code());
    assertEquals(3, plan("{}").code());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void sizesOfNothingAndOfTenKilometres() throws Exception {
    assertRefused(with("size: 12 ft x 10 ft, plain", "size: 0 ft x 10 ft, plain"), 7, "0 ft");
    assertRefused(with("size: 12 ft x 10 ft, plain", "size: -3 m x 10 ft, plain"), 7, "-3 m");
    assertRefused(with("size: 12 ft x 10 ft, plain", "size: 10 km x 10 ft, plain"), 7, "10 km");
    String long10 = "size: 10000 m x 10 ft, plain";
    assertRefused(with("size: 12 ft x 10 ft, plain", long10), 7, "longer than 1000 m");
    String joists = "floor: { joists: 2x10, every: 0 in, run: east-west }";
    assertRefused(with("floor: slab", joists), 5, "more than nothing");
    assertRefused(with("pitch: 6/12", "pitch: 6/0"), 13, "roof");
    assertRefused(with("ceiling-height: 8 ft", "ceiling-height: 1 in"), 5, "short");
  }

  @Test
  void aRoofWithoutPitchIsRefusedOrPlanned() throws Exception {
    Said said = plan(with("pitch: 6/12", "pitch: 0/12"));
    assertTrue(List.of(0, 3, 4, 5).contains(said.code()), said.toString());
    assertClean(said);
  }

  @Test
  void filesTooLargeOrFullOfAliases() throws Exception {
    Path file = folder.resolve("huge.yaml");
    try (RandomAccessFile f = new RandomAccessFile(file.toFile(), "rw")) {
      f.setLength(50_000_000);
    }
    Said huge = Said.whole("plan", file.toString());
    assertEquals(3, huge.code());
    assertEquals(1, huge.err().lines().count(), huge.err());
    StringBuilder bomb = new StringBuilder("house: &a0 [x, x]\n");
    for (int i = 1; i < 40; i++) {
      bomb.append("k%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
    }
    Said aliases = plan(bomb.toString());
    assertEquals(3, aliases.code());
    assertClean(aliases);
    assertTrue(aliases.err().length() < 50_000, "the answer stays in proportion");
  }

  @Test
  void anOutletNobodyCanReachIsFourAndTheOthersArePlanned() throws Exception {
    String far =
        "  - { name: far, in: den, wall: east, from: south 5 ft, height: 16 in, cables: [om4] }\n";
    String shut =
        with(
            "openings:", "outer-walls: { fill: foam }\nwishes: { bans: [den/surface] }\nopenings:");
    Path house = Files.writeString(folder.resolve("house.yaml"), shut + far);
    Said said = Said.whole("plan", house.toString(), "--effort", "quick", "--json");
    assertEquals(4, said.code(), said.toString());
    JsonNode plan = new ObjectMapper().readTree(said.out());
    assertTrue(plan.at("/unrouted/0/why-not").size() > 0, said.out());
    assertEquals(2, plan.get("runs").size() + plan.get("unrouted").size());
  }

  private static List<Path> samples() throws Exception {
    Path here = Path.of("samples").toAbsolutePath();
    Path there = Files.isDirectory(here) ? here : Path.of("../samples");
    try (Stream<Path> files = Files.list(there)) {
      // Without the large house: each of its sound mutants would be planned for over a minute.
      return files
          .filter(f -> f.toString().endsWith(".yaml") && !f.toString().endsWith(".found.yaml"))
          .filter(f -> !f.endsWith("wren-hollow.yaml"))
          .sorted()
          .toList();
    }
  }

  /** One line dropped or doubled, or one word dropped, doubled, or taken from elsewhere. */
  private static String mutant(String text, Random r) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    int at = r.nextInt(lines.size());
    int how = r.nextInt(6);
    if (how == 0) {
      lines.remove(at);
    } else if (how == 1) {
      lines.add(r.nextInt(lines.size()), lines.get(at));
    } else {
      String[] words = text.split("(?=[\\s,:{}\\[\\]])");
      int w = r.nextInt(words.length);
      words[w] =
          switch (how) {
            case 2 -> "";
            case 3 -> words[w] + words[w];
            case 4 -> words[r.nextInt(words.length)];
            default -> words[w].replaceAll("[0-9]+", String.valueOf(r.nextInt(400) - 20));
          };
      return String.join("", words);
    }
    return String.join("\n", lines) + "\n";
  }

  private void mutants(int count, long seed, String verb, String... more) throws Exception {
    List<Path> samples = samples();
    Random r = new Random(seed);
    for (int i = 0; i < count; i++) {
      Path sample = samples.get(i % samples.size());
      String text = mutant(Files.readString(sample), r);
      Path house = Files.writeString(folder.resolve("mutant.yaml"), text);
      List<String> args = new ArrayList<>(List.of(verb, house.toString()));
      args.addAll(List.of(more));
      long begun = System.nanoTime();
      Said said = Said.whole(args.toArray(String[]::new));
      double seconds = (System.nanoTime() - begun) / 1e9;
      String which = "%s mutant %d of %s:%n".formatted(verb, i, sample.getFileName());
      assertTrue(List.of(0, 3, 4, 5).contains(said.code()), () -> which + said.err() + text);
      assertClean(said);
      assertTrue(seconds < 30, which + seconds + " s");
    }
  }

  @Test
  void mutantsOfTheSamplesAreUnderstoodOrRefused() throws Exception {
    mutants(150, 20_260, "check");
  }

  @Test
  void mutantsOfTheSamplesArePlannedOrRefused() throws Exception {
    mutants(40, 4_711, "plan", Rough.WORDS);
  }
}
