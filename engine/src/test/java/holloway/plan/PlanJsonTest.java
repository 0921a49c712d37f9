package holloway.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point3;
import holloway.geometry.SiteFrame;
import holloway.geometry.Turn;
import holloway.pipeline.Toy;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanJsonTest {
  private static Plan full() {
    return Toy.bare()
        .withFindings(
            List.of(
                new Plan.FindingLine(
                    "rule", "law", Optional.of(new Point3(1_000_000, -250_000_000, 0)), "s", "t"),
                new Plan.FindingLine("other", "note", Optional.empty(), "s", "\"quoted\" äö\n")))
        .withMaterials(
            List.of(
                new Plan.Material("cat6", 21.5, "m", Optional.of(3.25)),
                new Plan.Material("plate", 2, "piece", Optional.empty())))
        .withUnrouted(List.of(new Plan.Unrouted("spare-1", List.of("no way up"))));
  }

  @Test
  void whatIsWrittenReadsBackTheSame() {
    assertEquals(full(), PlanJson.read(PlanJson.write(full())));
  }

  /** Turned by a triangle of 3, 4 and 5: coordinates are the site's, and are read back turned. */
  @Test
  void ofAHouseThatStandsTurnedCoordinatesAreTheSites() {
    Plan own = full();
    SiteFrame site = new SiteFrame(Turn.degrees(36.869897646), 2_000_000_000L, 100_000_000L);
    Plan turned = own.withSite(site);
    String text = PlanJson.write(turned);
    // (3990, 2000): 0.8 x 3990 - 0.6 x 2000 + 2000 east, 0.6 x 3990 + 0.8 x 2000 + 100 north.
    assertTrue(PlanJson.write(own).contains("[3990.0, 2000.0, 1400.0]"));
    assertTrue(text.contains("[3992.0, 4094.0, 1400.0]"), text);
    Plan read = PlanJson.read(text);
    assertEquals(site, read.site());
    var there = own.holes().get(0).at();
    assertTrue(there.distanceTo(read.holes().get(0).at()) < 100_000);
    for (String wrong :
        List.of("\"degrees\": 181.0", "\"degrees\": \"east\"", "\"origin\": [1.0]")) {
      String key = wrong.substring(0, wrong.indexOf(':'));
      String bad = text.replaceFirst(key + ": (\\[[^\\]]*\\]|[0-9.]+)", wrong);
      assertThrows(PlanJsonException.class, () -> PlanJson.read(bad), bad);
    }
  }

  @Test
  void writingTwiceGivesTheSameBytes() {
    String once = PlanJson.write(full());
    assertEquals(once, PlanJson.write(PlanJson.read(once)));
    assertFalse(once.contains("\r"));
    assertTrue(once.endsWith("}\n"));
  }

  @Test
  void keysComeInTheOrderOfTheContract() {
    String text = PlanJson.write(full());
    int from = 0;
    for (String key :
        List.of(
            "format",
            "house",
            "profile",
            "per-minute",
            "inputs",
            "totals",
            "objective",
            "bound",
            "gap",
            "minutes",
            "holes",
            "patches",
            "route-m",
            "cable-m",
            "visible-m",
            "money",
            "currency",
            "zones",
            "runs",
            "steps",
            "holes",
            "unrouted",
            "why-not",
            "works",
            "findings",
            "materials",
            "survey",
            "misclosures",
            "unaccounted",
            "assumed")) {
      int at = text.indexOf("\"" + key + "\":", from);
      assertTrue(at > 0, key + " is missing or out of order");
      from = at;
    }
  }

  @Test
  void numbersAreRoundedAsTheContractSays() {
    Plan.PlanStep step =
        new Plan.PlanStep(
            "leg",
            "bay",
            Optional.of("stud bay"),
            Optional.empty(),
            List.of(new Point3(1_249_999, 0, 0), new Point3(-50_001, 0, 2_000_000_000L)),
            1.23456,
            Optional.empty(),
            Optional.empty(),
            Optional.of(4.25678));
    Plan p =
        full()
            .withRuns(
                List.of(new Plan.PlannedRun("a", "cabinet", "b", "cat6", 1, 2, List.of(step))),
                full().totals());
    String text = PlanJson.write(p);
    assertTrue(text.contains("\"path\": [[1.2, 0.0, 0.0], [-0.1, 0.0, 2000.0]]"), text);
    assertTrue(text.contains("\"m\": 1.235"), text);
    assertTrue(text.contains("\"minutes\": 4.2568"), text);
    assertTrue(text.contains("\"money\": null"), text);
    assertFalse(text.contains("\"feed\": null"), text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"bound\": 990000,           | '' | totals.bound is missing",
        "\"bound\": 990000            | \"bound\": \"x\" | totals.bound: read \"x\", expected a whole number",
        "\"format\": 1                | \"format\": 2 | format: read 2, expected format 1",
        "\"per-minute\": 10000        | \"per-minute\": 0 | per-minute: read 0, expected a whole number above 0",
        "\"kind\": \"leg\"            | \"kind\": \"log\" | runs[0].steps[0].kind: read \"log\", expected leg or crossing",
        "[[3990.0, 2000.0, 1400.0]    | [[3990.0, 2000.0] | runs[0].steps[0].path[0]: read [3990.0,2000.0], expected a point",
        "\"minutes\": 100.0           | \"minutes\": 1e999 | totals.minutes: read",
        "\"holes\": 2,                | \"holes\": -1, | totals.holes: read -1, expected a whole number from 0",
        "\"assumed\": true            | \"assumed\": 1 | holes[0].assumed: read 1, expected true or false",
        "\"unrouted\": [              | \"unrouted\": 5, \"x\": [ | unrouted: read 5, expected a list",
      })
  void aWrongFieldIsNamed(String from, String to, String complaint) {
    String text = PlanJson.write(full());
    assertTrue(text.contains(from), from);
    PlanJsonException e =
        assertThrows(
            PlanJsonException.class,
            () -> PlanJson.read(text.replaceFirst(java.util.regex.Pattern.quote(from), to)));
    assertTrue(e.getMessage().contains(complaint), e.getMessage());
  }

  @Test
  void textThatIsNotJsonTellsLineAndColumn() {
    for (String text : List.of("{\n  \"format\": nope }", "{", "{} {}", "{\"a\":1,\"a\":2}")) {
      PlanJsonException e = assertThrows(PlanJsonException.class, () -> PlanJson.read(text));
      assertTrue(e.getMessage().contains("line "), e.getMessage());
    }
    for (String text : List.of("", "[]", "null", "7")) {
      assertThrows(PlanJsonException.class, () -> PlanJson.read(text), text);
    }
    String deep = "[".repeat(100_000);
    assertThrows(PlanJsonException.class, () -> PlanJson.read(deep));
  }

  @Test
  void aMissingFileIsNamed() {
    PlanJsonException e =
        assertThrows(PlanJsonException.class, () -> PlanJson.read(Path.of("no-such-plan.json")));
    assertEquals("no-such-plan.json: there is no such file", e.getMessage());
  }

  @Test
  void unknownKeysArePassedOver() {
    String more = PlanJson.write(full()).replaceFirst("\\{", "{ \"later\": {\"a\": [1]}, ");
    assertEquals(full(), PlanJson.read(more));
  }
}
