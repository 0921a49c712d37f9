package holloway.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Toy;
import holloway.plan.Plan;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TakeOffTest {
  private static Plan.PlannedRun run(String from, String to, String cable, double m) {
    return new Plan.PlannedRun("r", from, to, cable, m, m, List.of());
  }

  private static Map<String, Double> bought(Plan plan) {
    return plan.materials().stream()
        .collect(Collectors.toMap(Plan.Material::item, Plan.Material::quantity));
  }

  @Test
  void copperGetsSlackAtBothEnds() {
    CutLength cut = CutLength.of(run("cabinet", "desk", "cat6", 10));
    assertEquals(3.3, cut.slackM(), 1e-9);
    assertEquals(13.3, cut.metres(), 1e-9);
    assertEquals(10.7, CutLength.of(run("hall", "desk", "cat6", 10.04)).metres(), 1e-9);
  }

  @Test
  void fibreIsTheNextReadyMadeLead() {
    CutLength cut = CutLength.of(run("cabinet", "desk", "om4", 10));
    assertEquals(4, cut.slackM(), 1e-9);
    assertEquals(OptionalInt.of(15), cut.lead());
    assertEquals(15, cut.metres(), 1e-9);
    assertEquals(1, cut.surplusM(), 1e-9);
    assertEquals(OptionalInt.of(10), CutLength.of(run("cabinet", "desk", "om4", 6)).lead());
  }

  @Test
  void noStockLeadIsLongEnough() {
    CutLength cut = CutLength.of(run("cabinet", "desk", "om4", 46.01));
    assertTrue(cut.lead().isEmpty());
    assertEquals(50.1, cut.metres(), 1e-9);
    assertEquals(0, cut.surplusM(), 1e-9);
  }

  @Test
  void theToyIsCounted() {
    Set<String> plated =
        Toy.bare().holes().stream()
            .filter(h -> h.diameterMm() == 32)
            .map(Plan.PlannedHole::id)
            .collect(Collectors.toSet());
    Plan plan =
        TakeOff.of(Toy.bare(), Toy.request(), Toy.placed(), new HoleNeeds(plated, Map.of(), false));
    assertEquals(13.3 + 13.3 + 15, plan.totals().cableM(), 1e-9);
    Map<String, Double> items = bought(plan);
    // 26.6 m and 5 %: 27.93 m, the smallest box of 76 m.
    assertEquals(1, items.get("cat6 cable, box or reel of 76 m (250 ft)"), 1e-9);
    assertEquals(1, items.get("om4 lead with factory ends, 15 m"), 1e-9);
    assertEquals(1, items.get("low-voltage bracket for a finished wall, single gang"), 1e-9);
    assertEquals(1, items.get("keystone plate, single gang, 3 ports"), 1e-9);
    assertEquals(1, items.get("blank insert for an empty port"), 1e-9, "over the spare");
    assertEquals(1, items.get("keystone jack, cat6"), 1e-9, "the spare gets none");
    assertEquals(1, items.get("keystone coupler for duplex fibre, multimode"), 1e-9);
    assertEquals(1, items.get("patch panel, 12 ports"), 1e-9);
    assertEquals(1, items.get("patch cord, 0.9 m (3 ft)"), 1e-9);
    assertEquals(1, items.get("patch cord, 3 m (10 ft), at the outlets"), 1e-9);
    assertEquals(1, items.get("fire-block sealant, cartridge of 300 ml"), 1e-9);
    assertEquals(
        2, items.get("steel nail plate, 1.6 mm"), 1e-9, "a plate on both faces of the 32 mm hole");
    // Two bits; the attic asks for gear, for a crew of two.
    assertEquals(1, items.get("wood bit, 32 mm (1-1/4 in), usual length"), 1e-9);
    assertEquals(2, items.get("respirator, particle filter"), 1e-9);
    assertTrue(plan.materials().stream().allMatch(m -> m.price().isEmpty()));
  }
}
