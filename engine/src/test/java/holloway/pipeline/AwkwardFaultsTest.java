package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.hollow.Site;
import holloway.plan.Drilling;
import holloway.plan.Plan;
import holloway.schedule.HoleCards;
import holloway.schedule.Pull;
import holloway.schedule.WorkReferee;
import holloway.schedule.WorkSchedule;
import holloway.support.AwkwardHouseText;
import holloway.support.Rough;
import holloway.units.UnitSystem;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The smallest houses of what {@link AwkwardHousesTest} found wrong. */
class AwkwardFaultsTest {
  @TempDir Path folder;

  /** A wall shared with a neighbour has no bays, so none of its bays runs on upward. */
  @Test
  void aSharedWallOfBalloonFrame() {
    WrittenHouse house =
        WrittenHouse.of(
            """
house: Shared Balloon
place: us
built: 1910
framing: balloon
levels:
  ground: { floor: slab, ceiling-height: 2.4 m }
  upper: { above: ground, ceiling-height: 2.4 m, floor: { joists: 2x10, every: 16 in, run: north-south } }
rooms:
  den: { level: ground, size: 4 m x 3 m }
  bed: { level: upper, size: 4 m x 3 m, above: den, align: south-west }
walls:
  - { side: den west, party: yes }
cabinet: { in: den, wall: south, from: west 1 m, height: 1.2 m }
outlets:
  - { name: desk, in: den, wall: south, from: east 1 m, height: 400 mm, cables: [cat6] }
""");
    assertEquals(0, house.plan().unrouted().size());
  }

  /** A cabinet on the gable hangs higher than cable is clipped under the slope of its room. */
  @Test
  void aCabinetHigherThanTheKneeWall() {
    WrittenHouse house =
        WrittenHouse.of(
            """
house: High Cabinet
place: us
built: 1990
levels:
  ground: { ceiling-height: 8 ft, floor: slab }
  upper: { above: ground, ceiling-height: 2.3 m, floor: { joists: 2x10, every: 16 in, run: north-south } }
rooms:
  hall: { level: ground, size: 4 m x 8 m }
  loft: { level: upper, size: 4 m x 4 m, above: hall, align: south-west, shift-north: 2 m, tied: measured, ceiling: vaulted }
roof:
  - { over: upper, shape: gable, ridge: east-west, pitch: 8/12, frame: rafters, chord: 2x6, every: 24 in,
      knee-walls: [{ side: loft north, height: 1.2 m }, { side: loft south, height: 1.2 m }] }
cabinet: { in: loft, wall: west, from: south 2 m, height: 1.3 m }
outlets:
  - { name: desk, in: loft, wall: west, from: south 1 m, height: 400 mm, cables: [cat6] }
""");
    // The referee accepts it; no cable is clipped beside the cabinet, over what is under the slope.
    Plan p = house.plan("outside");
    double under = house.placed().getRoom("loft").floorZ() / 1e6 + 1200;
    for (Plan.PlannedRun r : p.runs()) {
      for (Plan.PlanStep s : r.steps()) {
        if (s.id().equals("loft/surface")) {
          assertTrue(s.path().stream().allMatch(q -> q.z() / 1e6 < under), s::toString);
        }
      }
    }
  }

  /** Where a neighbour's wall ends against ours, no box is cut in before its end. */
  @Test
  void aBoxWhereANeighboursWallEnds() {
    String text =
        """
        house: Neighbour's End
        place: none
        built: 1990
        outer-walls: { studs: 2x6, every: 400 mm, fill: empty }
        levels: { ground: { ceiling-height: 2.7 m, floor: slab } }
        rooms:
          den: { level: ground, size: 2.5 m x 3.6 m }
          theirs: { level: ground, size: 3.2 m x 2.84 m, east-of: den, align: south, ours: no }
        cabinet: { in: den, wall: west, from: south 2.7 m, height: 1.3 m }
        outlets:
          - { name: desk, in: den, wall: east, from: south AWAY, height: 380 mm, cables: [cat6] }
        """;
    Plan before = WrittenHouse.of(text.replace("AWAY", "2928 mm")).plan();
    assertTrue(
        before.works().stream().noneMatch(w -> w.id().equals("desk/cut-out")),
        before.works()::toString);
    Plan beside = WrittenHouse.of(text.replace("AWAY", "3300 mm")).plan();
    assertEquals(List.of(), beside.unrouted());
  }

  /**
   * A wall of 320 mm on studs of 89 mm: the bay's middle lies 160 mm behind the face, where the
   * cable of a box ends. The referee left 150 mm for any wall.
   */
  @Test
  void aBoxInAWallThickerThanItsStuds() {
    WrittenHouse house =
        WrittenHouse.of(
            """
house: Thick Wall
place: none
built: 1990
levels:
  ground: { floor: slab, ceiling-height: 2.4 m }
rooms:
  hall: { level: ground, size: 3 m x 3 m }
  den: { level: ground, size: 3 m x 3 m, east-of: hall, align: south }
walls:
  - { between: [hall, den], thickness: 320 mm }
cabinet: { in: hall, wall: east, from: south 1 m, height: 1.2 m }
outlets:
  - { name: desk, in: den, wall: west, from: south 1.1 m, height: 400 mm, cables: [cat6] }
""");
    Plan plan = house.plan();
    assertEquals(0, plan.unrouted().size());
    List<Plan.PlanStep> steps = plan.runs().get(0).steps();
    var end = steps.get(steps.size() - 1).path();
    assertEquals(3.16, end.get(end.size() - 1).x() / 1e9, 0.001);
  }

  /**
   * Corners of an angled wall lie closer above or below it than plain cutting of plans can tell.
   */
  @ParameterizedTest
  @ValueSource(strings = {"attic", "joins", "roof", "open-ceiling"})
  void plansCutAlongAnAngledWall(String name) throws Exception {
    String file = "/holloway/awkward-" + name + ".yaml";
    try (InputStream in = AwkwardFaultsTest.class.getResourceAsStream(file)) {
      String drawn = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(WrittenHouse.of(drawn).hollows().hollows().size() > 20);
    }
  }

  /**
   * Two outlets beyond one hole, leads and wider cables to them: all leads must pass before any
   * cable, or the second lead's head finds no room.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"cat6, om4; om4, cat5e", "cat6a, om4; om4"})
  void leadsOfTwoOutletsThroughOneHole(String desk, String shelf) throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("leads.yaml"),
            """
            house: Two Leads
            place: none
            built: 1990
            outer-walls: { kind: masonry, thickness: 240 mm }
            inner-walls: { kind: masonry, thickness: 120 mm }
            levels:
              ground: { floor: slab, ceiling-height: 2.4 m }
            rooms:
              hall: { level: ground, size: 3 m x 3 m }
              den: { level: ground, size: 3 m x 3 m, east-of: hall, align: south }
            cabinet: { in: hall, wall: east, from: south 1 m, height: 1.2 m }
            outlets:
              - { name: desk, in: den, wall: south, from: east 1 m, height: 400 mm, cables: [%s] }
              - { name: shelf, in: den, wall: north, from: east 1 m, height: 400 mm, cables: [%s] }
            wishes: { profile: fewest-holes }
            """
                .formatted(desk, shelf));
    Answers.Planned planned = new Pipeline(Progress.SILENT).plan(file, Rough.SETTINGS);
    Plan plan = planned.plan();
    assertEquals(1, plan.holes().size());
    assertEquals(19, plan.holes().get(0).diameterMm());
    Stages.Site site = new RealStages(Progress.SILENT).derive(planned.placed(), planned.request());
    assertEquals(List.of(), WorkReferee.faults(plan, site.work(plan, planned.request())));
  }

  /**
   * From the cabinet down its bay to the box below: the cable's own weight draws it, so that
   * whoever catches it pulls with nothing. The order of work was refused for that.
   */
  @Test
  void aCableThatItsOwnWeightDraws() throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("down.yaml"),
            """
            house: Straight Down
            place: none
            built: 1990
            outer-walls: { studs: 2x4, every: 400 mm, fill: empty }
            levels:
              ground: { floor: slab, ceiling-height: 2.4 m }
            rooms:
              hall: { level: ground, size: 3 m x 3 m }
            walls:
              - { side: hall south, studs-from: west 200 mm, every: 400 mm }
            cabinet: { in: hall, wall: south, from: west 1.2 m, height: 1.6 m }
            outlets:
              - { name: desk, in: hall, wall: south, from: west 1.2 m, height: 400 mm, cables: [cat6] }
            """);
    Answers.Planned planned = new Pipeline(Progress.SILENT).plan(file, Rough.SETTINGS);
    Stages.Site site = new RealStages(Progress.SILENT).derive(planned.placed(), planned.request());
    WorkSchedule work = site.work(planned.plan(), planned.request());
    assertEquals(List.of(0.0), work.pulls().stream().map(Pull::newtons).toList());
    assertEquals("fish", work.pulls().get(0).feed());
    assertEquals(List.of(), WorkReferee.faults(planned.plan(), work));
  }

  /**
   * A floor is drawn as sheets side by side; a bore on the joint of two goes through one of them.
   * It was priced as two, on one side of the house and not in its mirror image.
   */
  @Test
  void theLayersOfABoreAreNoLongerThanItIs() {
    int looked = 0;
    for (long seed : new long[] {5015, 5033}) {
      var drawn = AwkwardHouseText.of(seed);
      for (Site s : WrittenHouse.of(drawn.house(), drawn.found().orElse("")).hollows().sites()) {
        long all = s.layers().stream().mapToLong(Site.Layer::thickness).sum();
        assertTrue(all <= s.a().distanceTo(s.b()) + 1_000_000, seed + ": " + s);
        looked += s.layers().size();
      }
    }
    assertTrue(looked > 300, looked + " layers");
  }

  /**
   * Two plates and the joists between, bored through a patch at a size that no flexible bit is made
   * in: a short bit, which was all that was brought, does not come through.
   */
  @Test
  void aDeepHoleThroughAPatchWantsALongBit() throws Exception {
    var drawn = AwkwardHouseText.of(5053);
    Path file = Files.writeString(folder.resolve("deep.yaml"), drawn.house());
    Files.writeString(folder.resolve("deep.found.yaml"), drawn.found().orElseThrow());
    Answers.Planned planned = new Pipeline(Progress.SILENT).plan(file, Rough.SETTINGS);
    Plan plan = planned.plan();
    var house = WrittenHouse.of(drawn.house(), drawn.found().orElseThrow()).hollows();
    var cards = HoleCards.of(plan, house, UnitSystem.METRIC);
    List<String> deep =
        plan.holes().stream()
            .filter(h -> Drilling.of(h, house) == Drilling.ANGLED && Drilling.isDeep(h))
            .map(h -> cards.get(h.id()).extension())
            .toList();
    assertFalse(deep.isEmpty());
    assertTrue(deep.stream().allMatch(d -> d.contains("long bit")), deep::toString);
    assertTrue(
        plan.materials().stream().anyMatch(m -> m.item().startsWith("long bit")),
        plan.materials()::toString);
    Stages.Site site = new RealStages(Progress.SILENT).derive(planned.placed(), planned.request());
    assertEquals(List.of(), WorkReferee.faults(plan, site.work(plan, planned.request())));
  }

  /**
   * A void that hangs is bored within an arm's reach of where it was opened, any way, and priced
   * so: the planner measured up and down in it, the referee along one side.
   */
  @ParameterizedTest
  @ValueSource(strings = {"boxing", "low-ceiling"})
  void boresIntoAVoidThatHangs(String name) throws Exception {
    Answers.Planned planned = planned(name);
    assertEquals(List.of(), planned.refusals());
    assertEquals(0, planned.plan().unrouted().size());
  }

  /**
   * The wall below a storey that juts out stands under the middle of the floor above: a cable from
   * a hole there would lie across the room, which the planner offered and the referee refused.
   */
  @Test
  void noCableAcrossTheFloorOfARoomThatJutsOut() throws Exception {
    Answers.Planned planned = planned("jutting");
    assertEquals(List.of(), planned.refusals());
    assertEquals(0, planned.plan().unrouted().size());
  }

  /** Over the walls there is nothing to clip cable to, from the end of the span down. */
  @Test
  void anOverheadLinkThatEndsOverTheTopOfTheHouse() {
    InputTrouble told = assertThrows(InputTrouble.class, () -> planned("link"));
    String all = String.join("\n", told.lines());
    assertEquals(2, told.lines().size(), all);
    assertTrue(
        all.contains(
            "link.yaml:22:5: outdoor link yard: its end at 'hut north' lies 3.000 m high, 610 mm"
                + " over the ceiling of the highest room there; cable is clipped up to 600 mm over"
                + " it"),
        all);
  }

  private Answers.Planned planned(String name) throws Exception {
    String file = "/holloway/awkward-" + name + ".yaml";
    try (InputStream in = AwkwardFaultsTest.class.getResourceAsStream(file)) {
      Path house = folder.resolve(name + ".yaml");
      Files.write(house, in.readAllBytes());
      return new Pipeline(Progress.SILENT).plan(house, Rough.SETTINGS);
    }
  }
}
