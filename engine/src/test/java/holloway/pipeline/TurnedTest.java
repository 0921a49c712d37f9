package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.housefile.HouseFile;
import holloway.housefile.HouseWriter;
import holloway.housefile.Reading;
import holloway.plan.Plan;
import holloway.support.RandomHouseText;
import holloway.support.RandomHouseText.Shape;
import holloway.support.Rough;
import holloway.support.Turned;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A house in a mirror, turned or placed from another of its rooms is as much work. Assumed layouts
 * are counted from one corner, which is turned along. Where the search does not find the best plan
 * it may end elsewhere in a turned house: there the holes that could be made are compared.
 */
class TurnedTest {
  private static final PlanSettings QUICK =
      new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());

  /** Lengths of the plan may differ by rounding, metres. */
  private static final double ROUNDING = 0.001;

  /** Solid walls and a slab: nothing in it is counted from one side but the joists' first. */
  private static final String SOLID =
      """
      house: Mirror House
      place: us
      built: 1990
      outer-walls: { kind: masonry, thickness: 240 mm }
      inner-walls: { kind: masonry, thickness: 120 mm }
      levels:
        ground: { floor: slab, ceiling-height: 2.5 m }
      rooms:
        hall: { level: ground, size: 4.2 m x 3 m, plain: yes }
        den: { level: ground, size: 3.36 m x 4 m, east-of: hall, align: south, shift: 200 mm }
        store: { level: ground, size: 4.2 m x 2 m, north-of: hall, align: west }
      openings:
        - { door, between: [hall, den], from: south 500 mm, width: 800 mm, head: 2 m }
        - { door, between: [store, hall], from: east 700 mm, width: 700 mm, head: 2 m }
        - { window, side: den east, from: north 1 m, width: 1.1 m, sill: 800 mm, head: 2 m }
      obstacles:
        - { duct, above-ceiling-of: den, at: [west 1 m, south 1.2 m], size: 1 m x 300 mm, height: 150 mm }
      things:
        - { socket, in: den, wall: north, from: west 1 m }
        - { furniture, in: hall, wall: south, from: east 1 m, width: 700 mm }
      cabinet: { in: hall, wall: west, from: north 1 m, height: 1.2 m }
      outlets:
        - { name: desk, in: den, wall: north, from: east 600 mm, height: 400 mm, cables: [cat6, om4] }
        - { name: shelf, in: store, wall: north, from: west 900 mm, height: 1 m, cables: [cat6] }
        - { name: box, outside: den south, from: west 1 m, height: 500 mm, cables: [outdoor-cat6], feed: yes }
      links:
        - { from: desk, to: shelf, cable: cat6 }
      """;

  @TempDir Path folder;

  private Path written(String name, String text) throws Exception {
    return Files.writeString(folder.resolve(name), text);
  }

  private static Plan plan(Path house) {
    return plan(house, QUICK);
  }

  private static Plan plan(Path house, PlanSettings how) {
    Answers.Planned planned = new Pipeline(Progress.SILENT).plan(house, how);
    assertEquals(List.of(), planned.refusals());
    return planned.plan();
  }

  private Path turned(Path house, Turned... ways) throws Exception {
    Reading.Sound read = assertInstanceOf(Reading.Sound.class, HouseFile.read(house));
    var h = read.house();
    var r = read.request();
    for (Turned way : ways) {
      r = way.of(r, h);
      h = way.of(h);
    }
    return written("turned.yaml", HouseWriter.house(h, r, Optional.empty()));
  }

  private static void assertSameWork(Plan one, Plan other, String which) {
    Plan.Totals a = one.totals();
    Plan.Totals b = other.totals();
    assertEquals(a.objective(), b.objective(), 1, which + " objective");
    assertEquals(a.holes(), b.holes(), which + " holes");
    assertEquals(a.patches(), b.patches(), which + " patches");
    assertEquals(a.minutes(), b.minutes(), 0.0002, which + " minutes");
    assertEquals(a.routeM(), b.routeM(), ROUNDING * one.runs().size(), which + " metres");
    assertEquals(a.visibleM(), b.visibleM(), ROUNDING * one.runs().size(), which + " in sight");
    assertEquals(one.unrouted().size(), other.unrouted().size(), which + " unrouted");
    for (int i = 0; i < one.runs().size(); i++) {
      double there = one.runs().get(i).routeM();
      assertEquals(there, other.runs().get(i).routeM(), ROUNDING, which + " run " + i);
    }
  }

  @Test
  void upAndAcrossAreTheSame() throws Exception {
    for (Shape s :
        List.of(
            new Shape(1, 4, 3, false, 3),
            new Shape(2, 7, 4, false, 5),
            new Shape(3, 8, 5, true, 6))) {
      Path house = written("house.yaml", RandomHouseText.of(s));
      assertSameWork(plan(house), plan(turned(house, Turned.DIAGONALLY)), s.toString());
    }
  }

  @Test
  void mirrorsAndQuarterTurns() throws Exception {
    Path house = written("house.yaml", SOLID);
    Plan straight = plan(house);
    assertTrue(straight.totals().holes() > 0 && straight.unrouted().isEmpty());
    Turned ew = Turned.EAST_FOR_WEST;
    Turned ns = Turned.NORTH_FOR_SOUTH;
    Turned diagonal = Turned.DIAGONALLY;
    assertSameWork(straight, plan(turned(house, ew)), "east for west");
    assertSameWork(straight, plan(turned(house, ns)), "north for south");
    assertSameWork(straight, plan(turned(house, diagonal)), "diagonal");
    assertSameWork(straight, plan(turned(house, diagonal, ew)), "a quarter turn");
    assertSameWork(straight, plan(turned(house, ew, ns)), "half a turn");
    assertSameWork(straight, plan(turned(house, diagonal, ns)), "three quarters");
  }

  /** Quarter turns, half turns and mirrors, each as mirrors one after the other. */
  private static final Map<String, Turned[]> WAYS =
      new TreeMap<>(
          Map.of(
              "1 diagonal", new Turned[] {Turned.DIAGONALLY},
              "2 east for west", new Turned[] {Turned.EAST_FOR_WEST},
              "3 north for south", new Turned[] {Turned.NORTH_FOR_SOUTH},
              "4 quarter", new Turned[] {Turned.DIAGONALLY, Turned.EAST_FOR_WEST},
              "5 half", new Turned[] {Turned.EAST_FOR_WEST, Turned.NORTH_FOR_SOUTH},
              "6 three quarters", new Turned[] {Turned.DIAGONALLY, Turned.NORTH_FOR_SOUTH}));

  /** Rough, since it is the house that is turned; the small ones above are searched to the end. */
  @ParameterizedTest
  @ValueSource(strings = {"plumb-corner", "tin-street"})
  void samplesInEveryDirection(String name) throws Exception {
    Path house = sample(name);
    Plan straight = plan(house, Rough.SETTINGS);
    for (Map.Entry<String, Turned[]> way : WAYS.entrySet()) {
      Plan other = plan(turned(house, way.getValue()), Rough.SETTINGS);
      assertSameWork(straight, other, name + " " + way.getKey());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "plumb-corner", "quince-ranch", "tin-street"})
  void theSamePlacesToBoreInAMirror(String name) throws Exception {
    assertSamePlaces(sample(name), name);
  }

  private static Path sample(String name) {
    return Path.of("..", "samples", name + ".yaml");
  }

  private void assertSamePlaces(Path house, String which) throws Exception {
    List<String> straight = places(house);
    assertTrue(straight.size() > 20, which + " has places");
    assertEquals(straight, places(turned(house, Turned.EAST_FOR_WEST)), which);
  }

  /** What could be bored and how: heights and lengths, in tenths of a millimetre, do not turn. */
  private static List<String> places(Path house) throws Exception {
    WrittenHouse h = WrittenHouse.of(Files.readString(house));
    return h.hollows().sites().stream()
        .map(
            s ->
                "%s %s %s %d %d %s"
                    .formatted(
                        s.kind(),
                        Math.min(tenths(s.a().z()), tenths(s.b().z())),
                        tenths(s.a().distanceTo(s.b())),
                        s.largestBit(),
                        s.platedBit(),
                        s.assumed()))
        .sorted()
        .toList();
  }

  private static long tenths(long nm) {
    return Math.round(nm / 1e5);
  }

  /**
   * Foam shuts the walls, so a hole through ceiling and floor in a corner is the way, as near to
   * one wall as to the other: which of them comes first round the room is nobody's business.
   */
  @Test
  void aHoleInACornerHangsOnBothWalls() throws Exception {
    Path house =
        written(
            "corner.yaml",
            """
            house: Corner House
            place: none
            built: 1990
            outer-walls: { studs: 2x4, every: 400 mm, fill: foam }
            levels:
              ground: { floor: slab, ceiling-height: 2.4 m }
              upper: { above: ground, ceiling-height: 2.4 m, floor: { joists: 2x10, every: 400 mm, run: north-south } }
            rooms:
              hall: { level: ground, size: 3 m x 4 m }
              den: { level: upper, size: 3 m x 4 m, above: hall, align: south-west, tied: measured }
            cabinet: { in: den, wall: west, from: south 500 mm, height: 1 m }
            outlets:
              - { name: desk, in: hall, wall: west, from: south 500 mm, height: 1 m, cables: [cat6] }
            wishes: { bans: [outside], profile: fewest-holes }
            """);
    Plan straight = plan(house);
    assertEquals(1, straight.runs().size());
    for (Map.Entry<String, Turned[]> way : WAYS.entrySet()) {
      assertSameWork(straight, plan(turned(house, way.getValue())), way.getKey());
    }
  }

  /** The room that is not placed is where the world begins. */
  /** Its joists are counted from the corner that turns along, whichever way they run. */
  @Test
  void porchesInAMirror() throws Exception {
    String porches =
        """
        porches:
          - { porch: front, side: hall south, from: west 400 mm, length: 3 m, out: 1900 mm, height: 2100 mm, ceiling: CEILING, roof: shed, pitch: 3/12, joists: 2x6, every: 16 in, run: RUN }
          - { porch: side, side: den east, from: north 200 mm, length: 3100 mm, out: 2200 mm, height: 2200 mm, ceiling: boarded, roof: gable, pitch: 4/12, every: 600 mm }
        """;
    String outlets =
        """
        outlets:
          - { name: ap, under: front, from: east 1150 mm, out: 300 mm, cables: [cat6] }
          - { name: eye, under: side, from: south 700 mm, out: 900 mm, cables: [cat6] }
        """;
    for (String[] which :
        new String[][] {{"boarded", "out"}, {"boarded", "along"}, {"open", "out"}}) {
      String text =
          SOLID
              .replace("obstacles:\n", porches + "obstacles:\n")
              .replace("outlets:\n", outlets)
              .replace("CEILING", which[0])
              .replace("RUN", which[1]);
      Path house = written("house.yaml", text);
      Plan straight = plan(house);
      assertEquals(List.of(), straight.unrouted(), which[0] + which[1]);
      String words = which[0] + " " + which[1];
      assertSameWork(straight, plan(turned(house, Turned.EAST_FOR_WEST)), words + " ew");
      assertSameWork(straight, plan(turned(house, Turned.NORTH_FOR_SOUTH)), words + " ns");
      assertSameWork(straight, plan(turned(house, Turned.DIAGONALLY)), words + " diagonal");
    }
  }

  /** An arch turns with its crown, and is written as it was read. */
  @Test
  void anArchInAMirror() throws Exception {
    String text =
        SOLID.replace(
            "obstacles:\n",
            """
            roof:
              - { over: ground, shape: arched, ridge: east-west, rise: 1500 mm, frame: rafters, chord: 2x6, every: 16 in, insulation: none, hatch: { in: hall, at: [west 2 m, south 2 m] } }
            obstacles:
            """);
    Path house = written("house.yaml", text);
    Plan straight = plan(house);
    assertSameWork(straight, plan(turned(house, Turned.EAST_FOR_WEST)), "arch ew");
    assertSameWork(straight, plan(turned(house, Turned.NORTH_FOR_SOUTH)), "arch ns");
    assertSameWork(straight, plan(turned(house, Turned.DIAGONALLY)), "arch diagonal");
  }

  @Test
  void placedFromAnotherRoom() throws Exception {
    String moved =
        SOLID
            .replace(
                "3 m, plain: yes }",
                "3 m, west-of: den, align: south, shift: -200 mm, plain: yes }")
            .replace(", east-of: hall, align: south, shift: 200 mm }", " }");
    Plan straight = plan(written("house.yaml", SOLID));
    assertSameWork(straight, plan(written("moved.yaml", moved)), "from the den");
  }
}
