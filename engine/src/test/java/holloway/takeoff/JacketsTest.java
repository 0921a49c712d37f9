package holloway.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.PriceList;
import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import holloway.limits.LocalRules;
import holloway.limits.RuleKey;
import holloway.pipeline.Toy;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What lies outside is bought for outdoors: at the limit, past it, and where a hole is too tight.
 */
class JacketsTest {
  private static Plan.PlanStep leg(HollowKind kind, double metres) {
    Point3 a = new Point3(0, 0, 0);
    Point3 b = new Point3(Math.round(metres * 1e9), 0, 0);
    return new Plan.PlanStep(
        "leg",
        kind.word(),
        Optional.of(kind.word()),
        Optional.empty(),
        List.of(a, b),
        metres,
        Optional.of("hand"),
        Optional.empty(),
        Optional.of(1.0));
  }

  private static Plan plan(String cable, double outside, double inside, int bit) {
    return plan(cable, outside, inside, bit, 1);
  }

  private static Plan plan(String cable, double outside, double inside, int bit, int count) {
    Plan toy = Toy.bare();
    List<Plan.PlanStep> steps =
        List.of(leg(HollowKind.OUTSIDE_FACE, outside), leg(HollowKind.ATTIC, inside));
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      double all = outside + inside;
      runs.add(new Plan.PlannedRun("desk/" + i, "cabinet", "desk", cable, all, all + 4, steps));
    }
    List<Plan.PlannedHole> holes = new ArrayList<>();
    Plan.PlannedHole h = toy.holes().get(0);
    holes.add(
        new Plan.PlannedHole(
            h.id(),
            h.label(),
            h.kind(),
            bit,
            h.depthMm(),
            h.at(),
            h.between(),
            h.method(),
            h.stand(),
            h.works(),
            h.minutes(),
            runs.stream().map(Plan.PlannedRun::id).toList(),
            false,
            h.otherMethods(),
            1,
            h.axis(),
            h.through()));
    return toy.withRuns(runs, toy.totals()).withWork(holes, toy.works(), 1);
  }

  private static Map<String, String> changed(String cable, double outside, double inside) {
    return Jackets.changed(plan(cable, outside, inside, 25), LocalRules.NONE);
  }

  @Test
  void outdoorsFrom300MmOn() {
    assertEquals(Map.of(), changed("cat6", 0.3, 10));
    assertEquals(Map.of("desk/1", "outdoor-cat6"), changed("cat6", 0.301, 10));
    assertEquals(Map.of("desk/1", "outdoor-cat6"), changed("cat5e", 5, 10));
    assertEquals(Map.of("desk/1", "cat6a in an outdoor jacket"), changed("cat6a", 5, 10));
    assertEquals(Map.of("desk/1", "om4 in an outdoor jacket"), changed("om4", 5, 10));
    assertEquals(Map.of(), changed("outdoor-cat6", 5, 15.24), "as it was asked for");
    assertEquals(
        Map.of("desk/1", "outdoor-cat6 listed for indoors too"), changed("outdoor-cat6", 5, 40));
  }

  /** NEC 800.48: 50 ft = 15.24 m of cable that is listed for outdoors alone. */
  @Test
  void bothListingsWhereItGoesOnIndoors() {
    assertEquals(Map.of("desk/1", "outdoor-cat6"), changed("cat6", 5, 15.24));
    assertEquals(
        Map.of("desk/1", "outdoor-cat6 listed for indoors too"), changed("cat6", 5, 15.25));
    assertEquals(
        Map.of("desk/1", "om4 in an outdoor jacket listed for indoors too"),
        changed("om4", 5, 15.25));
  }

  /** A rule file that lets it go in 10 m, or 30, decides here too. */
  @Test
  void theOwnLimitOfARuleFileDecides() {
    Plan in20 = plan("outdoor-cat6", 5, 20, 25);
    assertEquals(Map.of(), Jackets.changed(in20, indoors(20)));
    assertEquals(
        Map.of("desk/1", "outdoor-cat6 listed for indoors too"),
        Jackets.changed(in20, indoors(19.999)));
  }

  private static LocalRules indoors(double metres) {
    RuleKey key = RuleKey.OUTDOOR_CABLE_INDOORS;
    var figure = LocalRules.figure("Brook", key, metres, "m", "bylaw 7");
    return new LocalRules(
        "Brook", "b.yaml", "us", Map.of(key, new LocalRules.Stated(figure, Optional.empty())));
  }

  /** 31 % of 16 mm squared are 79.4: two jackets of 6.1 mm make 74.4, two of 6.5 mm 84.5. */
  @Test
  void noThickerThanTheHoleTakes() {
    String thin = "cat6 in an outdoor jacket no thicker than 6.1 mm";
    assertEquals(
        Map.of("desk/1", thin, "desk/2", thin),
        Jackets.changed(plan("cat6", 5, 10, 16, 2), LocalRules.NONE));
    String usual = "outdoor-cat6";
    assertEquals(
        Map.of("desk/1", usual, "desk/2", usual),
        Jackets.changed(plan("cat6", 5, 10, 19, 2), LocalRules.NONE));
    assertEquals(
        Map.of("desk/1", usual), Jackets.changed(plan("cat6", 5, 10, 16), LocalRules.NONE));
  }

  @Test
  void theListBuysIt() {
    Plan bought = TakeOff.of(plan("cat6", 5, 10, 25), Toy.request(), Toy.placed());
    List<String> items = bought.materials().stream().map(Plan.Material::item).toList();
    assertTrue(
        items.contains("outdoor-cat6 cable cut in the shop, one length of 20 m (66 ft)"),
        items.toString());
    assertTrue(items.stream().noneMatch(i -> i.startsWith("cat6 cable")), items.toString());
    BoxPlan boxes = BoxPlanner.of(bought, PriceList.NONE, LocalRules.NONE);
    assertEquals("outdoor-cat6 cut length 1", boxes.orders().get(0).reels().get(0).name());
    List<String> leads =
        TakeOff.of(plan("om4", 5, 3, 25), Toy.request(), Toy.placed()).materials().stream()
            .map(Plan.Material::item)
            .toList();
    assertTrue(
        leads.contains("om4 lead with factory ends in an outdoor jacket, 15 m"), leads.toString());
  }
}
