package holloway.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point3;
import holloway.pipeline.Toy;
import holloway.plan.Plan;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Drawings of single runs, and runs side by side. */
class RunElevationTest {
  private static Plan.PlanStep leg(String hollow, Point3... path) {
    return new Plan.PlanStep(
        "leg",
        "x",
        Optional.of(hollow),
        Optional.empty(),
        List.of(path),
        1,
        Optional.of("hand"),
        Optional.empty(),
        Optional.of(1.0));
  }

  @Test
  void lengthAndHeightAreToScale() {
    long m = 1_000_000_000L;
    Point3 a = new Point3(0, 0, m);
    Point3 b = new Point3(0, 0, 2 * m);
    Point3 c = new Point3(3 * m, 4 * m, 2 * m);
    Plan.PlannedRun run =
        new Plan.PlannedRun("r", "cabinet", "desk", "cat6", 6, 9, List.of(leg("attic", a, b, c)));
    Plan plan = Toy.bare().withRuns(List.of(run), Toy.bare().totals());
    Map<String, String> drawn =
        RunElevation.of(
            plan,
            Toy.placed(),
            UnitSystem.METRIC,
            UnaryOperator.identity(),
            RunElevation.Type.PAPER);
    String svg = drawn.get("r");
    assertTrue(svg.contains("x1=\"0\" y1=\"-1000\" x2=\"0\" y2=\"-2000\""), svg);
    assertTrue(svg.contains("x1=\"0\" y1=\"-2000\" x2=\"5000\" y2=\"-2000\""), svg);
    assertTrue(svg.contains(">desk</text>"), svg);
  }

  /** Of seven runs on the outside none is drawn over the wall they are fixed to. */
  @Test
  void cableOnAFaceKeepsToItsSide() {
    var wall = Toy.placed().walls().get(0);
    long mid = wall.length() / 2;
    for (int side = 0; side < 2; side++) {
      long t = side == 0 ? -10_000_000 : wall.thickness() + 10_000_000;
      Plan.PlanStep leg =
          leg("outside face", wall.world(mid, t, 0), wall.world(mid + 500_000_000, t, 0));
      for (int run = 0; run < 7; run++) {
        double[] by = SideBySide.of(leg, run, 7, Toy.placed());
        double out = by[0] * wall.frame().v().x() - by[1] * wall.frame().v().y();
        assertTrue(side == 0 ? out <= 1e-9 : out >= -1e-9, "run " + run + " moves " + out);
        assertEquals(run * 50, Math.abs(out), 1e-6);
      }
    }
  }

  @Test
  void aPortShowsItsLabelAndALongNameIsFolded() {
    String svg =
        CabinetFront.of(
            List.of(new CabinetFront.Port("A", 13, "1A-A13", "upper hall ceiling", false)),
            List.of(24),
            "x",
            CabinetFront.Form.PAPER);
    assertTrue(svg.contains(">1A-A13</text>"), svg);
    assertEquals(24, svg.split("class=\"port", -1).length - 1, "free ports too");
    assertEquals(List.of("upper hall", "ceiling"), CabinetFront.folded("upper hall ceiling", 10));
  }
}
