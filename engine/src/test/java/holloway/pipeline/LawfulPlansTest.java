package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.support.RandomHouseText;
import holloway.support.Rough;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No hole of a plan breaks a rule of law, or of the standard that stands in for one in the UK,
 * alone or with another hole: the router chose it, so it could have been avoided. What hangs on a
 * place that the person asked for is no hole's finding.
 */
class LawfulPlansTest {
  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "quince-ranch", "plumb-corner", "tin-street"})
  void ofTheSamples(String sample) {
    assertTrue(holes(Path.of("../samples/" + sample + ".yaml")) > 3);
  }

  /** {@code -Dholloway.seeds=N} plans more. */
  @Test
  void ofRandomHouses() throws Exception {
    int holes = 0;
    int last = Integer.getInteger("holloway.seeds", 6);
    for (long seed = 101; seed < 101 + last; seed++) {
      Path house = Files.createTempFile("random", ".yaml");
      try {
        Files.writeString(house, RandomHouseText.of(RandomHouseText.Shape.of(seed)));
        holes += holes(house);
      } finally {
        Files.delete(house);
      }
    }
    assertTrue(holes > 4 * last, "too few holes to prove much: " + holes);
  }

  /**
   * Slim timber: of a bearing stud of 63 mm 40 % are 25.2 mm, and a joist of 114 mm leaves 2 in
   * above and below a hole of half an inch, which no bit is. Twelve cables want more.
   */
  private static final String SLIM =
      """
      house: Slim timber (invented)
      place: us
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 8 ft, inner-walls: { studs: 38x63 }, outer-walls: { studs: 38x63 } }
        upper: { floor: { joists: 38x114, every: 16 in, run: north-south }, ceiling-height: 8 ft, inner-walls: { studs: 38x63 }, outer-walls: { studs: 38x63 } }
      rooms:
        den: { level: ground, size: 12 ft x 12 ft }
        study: { level: ground, size: 12 ft x 12 ft, east-of: den, align: south }
        loft: { level: upper, size: 12 ft x 12 ft, above: den, align: south-west }
        nook: { level: upper, size: 12 ft x 12 ft, east-of: loft, align: south }
      walls:
        - { between: [den, study], bearing: yes }
      roof:
        - { over: upper, shape: gable, ridge: east-west, pitch: 8/12, frame: trusses,
            hatch: { in: loft, at: [west 6 ft, south 6 ft], size: 22 in x 30 in } }
      cabinet: { in: den, wall: south, from: west 2 ft, height: 5 ft }
      wishes: { bans: [outside, surface] }
      outlets:
        - { name: desk, in: study, wall: south, from: east 1 ft, height: 16 in, cables: [cat6a, cat6a, cat6a, cat6a] }
        - { name: bed, in: nook, wall: north, from: east 1 ft, height: 16 in, cables: [cat6a, cat6a, cat6a, cat6a] }
        - { name: lamp, in: study, ceiling: { west: 6 ft, south: 6 ft }, cables: [cat6a, cat6a] }
      """;

  /** The same under the rules of other places, in steel, and with the cabinet in a garage. */
  private static final Map<String, String> KINDS =
      Map.of(
          "us", SLIM,
          "none", SLIM.replace("place: us", "place: none"),
          "steel",
              SLIM.replace(
                  "inner-walls: { studs: 38x63 }", "inner-walls: { studs: steel 3-5/8 in }"),
          "garage",
              SLIM.replace("den: { level: ground,", "den: { level: ground, garage: yes,")
                  .replace("bearing: yes", "bearing: yes, separation: garage"));

  @ParameterizedTest
  @ValueSource(strings = {"us", "none", "steel", "garage"})
  void whereTheTimberIsSlim(String kind) throws Exception {
    Path house = Files.createTempFile("slim", ".yaml");
    try {
      Files.writeString(house, KINDS.get(kind));
      int holes = holes(house);
      assertTrue(holes > 2, kind + ": " + holes);
    } finally {
      Files.delete(house);
    }
  }

  /** How many holes the plan makes, none of them against law or standard. */
  private static int holes(Path house) {
    Plan plan = new Pipeline(Progress.SILENT).plan(house, Rough.SETTINGS).plan();
    Set<String> made = plan.holes().stream().map(Plan.PlannedHole::id).collect(Collectors.toSet());
    List<Plan.FindingLine> broken = new ArrayList<>(plan.findings());
    broken.removeIf(
        f -> !f.broken() || f.severity().equals("practice") || !made.contains(f.place()));
    assertEquals(List.of(), broken, house.toString());
    return plan.holes().size();
  }
}
