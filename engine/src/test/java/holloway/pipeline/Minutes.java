package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.plan.Plan;

/** What tests ask of a plan's prices. */
public final class Minutes {
  private Minutes() {}

  /** Minutes of a work, which must be in the plan. */
  public static double work(Plan plan, String id) {
    return plan.works().stream()
        .filter(w -> w.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no work " + id + " in " + plan.works()))
        .minutes();
  }

  /** The first leg of the plan in a hollow. */
  public static Plan.PlanStep leg(Plan plan, String hollow) {
    return plan.runs().stream()
        .flatMap(r -> r.steps().stream())
        .filter(s -> s.kind().equals("leg") && s.id().equals(hollow))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no leg in " + hollow));
  }

  /** A leg's metres and minutes, as added up by hand. */
  public static void leg(Plan plan, String hollow, double metres, double minutes) {
    Plan.PlanStep s = leg(plan, hollow);
    assertEquals(metres, s.m(), 0.0002, hollow + " metres");
    assertEquals(minutes, s.minutes().orElse(0.0), 0.0005, hollow + " minutes");
  }

  /** The objective in minutes, as added up by hand. */
  public static void total(Plan plan, double minutes) {
    assertEquals(minutes, plan.totals().objective() / (double) plan.perMinute(), 0.002);
    assertEquals(minutes, plan.totals().minutes(), 0.002);
  }
}
