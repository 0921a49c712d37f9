package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.house.Found;
import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The page of the pack in a real browser, under a reader of HTML and one of WCAG: {@code .ci/web}
 * says what each saw.
 */
class PackInBrowserTest {
  /** Set where the page has to be looked at: missing tools are then a failure. */
  private static final String MUST = "HOLLOWAY_WEB_MUST";

  /** A browser that hangs is given up then; on a machine with other work a page takes minutes. */
  private static final int HANGS_MIN = 15;

  private static final Path TOOLS = Path.of("..", ".ci", "web").toAbsolutePath().normalize();

  @TempDir Path folder;

  private String house;

  /** The same houses and languages as in the PDF. */
  static Stream<Arguments> houses() {
    return PackPdfTest.houses();
  }

  @ParameterizedTest
  @MethodSource("houses")
  void theBrowserAndTheCheckersFindNothing(String name, Language language) throws Exception {
    orSkip();
    house = name;
    Path page = folder.resolve("index.html");
    var files =
        PackedHouse.files(PackedHouse.of(name), language, PaperSize.A4, Pictures.none("not asked"));
    Files.write(page, files.get("index.html"));
    JsonNode seen = look(page);
    assertNothing(seen.get("requests"), "fetched");
    assertNothing(seen.get("console"), "on the console");
    assertNothing(seen.get("phone"), "cut off or hidden at 360 px");
    assertNothing(seen.get("print").get("a4"), "cut off on A4");
    assertNothing(seen.get("print").get("letter"), "cut off on Letter");
    assertNothing(seen.get("html"), "wrong in the HTML");
    assertNothing(seen.get("narrow").get("violations"), "not accessible, at 360 px");
    for (String scheme : List.of("light", "dark")) {
      assertTrue(seen.get(scheme).get("passes").asInt() > 30, "rules that looked at something");
      assertNothing(seen.get(scheme).get("violations"), "not accessible, " + scheme);
      assertNothing(seen.get(scheme).get("incomplete"), "left to the eye, " + scheme);
    }
    assertNotEquals(seen.get("light").get("ground"), seen.get("dark").get("ground"));
    enlarges(seen.get("enlarged"));
    remembers(seen.get("kept"));
    others(seen.get("others"));
    readBack(seen.get("saved"));
    filters(seen.get("filtered"));
    PrintedPages.within(Files.readAllBytes(folder.resolve("a4.pdf")), PaperSize.A4);
    PrintedPages.within(Files.readAllBytes(folder.resolve("letter.pdf")), PaperSize.LETTER);
  }

  /** A hole and something to buy were ticked, a note was written, and the page was read again. */
  private void remembers(JsonNode kept) {
    assertEquals(List.of(), words(kept.get("before").get("ticked")));
    assertEquals("0", kept.get("before").get("done").asText());
    JsonNode after = kept.get("after");
    assertEquals(kept.get("set"), after);
    assertEquals(2, new TreeSet<>(words(after.get("ticked"))).size());
    assertEquals("2", after.get("done").asText());
    minutes(kept.get("before").get("minutes"), after);
    assertEquals("pipe, 40 mm left \"of\" <b>", after.get("notes").get(0).get(1).asText());
  }

  /** Whose ticks a page of the same names shows: its own, and a twin's only when asked. */
  private static void others(JsonNode seen) {
    assertEquals(0, seen.get("other").get("ticks").asInt(), "another house of these names");
    int kept = seen.get("same").get("ticks").asInt();
    assertTrue(kept > 0, "the same house");
    assertEquals(kept, seen.get("again").get("ticks").asInt(), "a room measured again");
    assertEquals(0, seen.get("mirrored").get("ticks").asInt(), "a mirror image");
    JsonNode twin = seen.get("twin");
    assertEquals(0, twin.get("ticks").asInt(), "a twin from another file");
    assertTrue(twin.get("asked").asBoolean(), "whether it is the same house");
    assertEquals(kept, twin.get("taken").asInt());
    assertEquals(kept, twin.get("after").asInt());
    for (String name : List.of("other", "again", "same", "mirrored")) {
      assertTrue(!seen.get(name).get("asked").asBoolean(), name);
    }
    assertTrue(!twin.get("again").asBoolean(), "asked once");
  }

  /**
   * The hole that was ticked is a step of the work too: its minutes are done, after a reload too.
   */
  private void minutes(JsonNode before, JsonNode after) {
    Plan plan = PackedHouse.of(house).planned().plan();
    String ticked =
        words(after.get("ticked")).stream().filter(t -> t.startsWith("hole/")).findFirst().get();
    Plan.PlannedHole hole =
        plan.holes().stream().filter(h -> ticked.equals("hole/" + h.id())).findFirst().get();
    long all = Math.round(plan.totals().minutes());
    assertEquals(List.of("0", "0", String.valueOf(all)), words(before));
    List<String> done = words(after.get("minutes"));
    assertEquals("1", done.get(0));
    assertTrue(Integer.parseInt(done.get(1)) >= Math.floor(hole.minutes()), done.toString());
    assertTrue(Integer.parseInt(done.get(1)) < all);
    assertEquals(String.valueOf(all), done.get(2));
    assertEquals(1, after.get("turns").size());
    assertTrue(after.get("turns").get(0).asText().matches("1/\\d+, [1-9]\\d*/\\d+ min"));
  }

  /** The saved file lies beside the house file and says what was ticked; a note stays a remark. */
  private void readBack(JsonNode saved) throws IOException {
    Path file = PackedHouse.file(house, folder.resolve("ticked.yaml"));
    Files.writeString(folder.resolve("ticked.found.yaml"), saved.get("text").asText());
    List<String> read = new ArrayList<>();
    Reading.Sound sound = (Reading.Sound) HouseFile.read(file);
    for (Found f : sound.house().found()) {
      Found.HoleMade made = (Found.HoleMade) f;
      read.add(made.id() + " " + made.diameter().toMm() + " " + made.cables());
    }
    List<String> ticked = new ArrayList<>();
    saved
        .get("holes")
        .forEach(
            h ->
                ticked.add(
                    h.get("id").asText()
                        + " "
                        + h.get("mm").asDouble()
                        + " "
                        + h.get("lies").asInt()));
    assertEquals(ticked, read);
    assertTrue(read.size() > 0 && !saved.get("pull").asText().isEmpty());
    assertTrue(saved.get("text").asText().contains("one\\u2028holes: []\\ntwo"));
  }

  /** Pictures fit the phone; each can be made larger in its own strip. */
  private static void enlarges(JsonNode seen) {
    int buttons = seen.get("buttons").asInt();
    assertTrue(buttons > 0);
    assertEquals(0, seen.get("before").asInt(), "strips that have to be scrolled");
    assertEquals(buttons, seen.get("large").asInt(), "strips that have become larger");
    assertEquals(buttons, seen.get("pressed").asInt());
    assertEquals(360, seen.get("page").asInt());
    assertEquals(0, seen.get("after").asInt());
  }

  private static void filters(JsonNode seen) {
    List<String> all = words(seen.get("all"));
    String place = seen.get("place").asText();
    assertEquals(all.stream().filter(place::equals).toList(), words(seen.get("one")));
    assertTrue(new TreeSet<>(all).size() > 1 && words(seen.get("one")).size() > 0);
    assertEquals(all.size(), seen.get("again").asInt());
    assertTrue(seen.get("steps").asInt() >= all.size());
  }

  private static void assertNothing(JsonNode list, String what) {
    assertEquals(List.of(), words(list), what);
  }

  private static List<String> words(JsonNode list) {
    List<String> out = new ArrayList<>();
    list.forEach(n -> out.add(n.asText()));
    return out;
  }

  private JsonNode look(Path page) throws IOException, InterruptedException {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    Path said = folder.resolve("said.json");
    Path script = TOOLS.resolve("check.mjs");
    Process p =
        new ProcessBuilder(
                "node", script.toString(), page.toString(), folder.toString(), java.toString())
            .redirectOutput(said.toFile())
            .redirectError(folder.resolve("errors.txt").toFile())
            .start();
    boolean ended = p.waitFor(HANGS_MIN, TimeUnit.MINUTES);
    p.destroyForcibly();
    assertTrue(ended, () -> "the script still ran after " + HANGS_MIN + " min: " + errors());
    assertEquals(0, p.exitValue(), () -> "the script failed: " + errors());
    return new ObjectMapper().readTree(said.toFile());
  }

  private String errors() {
    try {
      return Files.readString(folder.resolve("errors.txt"));
    } catch (IOException e) {
      return e.toString();
    }
  }

  private static void orSkip() {
    String lacks =
        !onPath("node")
            ? "node is missing"
            : !onPath("chromium") && !onPath("chromium-browser") && !onPath("google-chrome")
                ? "Chromium is missing"
                : !Files.isDirectory(TOOLS.resolve("node_modules"))
                    ? "run npm install in .ci/web first"
                    : "";
    String must = System.getenv(MUST);
    if (!lacks.isEmpty() && must != null && !must.isEmpty()) {
      throw new AssertionError(MUST + " is set, and: " + lacks);
    }
    if (!lacks.isEmpty()) {
      System.err.println("the pack's page is not tested in a browser: " + lacks);
    }
    Assumptions.assumeTrue(lacks.isEmpty(), lacks);
  }

  private static boolean onPath(String program) {
    for (String dir : System.getenv("PATH").split(java.io.File.pathSeparator)) {
      if (Files.isExecutable(Path.of(dir).resolve(program))) {
        return true;
      }
    }
    return false;
  }
}
