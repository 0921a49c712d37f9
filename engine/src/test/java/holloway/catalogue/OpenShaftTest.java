package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.Progress;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.report.AcceptText;
import holloway.support.Chain;
import holloway.support.Rough;
import holloway.survey.Placed;
import holloway.survey.UnaccountedSpace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Space that nothing accounts for, through two storeys: found, said, tried as a shaft, and never
 * used until the person accepts it.
 */
@Feature("space that nothing accounts for")
class OpenShaftTest {
  /** The hall is 7.3 m long; the rooms north of it are 3 m and 3.7 m: 600 mm are left. */
  private static final String HOUSE =
      """
      house: Gap House
      place: us
      built: 1990
      outer-walls: { kind: masonry, thickness: 250 mm }
      inner-walls: { studs: 2x4, every: 16 in, fill: empty }
      levels:
        ground: { floor: { joists: 2x10, every: 16 in, run: east-west, over: { crawlspace: { clearance: 900 mm, access: { floor-hatch: { in: store, at: [west 1 m, south 0.9 m], size: 24 in x 24 in } } } } }, ceiling-height: 2.4 m }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 2.4 m, inner-walls: { UPPER } }
      rooms:
        hall: { level: ground, size: 7.3 m x 1.5 m }
        left: { level: ground, size: 3 m x 2.7 m, north-of: hall, align: west }
        right: { level: ground, size: 3.7 m x 2.7 m, north-of: hall, align: east }
        store: { level: ground, size: 7.3 m x 1.8 m, north-of: left, align: west }
        hall up: { level: upper, size: 7.3 m x 1.5 m, above: hall, align: south-west, tied: measured }
        left up: { level: upper, size: 3 m x 2.7 m, north-of: hall up, align: west }
        right up: { level: upper, size: 3.7 m x 2.7 m, north-of: hall up, align: east }
        store up: { level: upper, size: 7.3 m x 1.8 m, north-of: left up, align: west }
      roof:
        - { over: upper, shape: gable, ridge: east-west, pitch: 8/12, frame: rafters, chord: 2x6, every: 24 in, insulation: none, hatch: { in: hall up, at: [west 1 m, south 0.75 m], size: 22 in x 30 in } }
      cabinet: { in: left, wall: north, from: west 1 m, height: 1.2 m }
      outlets:
        - { name: point, in: right up, ceiling: [west 1.5 m, south 1.3 m], cables: [cat6] }
      wishes: { visible-metre: 30 min }
      """;

  /** Foam upstairs: no bay leads up. */
  private static final String FOAM = HOUSE.replace("UPPER", "fill: foam");

  /** Two rows of blocks upstairs: a way up, but a dear one. */
  private static final String BLOCKS = HOUSE.replace("UPPER", "blocks-at: [1 m, 1.8 m]");

  @TempDir Path dir;

  private Answers.Planned planned(String text) throws IOException {
    Path file = Files.writeString(dir.resolve("gap.yaml"), text);
    Answers.Planned p = new Pipeline(Progress.SILENT).plan(file, Rough.SETTINGS);
    assertEquals(List.of(), p.refusals());
    return p;
  }

  private static List<UnaccountedSpace> spaces(String text) {
    return Chain.of(text).placed().spaces();
  }

  private static boolean usesAChase(Plan p) {
    return p.runs().stream()
        .flatMap(r -> r.steps().stream())
        .anyMatch(s -> s.id().startsWith("chase/"));
  }

  private static String accepted(String house, String say) {
    return house.replace("cabinet:", "hollows:\n  " + say + "\ncabinet:");
  }

  @Test
  void oneSpaceThroughBothStoreysBehindEightFaces() {
    List<UnaccountedSpace> all = spaces(FOAM);
    assertEquals(1, all.size());
    UnaccountedSpace s = all.get(0);
    assertEquals(List.of("ground", "upper"), s.levels());
    assertTrue(s.underRoof());
    // 600 mm less, on both sides, board of 12.7 and studs of 88.9 mm.
    assertEquals(600 - 2 * (12.7 + 88.9), s.outline().xRange().length() / 1e6, 0.01);
    assertEquals(8, s.touches().size());
    assertEquals("left east", s.touches().get(0).face().toString());
    assertEquals("chase", s.likely());
  }

  @Test
  void besideWaterItIsTheWayOfThePipes() {
    String wet = FOAM + "things: [{ toilet, in: right up, wall: west, from: south 1 m }]\n";
    assertEquals("the plumbing chase", spaces(wet).get(0).likely());
  }

  /** Upstairs the rooms leave 114.3 mm, an ordinary wall: below a floor the shaft leads nowhere. */
  @Test
  void belowAFloorItLeadsNowhere() throws IOException {
    String shut =
        BLOCKS.replace(
            "right up: { level: upper, size: 3.7 m", "right up: { level: upper, size: 4185.7 mm");
    UnaccountedSpace s = spaces(shut).get(0);
    assertEquals(List.of("ground"), s.levels());
    assertEquals(Optional.empty(), s.chase());
    assertEquals(List.of(), planned(shut).plan().survey().checkFirst());
  }

  @Test
  void itIsNeverUsedUnasked() throws IOException {
    Plan p = planned(FOAM).plan();
    assertEquals(1, p.unrouted().size());
    Plan.OpenShaft o = p.survey().checkFirst().get(0);
    assertEquals("space behind left east", o.space());
    assertEquals(1, o.moreRuns());
    assertEquals(0, o.minutesLess());
    assertEquals(1, p.survey().unaccounted().size());
  }

  /** The saving is that of the plan which the accepted house really gets. */
  @Test
  void theSavingIsTrue() throws IOException {
    Plan without = planned(BLOCKS).plan();
    assertTrue(!usesAChase(without));
    Plan.OpenShaft o = without.survey().checkFirst().get(0);
    assertTrue(o.minutesLess() >= 1, o.toString());
    // 600 - 203.2 = 396.8 mm deep, 15.62 in; along the whole of 2.7 m, 106.30 in, less 1/16 in.
    assertEquals(
        "- { chase: space behind left east, beside: left east, along: south 0 in, from: ground,"
            + " to: attic, size: 8 ft 10-3/16 in x 1 ft 3-9/16 in, floors: { attic: open, upper:"
            + " open }, known: yes }",
        o.say());
    Plan with = planned(accepted(BLOCKS, o.say())).plan();
    assertTrue(usesAChase(with));
    assertEquals(o.minutesLess(), without.totals().minutes() - with.totals().minutes(), 0.001);
    assertEquals(List.of(), with.survey().unaccounted());
    assertEquals(List.of(), with.survey().checkFirst());
  }

  @Test
  void whatIsSaidOfItIsReadBack() throws IOException {
    Plan p = planned(BLOCKS).plan();
    assertEquals(p.survey().checkFirst(), PlanJson.read(PlanJson.write(p)).survey().checkFirst());
    assertEquals(said(BLOCKS), p.survey().checkFirst().get(0).say());
  }

  private static String said(String text) {
    Placed placed = Chain.of(text).placed();
    return AcceptText.of(placed.spaces().get(0).chase().orElseThrow(), placed.house());
  }

  /** 396.8 mm deep; along the whole of 2.7 m less a millimetre; in feet see above. */
  @Test
  void itIsSaidInTheUnitsOfTheHouse() {
    String metric = BLOCKS.replace("place: us", "place: uk");
    assertTrue(said(metric).contains("along: south 0 mm, "), said(metric));
    assertTrue(said(metric).contains("size: 2699 mm x 396 mm, "), said(metric));
    var chase = Chain.of(accepted(metric, said(metric))).placed().house().chases().get(0);
    assertEquals(2699, chase.alongFace().value().toMm());
    assertEquals(396, chase.awayFromFace().value().toMm());
  }

  /** Names are the person's own. */
  @Test
  void oddNamesAreQuoted() throws IOException {
    String odd =
        BLOCKS
            .replace(" left:", " \"left: {a}\":")
            .replace("of: left,", "of: \"left: {a}\",")
            .replace("in: left,", "in: \"left: {a}\",");
    Plan.OpenShaft o = planned(odd).plan().survey().checkFirst().get(0);
    assertTrue(o.say().contains("beside: \"left: {a} east\""), o.say());
    assertTrue(usesAChase(planned(accepted(odd, o.say())).plan()));
  }

  /** A space that is wider upstairs than down is no box: it is said, but no shaft is offered. */
  @Test
  void whatIsNoBoxIsNoShaft() {
    String wider =
        FOAM.replace(
            "left up: { level: upper, size: 3 m x 2.7 m",
            "left up: { level: upper, outline: [[0 m, 0 m], [3 m, 0 m], [3 m, 1 m], [2.8 m, 1 m], [2.8 m, 2.7 m], [0 m, 2.7 m]]");
    UnaccountedSpace s = spaces(wider).get(0);
    assertEquals(List.of("ground", "upper"), s.levels());
    assertTrue(s.chase().isPresent(), "what both storeys share is still a box");
    String narrower =
        wider.replace(
            "[3 m, 1 m], [2.8 m, 1 m], [2.8 m, 2.7 m]", "[3 m, 1 m], [3.2 m, 1 m], [3.2 m, 2.7 m]");
    assertEquals(Optional.empty(), spaces(narrower).get(0).chase());
  }
}
