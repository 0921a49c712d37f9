package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.plan.PlanJson;
import holloway.support.RandomHouseText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever the house, the referee accepts the plan and the printed plan hangs together. {@code
 * -Dholloway.seeds=N} plans the houses 1 to N instead of 1 to 12.
 */
class RandomHousesTest {
  private static final PlanSettings QUICK =
      new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());

  @TempDir Path folder;

  @Test
  void everyPlanIsAcceptedAndHangsTogether() throws Exception {
    int last = Integer.getInteger("holloway.seeds", 12);
    List<String> faults = new ArrayList<>();
    int routed = 0;
    for (long seed = 1; seed <= last; seed++) {
      routed += look(seed, faults);
    }
    assertTrue(faults.isEmpty(), String.join("\n", faults));
    assertTrue(routed >= last, "too few runs have a route for this to prove much: " + routed);
  }

  /** Gives the number of routed runs; every fault names the seed. */
  private int look(long seed, List<String> faults) throws Exception {
    Path house = Files.writeString(folder.resolve(seed + ".yaml"), RandomHouseText.of(seed));
    try {
      Answers.Planned planned = new Pipeline(Progress.SILENT).plan(house, QUICK);
      planned.refusals().forEach(f -> faults.add("seed " + seed + " refused: " + f));
      String text = PlanJson.write(planned.plan());
      JsonNode plan = new ObjectMapper().readTree(text);
      hangsTogether(plan).forEach(f -> faults.add("seed " + seed + ": " + f));
      if (seed % 4 == 0) {
        String again = PlanJson.write(new Pipeline(Progress.SILENT).plan(house, QUICK).plan());
        assertEquals(text, again, "seed " + seed + ": the second plan differs");
      }
      return plan.get("runs").size();
    } catch (RuntimeException e) {
      faults.add("seed " + seed + ": " + e + " at " + e.getStackTrace()[0]);
      return 0;
    }
  }

  private static List<String> hangsTogether(JsonNode plan) {
    List<String> faults = new ArrayList<>();
    JsonNode totals = plan.get("totals");
    if (totals.get("bound").asLong() > totals.get("objective").asLong()) {
      faults.add("the bound is over the objective");
    }
    double minutes = 0;
    for (JsonNode w : plan.get("works")) {
      minutes += w.get("minutes").asDouble();
    }
    for (JsonNode run : plan.get("runs")) {
      chain(run, faults);
      for (JsonNode s : run.get("steps")) {
        minutes += s.path("minutes").asDouble(0);
      }
    }
    if (Math.abs(minutes - totals.get("minutes").asDouble()) > 0.01) {
      faults.add("works and legs take " + minutes + ", said " + totals.get("minutes"));
    }
    return faults;
  }

  private static void chain(JsonNode run, List<String> faults) {
    String id = run.get("id").asText();
    JsonNode steps = run.get("steps");
    double metres = 0;
    for (int i = 0; i < steps.size(); i++) {
      metres += steps.get(i).get("m").asDouble();
      if (i > 0 && gap(steps.get(i - 1), steps.get(i)) > 1) {
        faults.add(id + ": step " + i + " does not begin where the last ends");
      }
      boolean alike = i > 0 && kind(steps, i).equals(kind(steps, i - 1));
      if (alike || !List.of("leg", "crossing").contains(kind(steps, i))) {
        faults.add(id + ": step " + i + " does not alternate");
      }
    }
    if (Math.abs(metres - run.get("route-m").asDouble()) > 0.02) {
      faults.add(id + ": steps add up to " + metres + ", said " + run.get("route-m"));
    }
  }

  private static String kind(JsonNode steps, int i) {
    return steps.get(i).get("kind").asText();
  }

  private static double gap(JsonNode before, JsonNode after) {
    JsonNode path = before.get("path");
    JsonNode end = path.get(path.size() - 1);
    JsonNode begin = after.at("/path/0");
    double square = 0;
    for (int i = 0; i < 3; i++) {
      square += Math.pow(end.get(i).asDouble() - begin.get(i).asDouble(), 2);
    }
    return Math.sqrt(square);
  }
}
