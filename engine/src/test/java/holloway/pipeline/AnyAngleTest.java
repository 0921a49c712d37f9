package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.geometry.Turn;
import holloway.housefile.HouseFile;
import holloway.housefile.HouseWriter;
import holloway.housefile.Reading;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.support.AwkwardHouseText;
import holloway.support.OnSiteGrid;
import holloway.support.RandomHouseText;
import holloway.support.RandomHouseText.Shape;
import holloway.support.Rough;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A house whose corners were measured on a grid that it stands turned off is the same house: the
 * same runs by the same holes for the same price, and every coordinate of the plan is the straight
 * one's, turned and shifted. {@code -Dholloway.seeds=N} takes N awkward houses and all samples.
 */
class AnyAngleTest {
  /** Coordinates are written to 0.1 mm each, millimetres. */
  private static final double WRITTEN = 0.2;

  private static final int SEEDS = Integer.getInteger("holloway.seeds", 4);

  @TempDir Path folder;

  private record Read(Path file, Plan plan, JsonNode json) {}

  private Read planned(Path file) throws Exception {
    Answers.Planned p = new Pipeline(Progress.SILENT).plan(file, Rough.SETTINGS);
    assertEquals(List.of(), p.refusals(), file.toString());
    String json = PlanJson.write(p.plan());
    return new Read(file, p.plan(), new ObjectMapper().readTree(json));
  }

  private Path onGrid(Path house, double degrees, long step, boolean stated) throws Exception {
    Reading.Sound read = assertInstanceOf(Reading.Sound.class, HouseFile.read(house));
    Turn turn = stated ? Turn.degrees(degrees) : Turn.NONE;
    String text =
        HouseWriter.house(
            new OnSiteGrid(degrees, step).of(read.house(), turn), read.request(), Optional.empty());
    Path file = Files.writeString(folder.resolve("on-grid.yaml"), text);
    Path found = folder.resolve("on-grid.found.yaml");
    Files.deleteIfExists(found);
    Optional<String> uncovered = HouseWriter.found(read.house());
    if (uncovered.isPresent()) {
      Files.writeString(found, uncovered.get());
    }
    return file;
  }

  private static void same(Read straight, Read turned, double degrees, String which) {
    assertEquals(straight.plan.totals(), turned.plan.totals(), which);
    assertEquals(ids(straight.plan), ids(turned.plan), which);
    JsonNode stands = turned.json.get("turned");
    assertEquals(degrees, stands.get("degrees").asDouble(), 2e-7, which);
    double angle = Math.toRadians(degrees);
    double east = stands.get("origin").get(0).asDouble();
    double north = stands.get("origin").get(1).asDouble();
    List<double[]> one = points(straight.json);
    List<double[]> other = points(turned.json);
    assertEquals(one.size(), other.size(), which);
    assertTrue(one.isEmpty() == straight.plan.runs().isEmpty(), which + " has points");
    for (int i = 0; i < one.size(); i++) {
      double x = one.get(i)[0] * Math.cos(angle) - one.get(i)[1] * Math.sin(angle) + east;
      double y = one.get(i)[0] * Math.sin(angle) + one.get(i)[1] * Math.cos(angle) + north;
      assertEquals(x, other.get(i)[0], WRITTEN, which + " x of point " + i);
      assertEquals(y, other.get(i)[1], WRITTEN, which + " y of point " + i);
      assertEquals(one.get(i)[2], other.get(i)[2], WRITTEN, which + " z of point " + i);
    }
  }

  private static List<String> ids(Plan p) {
    List<String> out = new ArrayList<>();
    p.holes().forEach(h -> out.add(h.id() + " " + h.diameterMm()));
    p.runs().forEach(r -> r.steps().forEach(s -> out.add(r.id() + " " + s.id())));
    p.unrouted().forEach(u -> out.add("no way " + u.id()));
    return out;
  }

  /** Every point of runs, holes and findings, in order. */
  private static List<double[]> points(JsonNode node) {
    List<double[]> out = new ArrayList<>();
    if (node.isArray() && node.size() == 3 && node.get(0).isNumber()) {
      out.add(
          new double[] {node.get(0).asDouble(), node.get(1).asDouble(), node.get(2).asDouble()});
    } else {
      node.forEach(n -> out.addAll(points(n)));
    }
    return out;
  }

  private Path written(String text) throws Exception {
    return Files.writeString(folder.resolve("house.yaml"), text);
  }

  private void turnedSomehow(Path house, long seed, String which) throws Exception {
    Random r = new Random(seed);
    double found = Math.round((r.nextDouble() * 88 - 44) * 1e6) / 1e6;
    double stated = Math.round((r.nextDouble() * 360 - 180) * 1e3) / 1e3;
    Read straight = planned(house);
    same(straight, planned(onGrid(house, found, 1, false)), found, which + " by " + found);
    same(straight, planned(onGrid(house, stated, 1, true)), stated, which + " said " + stated);
  }

  @Test
  void randomHouses() throws Exception {
    for (Shape s :
        List.of(
            new Shape(1, 4, 3, false, 3),
            new Shape(2, 7, 4, false, 5),
            new Shape(3, 8, 5, true, 6))) {
      turnedSomehow(written(RandomHouseText.of(s)), s.seed(), s.toString());
    }
  }

  @Test
  void awkwardHouses() throws Exception {
    for (long seed = 1; seed <= SEEDS; seed++) {
      var drawn = AwkwardHouseText.of(seed);
      Path found = folder.resolve("house.found.yaml");
      Files.deleteIfExists(found);
      if (drawn.found().isPresent()) {
        Files.writeString(found, drawn.found().get());
      }
      Path house = written(drawn.house());
      if (isPlaced(house)) {
        turnedSomehow(house, seed, "awkward " + seed);
      }
    }
  }

  /** Some awkward houses are told to be wrong. */
  private static boolean isPlaced(Path house) {
    try {
      new Pipeline(Progress.SILENT).understand(house);
      return true;
    } catch (InputTrouble told) {
      return false;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"plumb-corner", "tin-street", "quince-ranch", "alder-lane"})
  void samples(String name) throws Exception {
    boolean small = name.equals("plumb-corner");
    assumeTrue(small || SEEDS > 4, "the larger ones with -Dholloway.seeds=5 and more");
    turnedSomehow(Path.of("..", "samples", name + ".yaml"), name.hashCode(), name);
  }
}
