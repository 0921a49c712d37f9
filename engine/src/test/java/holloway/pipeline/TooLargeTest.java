package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Houses larger than any house are refused in a sentence before they fill the memory. */
class TooLargeTest {
  private static final String HOUSE =
      """
      house: Wide House
      place: us
      built: 1990
      levels:
        ground: { floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 8 ft }
      rooms:
        hall: { level: ground, size: 50 m x 20 m }
        den: { level: ground, size: 50 m x 20 m, east-of: hall, align: south }
      cabinet: { in: hall, wall: north, from: west 3 ft, height: 4 ft }
      outlets:
        - { name: desk, in: den, wall: north, from: west 5 ft, height: 16 in, cables: [cat6] }
      """;

  @TempDir Path folder;

  private Path written(String text) throws Exception {
    return Files.writeString(folder.resolve("wide.yaml"), text);
  }

  private void assertRefused(String text, int line, String words) throws Exception {
    Path house = written(text);
    Pipeline pipeline = new Pipeline(Progress.SILENT);
    InputTrouble told = assertThrows(InputTrouble.class, () -> pipeline.understand(house));
    assertEquals(1, told.lines().size(), told.getMessage());
    assertTrue(told.getMessage().startsWith("wide.yaml:" + line + ":"), told.getMessage());
    assertTrue(told.getMessage().contains(words), told.getMessage());
  }

  private static String with(String from, String to) {
    assertTrue(HOUSE.contains(from), from);
    return HOUSE.replace(from, to);
  }

  private static String lines(int count, String line) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(i -> line.replace("#", "" + i))
        .collect(Collectors.joining());
  }

  @Test
  void twoThousandSquareMetresAndNotOneMore() throws Exception {
    new Pipeline(Progress.SILENT).understand(written(HOUSE));
    assertRefused(
        with("hall: { level: ground, size: 50 m", "hall: { level: ground, size: 50.1 m"),
        7,
        "2002 m2");
    String outline = "outline: [[0 m, 0 m], [80 m, 0 m], [80 m, 20 m], [0 m, 20 m]]";
    assertRefused(with("size: 50 m x 20 m }", outline + " }"), 7, "2600 m2");
  }

  @Test
  void tooManyRoomsLevelsAndCables() throws Exception {
    String rooms =
        lines(150, "  r#: { level: ground, size: 1 m x 1 m, north-of: den, align: west }\n");
    String small = HOUSE.replace("50 m x 20 m", "5 m x 5 m");
    assertRefused(small.replace("cabinet:", rooms + "cabinet:"), 7, "more rooms");
    String levels = lines(10, "  l#: { floor: slab }\n");
    String used =
        lines(10, "  r#: { level: l#, size: 1 m x 1 m, above: den, align: south-west }\n");
    String tall =
        small.replace("rooms:\n", levels + "rooms:\n").replace("cabinet:", used + "cabinet:");
    assertRefused(tall, 5, "more levels");
    assertRefused(
        HOUSE
            + lines(
                8,
                "  - { name: d#, in: den, wall: north, from: west 5 ft, height: 16 in, cables: [cat6], spare: 24 }\n"),
        11,
        "more cables");
  }

  @Test
  void aListLongerThanAnyHandWrites() throws Exception {
    String many = lines(501, "  - { socket, in: den, wall: south, from: west 3 ft }\n");
    assertRefused(HOUSE + "things:\n" + many, 13, "at most 500");
  }

  @Test
  void roomsTooFarApart() throws Exception {
    assertRefused(with("east-of: hall, align: south", "at: [101 m, 0 m]"), 7, "151 m");
    new Pipeline(Progress.SILENT)
        .understand(written(with("east-of: hall, align: south", "at: [100 m, 0 m]")));
  }

  /** Every room fits, but nobody can have meant joists and studs 100 mm apart through all of it. */
  @Test
  void moreMembersThanAPlanCanHold() throws Exception {
    String close = "outer-walls: { every: 100 mm }\ninner-walls: { every: 100 mm }\nlevels:";
    String rows =
        IntStream.range(1, 65)
            .mapToObj(
                i ->
                    "  r%d: { level: ground, size: 25 m x 1.2 m, north-of: %s, align: west }\n"
                        .formatted(i, i == 1 ? "den" : "r" + (i - 1)))
            .collect(Collectors.joining());
    Path house =
        written(
            with("levels:", close)
                .replace("50 m x 20 m", "25 m x 1.2 m")
                .replace("every: 16 in", "every: 100 mm")
                .replace("cabinet:", rows + "cabinet:"));
    new Pipeline(Progress.SILENT).understand(house);
    InputTrouble told =
        assertThrows(
            InputTrouble.class,
            () -> new Pipeline(Progress.SILENT).plan(house, PlanSettings.USUAL));
    assertTrue(told.getMessage().contains("up to 12000"), told.getMessage());
  }
}
