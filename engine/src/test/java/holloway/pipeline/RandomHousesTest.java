package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.plan.PlanJson;
import holloway.support.RandomHouseText;
import holloway.support.RandomHouseText.Shape;
import holloway.support.Rough;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;

/**
 * Whatever the house, the referee accepts the plan and the printed plan hangs together. {@code
 * -Dholloway.seeds=N} plans N houses more, each of a seed of its own, and names the seeds that
 * fail.
 */
class RandomHousesTest {
  private static final PlanSettings QUICK =
      new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());

  @Property(tries = 14, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void everyPlanIsAcceptedAndHangsTogether(@ForAll("shapes") Shape shape) throws Exception {
    Looked looked = look(shape, shape.seed() % 4 == 0, Rough.SETTINGS);
    assertTrue(looked.faults.isEmpty(), String.join("\n", looked.faults));
  }

  /** One to three levels, 3 to 20 rooms, 1 to 30 runs. */
  @Provide
  Arbitrary<Shape> shapes() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 3).withDistribution(RandomDistribution.uniform()),
            Arbitraries.integers().between(3, 20).withDistribution(RandomDistribution.uniform()),
            Arbitraries.integers().between(1, 30).withDistribution(RandomDistribution.uniform()),
            Arbitraries.of(true, false, false),
            Arbitraries.longs().between(1, 1_000_000))
        .as(Shape::new);
  }

  @Test
  void housesOfTheAskedSeedsHangTogether() throws Exception {
    int last = Integer.getInteger("holloway.seeds", 4);
    List<String> faults = new ArrayList<>();
    int routed = 0;
    for (long seed = 1; seed <= last; seed++) {
      Looked looked = look(Shape.of(seed), false, QUICK);
      faults.addAll(looked.faults);
      routed += looked.routed;
    }
    assertTrue(faults.isEmpty(), String.join("\n", faults));
    assertTrue(routed >= last, "too few runs have a route for this to prove much: " + routed);
  }

  private record Looked(int routed, List<String> faults) {}

  private static Looked look(Shape shape, boolean twice, PlanSettings how) throws Exception {
    List<String> faults = new ArrayList<>();
    Path house = Files.createTempFile("random", ".yaml");
    try {
      Files.writeString(house, RandomHouseText.of(shape));
      Answers.Planned planned = new Pipeline(Progress.SILENT).plan(house, how);
      planned.refusals().forEach(f -> faults.add(shape + " refused: " + f));
      String text = PlanJson.write(planned.plan());
      JsonNode plan = new ObjectMapper().readTree(text);
      HangsTogether.faults(plan).forEach(f -> faults.add(shape + ": " + f));
      if (plan.get("runs").size() + plan.get("unrouted").size() != shape.runs()) {
        faults.add(shape + ": some of the runs are neither planned nor unrouted");
      }
      if (twice) {
        String again = PlanJson.write(new Pipeline(Progress.SILENT).plan(house, how).plan());
        assertEquals(text, again, shape + ": the second plan differs");
      }
      return new Looked(plan.get("runs").size(), faults);
    } catch (RuntimeException e) {
      faults.add(shape + ": " + e + " at " + e.getStackTrace()[0]);
      return new Looked(0, faults);
    } finally {
      Files.delete(house);
    }
  }
}
