package holloway.check;

import holloway.plan.Plan;
import java.util.List;
import java.util.TreeSet;

/** The sums of a plan, added up again. */
final class TotalsRule implements Rule {
  /** Units that one hole weighs in the profile of fewest holes. */
  private static final long HOLE_WEIGHT = 10_000_000_000L;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    Plan plan = evidence.plan();
    judgeWorks(plan, charge);
    judgeObjective(plan, new MoneyPrice(evidence), charge);
    judgeBound(plan.totals(), charge);
    judgeCounts(plan, charge);
    judgeMetres(plan, charge);
  }

  private void judgeWorks(Plan plan, Charge charge) {
    TreeSet<String> seen = new TreeSet<>();
    for (Plan.PlannedWork w : plan.works()) {
      if (!seen.add(w.id())) {
        charge.plan(w.id(), "the work is listed twice; it is paid once");
      }
    }
  }

  private static long units(Plan plan, double minutes) {
    return Math.round(minutes * plan.perMinute());
  }

  /** Works once, and the legs' minutes: the objective of least work, in units. */
  private static long leastWork(Plan plan) {
    long sum = 0;
    for (Plan.PlannedWork w : plan.works()) {
      sum += units(plan, w.minutes());
    }
    for (Plan.PlannedRun run : plan.runs()) {
      for (Plan.PlanStep s : run.steps()) {
        sum += units(plan, s.minutes().orElse(0.0));
      }
    }
    return sum;
  }

  private void judgeObjective(Plan plan, MoneyPrice money, Charge charge) {
    long work = leastWork(plan);
    Plan.Totals t = plan.totals();
    if (Math.abs(t.minutes() * plan.perMinute() - work) > 0.05 * plan.perMinute() + 1) {
      charge.plan(
          "minutes",
          "says %.1f, works and legs add up to %.4f",
          t.minutes(),
          work / (double) plan.perMinute());
    }
    if (money.counts()) {
      judgeWithMoney(plan, work, money, charge);
      return;
    }
    long expected = plan.profile().equals("fewest-holes") ? t.holes() * HOLE_WEIGHT + work : work;
    if (!plan.profile().equals("shortest") && t.objective() != expected) {
      charge.plan("objective", "says %d, works and legs make %d", t.objective(), expected);
    }
  }

  /** Lengths are written to the millimetre, so that money has a little play. */
  private void judgeWithMoney(Plan plan, long work, MoneyPrice money, Charge charge) {
    Plan.Totals t = plan.totals();
    long holes = plan.profile().equals("fewest-holes") ? t.holes() * HOLE_WEIGHT : 0;
    double told = (t.objective() - holes - work) / (double) plan.perMinute();
    double[] range = money.range();
    boolean off = told < range[0] || told > range[1];
    if (off && !plan.profile().equals("shortest")) {
      charge.plan(
          "objective",
          "holds %.4f min of money beside works and legs; cable, sealant and steel make %.4f to %.4f",
          told,
          range[0],
          range[1]);
    }
  }

  private void judgeBound(Plan.Totals t, Charge charge) {
    if (t.bound() > t.objective()) {
      charge.plan("bound", "%d lies above the objective %d", t.bound(), t.objective());
    }
    double gap = t.objective() == 0 ? 0 : (t.objective() - t.bound()) / (double) t.objective();
    if (Math.abs(gap - t.gap()) > 1e-4) {
      charge.plan("gap", "says %.4f, (objective - bound) / objective is %.4f", t.gap(), gap);
    }
  }

  private void judgeCounts(Plan plan, Charge charge) {
    int patches = plan.works().stream().mapToInt(Plan.PlannedWork::patches).sum();
    int counted = plan.works().stream().mapToInt(Plan.PlannedWork::holes).sum();
    int bores = plan.holes().stream().mapToInt(Plan.PlannedHole::bores).sum();
    if (plan.totals().holes() != bores + patches) {
      charge.plan(
          "holes",
          "says %d; %d bores and %d patches make %d",
          plan.totals().holes(),
          bores,
          patches,
          bores + patches);
    }
    if (counted != plan.totals().holes()) {
      charge.plan("holes", "says %d, the works count %d", plan.totals().holes(), counted);
    }
    if (patches != plan.totals().patches()) {
      charge.plan("patches", "says %d, the works count %d", plan.totals().patches(), patches);
    }
    List<String> zones =
        plan.works().stream()
            .filter(w -> w.kind().equals("zone"))
            .map(Plan.PlannedWork::zone)
            .distinct()
            .sorted()
            .toList();
    if (!zones.equals(plan.totals().zones())) {
      charge.plan("zones", "says %s, the works set up %s", plan.totals().zones(), zones);
    }
  }

  private void judgeMetres(Plan plan, Charge charge) {
    double route = plan.runs().stream().mapToDouble(Plan.PlannedRun::routeM).sum();
    double cable = plan.runs().stream().mapToDouble(Plan.PlannedRun::cableM).sum();
    if (Math.abs(route - plan.totals().routeM()) > 0.06) {
      charge.plan("route-m", "says %.1f, the runs make %.3f", plan.totals().routeM(), route);
    }
    if (Math.abs(cable - plan.totals().cableM()) > 0.06) {
      charge.plan("cable-m", "says %.1f, the runs make %.3f", plan.totals().cableM(), cable);
    }
  }
}
