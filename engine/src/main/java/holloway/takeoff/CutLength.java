package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.plan.Plan;
import java.util.List;
import java.util.OptionalInt;

/**
 * How long to cut the cable of one run: its route and the slack at both ends (BICSI practice,
 * trade-facts A2-11 to A2-13; the TIA standards have no slack rule, A2-14).
 *
 * @param slackM 300 mm at a copper outlet, 1 m at a fibre outlet, 3 m at the cabinet, and 300 mm
 *     for a drip loop at each end of a link between buildings; metres
 * @param lead length of the ready-made lead, metres; empty when the cable is cut from the drum or
 *     no stock lead is long enough
 * @param metres what the run is bought or cut at
 */
public record CutLength(double routeM, double slackM, OptionalInt lead, double metres) {
  /** Stock lengths of ready-made fibre leads, metres (F4: the ladder is from memory). */
  public static final List<Integer> LEADS_M = List.of(1, 2, 3, 5, 7, 10, 15, 20, 30, 50);

  private static final double AT_OUTLET = 0.3;
  private static final double AT_FIBRE_OUTLET = 1.0;
  private static final double AT_CABINET = 3.0;

  /** Common practice, no published source. */
  private static final double DRIP_LOOP = 0.3;

  public static CutLength of(Plan.PlannedRun run) {
    Cable cable = Cable.get(run.cable());
    double slack = slackAt(run.from(), cable) + slackAt(run.to(), cable) + outside(run);
    double least = upToTenth(run.routeM() + slack);
    if (!cable.factoryEnds()) {
      return new CutLength(run.routeM(), slack, OptionalInt.empty(), least);
    }
    OptionalInt lead =
        LEADS_M.stream().mapToInt(Integer::intValue).filter(l -> l >= least).findFirst();
    return new CutLength(run.routeM(), slack, lead, lead.isPresent() ? lead.getAsInt() : least);
  }

  /** What a ready-made lead is longer than route and slack, metres; coiled at the cabinet. */
  public double surplusM() {
    return lead.isPresent() ? metres - routeM - slackM : 0;
  }

  /** A drip loop before each wall that a link between buildings ends at. */
  private static double outside(Plan.PlannedRun run) {
    return run.steps().stream().filter(CutLength::endsLink).count() * DRIP_LOOP;
  }

  /** The end of a tube or link; those indoors have a box there and no loop. */
  private static boolean endsLink(Plan.PlanStep s) {
    boolean end = s.id().startsWith("conduit/") && s.id().endsWith("/cut-out");
    return end && s.id().contains("/outdoor-");
  }

  private static double slackAt(String end, Cable cable) {
    if (end.equals("cabinet")) {
      return AT_CABINET;
    }
    return cable.fibre() ? AT_FIBRE_OUTLET : AT_OUTLET;
  }

  /** Up to the next tenth of a metre; a hair of rounding does not cost a tenth. */
  private static double upToTenth(double m) {
    return Math.ceil(m * 10 - 1e-6) / 10;
  }
}
