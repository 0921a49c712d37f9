package holloway.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.units.Length;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The table of defaults: whole, chosen by place and year, and printed as the code has it. */
class UsualBuildTest {
  private static final List<String> PLACES = List.of("us", "uk", "eu");

  /** A house of this year stands for "today" in the short table of the README. */
  private static final int TODAY = 2000;

  private static String table() throws IOException {
    try (InputStream in = UsualBuild.class.getResourceAsStream("usual-build.md")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void theDevelopersPageHasTheTable() throws IOException {
    String page = Files.readString(Path.of("..", "DEVELOPERS.md"));
    assertTrue(page.contains("\n" + table() + "\n"), "DEVELOPERS.md lacks usual-build.md as it is");
  }

  @Test
  void theReadmeHasTodaysValues() throws IOException {
    String page = Files.readString(Path.of("..", "README.md"));
    String brief =
        UsualBuild.rows().stream()
            .filter(r -> !r.instead().isEmpty())
            .map(UsualBuild.Row::what)
            .distinct()
            .map(UsualBuildTest::line)
            .collect(Collectors.joining("\n"));
    String head = "| built in 2000 | us | uk | eu |\n|---|---|---|---|\n";
    assertTrue(page.contains("\n" + head + brief + "\n"), "README.md lacks\n" + head + brief);
  }

  private static String line(String what) {
    return "| "
        + what.replace('-', ' ')
        + PLACES.stream()
            .map(p -> " | " + UsualBuild.of(p, TODAY).get(what).value())
            .collect(Collectors.joining())
        + " |";
  }

  @Test
  void everyPlaceAndYearHasEveryDefault() {
    for (UsualBuild.Row r : UsualBuild.rows()) {
      for (String place : PLACES) {
        for (int year : new int[] {1500, 1929, 1950, 1994, 2100}) {
          assertFalse(UsualBuild.of(place, year).get(r.what()).value().isEmpty(), r.what());
        }
      }
      assertFalse(r.source().isEmpty(), r.what());
    }
  }

  /** Years ascend within one default of one place, so that no row is hidden by another. */
  @Test
  void noRowIsThereTwice() {
    List<UsualBuild.Row> rows = UsualBuild.rows();
    long different =
        rows.stream().map(r -> r.what() + "/" + r.place() + "/" + r.from()).distinct().count();
    assertEquals(rows.size(), different);
    Comparator<UsualBuild.Row> inOrder = Comparator.comparingInt(UsualBuild.Row::from);
    for (int i = 1; i < rows.size(); i++) {
      UsualBuild.Row a = rows.get(i - 1);
      UsualBuild.Row b = rows.get(i);
      if (a.what().equals(b.what()) && a.place().equals(b.place())) {
        assertTrue(inOrder.compare(a, b) < 0, b.what());
      }
    }
  }

  /** Nothing was found for Europe: every row says so. */
  @Test
  void europeIsFromMemory() {
    UsualBuild.rows().stream()
        .filter(r -> r.place().equals("eu"))
        .forEach(r -> assertEquals(Figure.Grade.M, r.grade(), r.what()));
  }

  /** Trade-facts D6 (16 in), D7 (400 mm from memory of 400/600), D9 (8 ft 1 in), D17, D18. */
  @Test
  void theYearChoosesTheLastRowNotAfterIt() {
    assertEquals("2x4", UsualBuild.of("us", 1979).get("outer-studs").value());
    assertEquals("2x6", UsualBuild.of("us", 1980).get("outer-studs").value());
    assertEquals(Length.inches(97), UsualBuild.of("us", 1930).get("ceiling-height").length());
    assertEquals(Length.feet(9), UsualBuild.of("us", 1929).get("ceiling-height").length());
    assertEquals("faced-batt", UsualBuild.of("us", 1980).get("outer-fill").value());
    assertEquals("unknown", UsualBuild.of("eu", 1980).get("outer-fill").value());
    assertEquals(Length.mm(400), UsualBuild.of("uk", 1920).get("stud-spacing").length());
  }

  @Test
  void aPlaceWithoutRowsIsTakenAsTheUs() {
    assertEquals("us", UsualBuild.of("none", 1994).get("joists").place());
    assertEquals("any", UsualBuild.of("none", 1994).get("inner-fill").place());
  }

  @Test
  void aLineSaysWhoseAndHowSure() {
    assertEquals("us from 1940: D6", UsualBuild.of("us", 1994).get("stud-spacing").cited());
    assertEquals("us from 1950: J11, common practice", cited("us", "finish"));
    assertEquals("eu: from memory", cited("eu", "finish"));
  }

  private static String cited(String place, String what) {
    return UsualBuild.of(place, 1994).get(what).cited();
  }
}
