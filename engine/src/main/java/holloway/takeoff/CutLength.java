package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.catalog.PriceList;
import holloway.plan.Plan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalInt;

/**
 * How long to cut the cable of one run: its route and the slack at both ends (BICSI practice,
 * trade-facts A2-11 to A2-13; the TIA standards have no slack rule, A2-14). Reckoned in decimals
 * and rounded up, so that a cable is never short by a hair of binary fractions.
 *
 * @param slackFromM slack at the end the run starts from, metres: 300 mm at a copper outlet, 1 m at
 *     a fibre outlet, 3 m at the cabinet; 300 mm more for a drip loop where it leaves a building
 * @param slackToM the same at the other end
 * @param lead length of the ready-made lead, metres; empty when the cable is cut from the drum or
 *     no stock lead is long enough
 * @param metres what the run is bought or cut at
 */
public record CutLength(
    double routeM, double slackFromM, double slackToM, OptionalInt lead, double metres) {
  private static final double AT_OUTLET = 0.3;
  private static final double AT_FIBRE_OUTLET = 1.0;
  private static final double AT_CABINET = 3.0;

  /** Common practice, no published source. */
  private static final double DRIP_LOOP = 0.3;

  public static CutLength of(Plan.PlannedRun run) {
    return of(run, PriceList.NONE);
  }

  /** Leads in the lengths that a shop has. */
  public static CutLength of(Plan.PlannedRun run, PriceList prices) {
    return of(run, prices.leadsOf(run.cable()).stream().map(PriceList.Piece::metres).toList());
  }

  /**
   * @param leadsM stock lengths of ready-made leads, metres, shortest first
   */
  public static CutLength of(Plan.PlannedRun run, List<Integer> leadsM) {
    Cable cable = Cable.get(run.cable());
    double loops = loops(run);
    double from = slackAt(run.from(), cable) + loops / 2;
    double to = slackAt(run.to(), cable) + loops / 2;
    BigDecimal least =
        BigDecimal.valueOf(run.routeM()).add(BigDecimal.valueOf(from)).add(BigDecimal.valueOf(to));
    double cut = least.setScale(1, RoundingMode.CEILING).doubleValue();
    if (!cable.factoryEnds()) {
      return new CutLength(run.routeM(), from, to, OptionalInt.empty(), cut);
    }
    OptionalInt lead =
        leadsM.stream()
            .mapToInt(Integer::intValue)
            .filter(l -> BigDecimal.valueOf(l).compareTo(least) >= 0)
            .findFirst();
    return new CutLength(run.routeM(), from, to, lead, lead.isPresent() ? lead.getAsInt() : cut);
  }

  /** Slack at both ends, metres. */
  public double slackM() {
    return slackFromM + slackToM;
  }

  /** What a ready-made lead is longer than route and slack, metres. */
  public double surplusM() {
    return lead.isPresent() ? metres - routeM - slackM() : 0;
  }

  /** A drip loop before each wall that a link between buildings ends at, metres. */
  private static double loops(Plan.PlannedRun run) {
    long ends =
        run.steps().stream()
            .map(Plan.PlanStep::id)
            .filter(s -> s.startsWith("conduit/") && s.contains("/outdoor-"))
            .filter(s -> s.endsWith("/cut-out"))
            .count();
    return ends * DRIP_LOOP;
  }

  private static double slackAt(String end, Cable cable) {
    if (end.equals("cabinet")) {
      return AT_CABINET;
    }
    return cable.fibre() ? AT_FIBRE_OUTLET : AT_OUTLET;
  }
}
