package holloway.pipeline;

import holloway.hollow.WorkKind;
import holloway.plan.Plan;
import holloway.request.Effort;
import holloway.routing.RouteGraph;
import holloway.routing.Spending;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A plan as the search wrote it holds money in the minutes of its bores and of its total; here both
 * are the minutes of the work alone again. The objective keeps it.
 */
final class Labour {
  private final Spending money;
  private final RouteGraph graph;

  Labour(Spending money, RouteGraph graph) {
    this.money = money;
    this.graph = graph;
  }

  Plan of(Plan plan) {
    if (money.isNothing()) {
      return plan;
    }
    Map<String, Double> less = new TreeMap<>();
    List<Plan.PlannedHole> made = new ArrayList<>();
    for (Plan.PlannedHole h : plan.holes()) {
      double minutes = money(h) / (double) Effort.PER_MINUTE;
      h.works().stream()
          .filter(w -> w.startsWith(h.id() + "/bore/"))
          .forEach(w -> less.put(w, minutes));
      made.add(h.withMinutes(exact(h.minutes() - minutes)));
    }
    List<Plan.PlannedWork> works =
        plan.works().stream()
            .map(w -> w.withMinutes(exact(w.minutes() - less.getOrDefault(w.id(), 0.0))))
            .toList();
    double minutes =
        works.stream().mapToDouble(Plan.PlannedWork::minutes).sum()
            + plan.runs().stream()
                .flatMap(r -> r.steps().stream())
                .mapToDouble(s -> s.minutes().orElse(0.0))
                .sum();
    return plan.withWork(made, works, exact(minutes));
  }

  private static double exact(double minutes) {
    return Math.round(minutes * Effort.PER_MINUTE) / (double) Effort.PER_MINUTE;
  }

  /** The seal, and steel for each bore whose bit wants it. */
  private long money(Plan.PlannedHole h) {
    RouteGraph.Hole hole =
        graph.holes().stream().filter(g -> g.site().equals(h.id())).findFirst().orElseThrow();
    if (hole.made()) {
      return 0;
    }
    long units = money.sealOf(h.id()) + money.steelOf(h.id(), h.diameterMm());
    return units + (h.bores() == 2 ? secondSteel(h, hole) : 0);
  }

  /** A plan names the wider of two bits; what is left of the price tells the other. */
  private long secondSteel(Plan.PlannedHole h, RouteGraph.Hole hole) {
    long left = Math.round(h.minutes() * Effort.PER_MINUTE) - hole.second().orElse(0);
    for (RouteGraph.Work w : graph.works()) {
      left -= w.kind() == WorkKind.BORE && h.works().contains(w.name()) ? w.price() : 0;
    }
    for (RouteGraph.Step s : hole.steps()) {
      left -= s.diameterMm() == h.diameterMm() ? s.extra() : 0;
    }
    long other = left;
    return hole.steps().stream()
        .filter(s -> s.extra() == other && money.steelOf(h.id(), s.diameterMm()) > 0)
        .mapToLong(s -> money.steelOf(h.id(), s.diameterMm()))
        .findFirst()
        .orElse(0);
  }
}
