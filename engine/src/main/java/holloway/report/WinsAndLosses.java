package holloway.report;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What one plan wins and loses against another, in words. */
record WinsAndLosses(List<String> wins, List<String> loses) {
  static WinsAndLosses of(Plan one, Plan against, UnitWords units) {
    WinsAndLosses out = new WinsAndLosses(new ArrayList<>(), new ArrayList<>());
    Plan.Totals a = one.totals();
    Plan.Totals b = against.totals();
    if (one.unrouted().size() > against.unrouted().size()) {
      // Less work for fewer runs is no gain, so amounts are not compared.
      out.loses.add(
          UnitWords.count(one.unrouted().size() - against.unrouted().size(), "run")
              + " without a route");
      zones(b, a).forEach(z -> out.wins.add("no set-up of " + z));
      return out;
    }
    int more = against.unrouted().size() - one.unrouted().size();
    if (more > 0) {
      out.wins.add(UnitWords.count(more, "run") + " more routed");
    }
    out.add(a.holes() - b.holes(), UnitWords.count(Math.abs(a.holes() - b.holes()), "hole"));
    int patches = a.patches() - b.patches();
    out.add(patches, UnitWords.count(Math.abs(patches), "patch"));
    double minutes = a.minutes() - b.minutes();
    out.add(Math.abs(minutes) < 0.5 ? 0 : minutes, UnitWords.minutes(Math.abs(minutes)));
    double seen = a.visibleM() - b.visibleM();
    out.add(
        Math.abs(seen) < 0.05 ? 0 : seen,
        units.cable(Math.abs(seen)),
        " less in sight",
        " more in sight");
    double cable = a.cableM() - b.cableM();
    out.add(
        Math.abs(cable) < 0.05 ? 0 : cable,
        units.cable(Math.abs(cable)),
        " less cable",
        " more cable");
    zones(b, a).forEach(z -> out.wins.add("no set-up of " + z));
    zones(a, b).forEach(z -> out.loses.add("sets up " + z));
    return out;
  }

  private void add(double difference, String amount) {
    add(difference, amount, " less", " more");
  }

  private void add(double difference, String amount, String won, String lost) {
    if (difference < 0) {
      wins.add(amount + won);
    } else if (difference > 0) {
      loses.add(amount + lost);
    }
  }

  private static Set<String> zones(Plan.Totals with, Plan.Totals without) {
    Set<String> out = new TreeSet<>(with.zones());
    out.removeAll(without.zones());
    return out;
  }
}
