package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.WallSpot;
import holloway.request.Outlet;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.survey.Placed;
import holloway.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The invented houses and the starter read as they stand; damaged copies never break the reader.
 */
class SamplesTest {
  private static final Path SAMPLES = HouseSchemaTest.SAMPLES;

  private static final String MARKS = "{}[]:,-'\"# x\n\t&*!|>%@`7";

  @TempDir Path dir;

  @ParameterizedTest
  @CsvSource({"alder-lane,14", "quince-ranch,10", "tin-street,10", "plumb-corner,8"})
  void read(String name, int runs) {
    Reading r = HouseFile.read(SAMPLES.resolve(name + ".yaml"));
    Reading.Sound s = assertInstanceOf(Reading.Sound.class, r, r::toString);
    assertEquals(runs, s.request().runs().size());
    assertTrue(s.request().outlets().stream().anyMatch(o -> o.feed()));
  }

  /**
   * Rooms tile with walls between them, and every spot has a wall behind it. What is left in Plumb
   * Corner is the one box that nobody remembers, through two storeys.
   */
  @ParameterizedTest
  @CsvSource({"alder-lane,''", "quince-ranch,''", "tin-street,''", "plumb-corner,ground upper"})
  void close(String name, String left) {
    var s = (Reading.Sound) HouseFile.read(SAMPLES.resolve(name + ".yaml"));
    Placed placed = Survey.of(s.house()).value();
    assertEquals(List.of(), placed.misclosures());
    assertEquals(
        left, placed.unaccounted().stream().map(u -> u.level()).collect(Collectors.joining(" ")));
    assertEquals(left.isEmpty() ? 0 : 1, placed.spaces().size());
    List<WallSpot> spots = new ArrayList<>(List.of(s.request().cabinet().at()));
    s.house().things().forEach(t -> spots.add(t.at()));
    for (Outlet o : s.request().outlets()) {
      for (Spot spot : o.spots()) {
        if (spot instanceof Spot.OnWall w) {
          spots.add(w.at());
        } else if (spot instanceof Spot.Outside w) {
          spots.add(w.at());
        }
      }
    }
    for (WallSpot w : spots) {
      assertTrue(
          placed.findSpot(w.face(), w.along(), w.height().value().nm()).isPresent(), w::toString);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "quince-ranch", "tin-street", "plumb-corner"})
  void sayThatTheyAreInvented(String name) throws IOException {
    List<String> lines = Files.readAllLines(SAMPLES.resolve(name + ".yaml"));
    assertEquals("# yaml-language-server: $schema=house.schema.json", lines.get(0));
    assertTrue(lines.get(1).contains("invented"), lines.get(1));
  }

  @Test
  void alderLaneHasOneOfEachKind() {
    var s = (Reading.Sound) HouseFile.read(SAMPLES.resolve("alder-lane.yaml"));
    List<String> ids = s.request().runs().stream().map(Run::id).toList();
    assertTrue(
        ids.containsAll(
            List.of(
                "office desk/cat6-1",
                "office desk/cat6-2",
                "office desk/om4-1",
                "office desk/spare-1")),
        ids::toString);
  }

  /** Lines dropped, swapped, cut and doubled, letters changed: a reading, never an exception. */
  @Test
  void damagedCopiesAreReadOrRefused() throws IOException {
    Random random = new Random(20_260_101);
    Path file = dir.resolve("damaged.yaml");
    int refused = 0;
    for (String name : List.of("alder-lane", "quince-ranch", "tin-street", "plumb-corner")) {
      String text = Files.readString(SAMPLES.resolve(name + ".yaml"));
      for (int i = 0; i < 150; i++) {
        Files.writeString(file, damage(text, random));
        if (HouseFile.read(file) instanceof Reading.Faulty f) {
          refused++;
          assertFalse(f.problems().isEmpty());
          f.problems().forEach(p -> assertFalse(p.text().isBlank()));
        }
      }
    }
    assertTrue(refused > 300, "only " + refused + " of 600 were refused");
  }

  private static String damage(String text, Random random) {
    StringBuilder s = new StringBuilder(text);
    for (int n = random.nextInt(4); n >= 0; n--) {
      int at = random.nextInt(s.length() - 60);
      int length = 1 + random.nextInt(40);
      switch (random.nextInt(4)) {
        case 0 -> s.delete(at, at + length);
        case 1 -> s.insert(at, s.substring(at, at + length));
        case 2 -> s.setCharAt(at, MARKS.charAt(random.nextInt(MARKS.length())));
        default -> s.insert(random.nextInt(s.length()), s.substring(at, at + length));
      }
    }
    return s.toString();
  }
}
