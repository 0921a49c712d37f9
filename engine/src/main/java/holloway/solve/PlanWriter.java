package holloway.solve;

import holloway.plan.Plan;
import holloway.plan.Plan.PlannedRun;
import holloway.plan.Plan.PlannedWork;
import holloway.plan.Plan.Totals;
import holloway.plan.Plan.Unrouted;
import holloway.request.Effort;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Turns a draft into a plan; node and edge ids stay behind. */
final class PlanWriter {
  private final Task task;
  private final Network net;
  private final Draft draft;
  private final PlannedHoles holes;

  PlanWriter(Draft draft) {
    this.draft = draft;
    this.task = draft.task;
    this.net = draft.net;
    holes = new PlannedHoles(draft);
  }

  /** {@code cut}: whether time ended the search. */
  Plan write(long bound, boolean cut) {
    List<PlannedRun> runs = new ArrayList<>();
    List<Unrouted> unrouted = new ArrayList<>();
    Map<String, String> labels = holes.labels();
    for (int k = 0; k < task.runs(); k++) {
      Order.Wanted w = task.order.runs().get(k);
      if (draft.paths[k] == null) {
        unrouted.add(new Unrouted(w.id(), List.of()));
      } else {
        runs.add(run(w, new RunSteps(net, labels).of(draft.paths[k])));
      }
    }
    return new Plan(
        1,
        "",
        net.profile.word(),
        Effort.PER_MINUTE,
        List.of(),
        totals(runs, bound, cut),
        List.copyOf(runs),
        holes.list(),
        List.copyOf(unrouted),
        works(),
        List.of(),
        List.of(),
        new Plan.SurveyNotes(List.of(), List.of(), List.of()));
  }

  private static PlannedRun run(Order.Wanted w, List<Plan.PlanStep> steps) {
    long length = 0;
    for (Plan.PlanStep s : steps) {
      length = Math.addExact(length, Polyline.nanometres(s.path()));
    }
    double metres = length / 1e9;
    return new PlannedRun(w.id(), w.from(), w.to(), w.cable().kind(), metres, metres, steps);
  }

  private List<PlannedWork> works() {
    List<PlannedWork> out = new ArrayList<>();
    for (RouteGraph.Work w : net.graph.works()) {
      if (draft.isOpen(w.id())) {
        PlannedHoles.Added more = holes.addedTo(w);
        double minutes = (w.price() + more.units()) / (double) Effort.PER_MINUTE;
        int counted = w.holes() + more.holes();
        out.add(
            new PlannedWork(w.name(), w.kind().word(), minutes, counted, w.patches(), w.zone()));
      }
    }
    return List.copyOf(out);
  }

  private Totals totals(List<PlannedRun> runs, long bound, boolean cut) {
    long units = holes.extraUnits();
    int counted = holes.secondBores();
    int patches = 0;
    TreeSet<String> zones = new TreeSet<>();
    for (RouteGraph.Work w : net.graph.works()) {
      if (draft.isOpen(w.id())) {
        units = Math.addExact(units, w.price());
        counted += w.holes();
        patches += w.patches();
        if (!w.zone().isEmpty()) {
          zones.add(w.zone());
        }
      }
    }
    long visible = 0;
    for (Path p : draft.paths) {
      for (int arc : p == null ? new int[0] : p.arcs()) {
        RouteGraph.Edge e = net.graph.edges().get(arc >> 1);
        units = Math.addExact(units, e.price());
        visible = Math.addExact(visible, e.visible());
      }
    }
    double route = runs.stream().mapToDouble(PlannedRun::routeM).sum();
    long objective = draft.price();
    return new Totals(
        objective,
        bound,
        objective == 0 ? 0 : (objective - bound) / (double) objective,
        units / (double) Effort.PER_MINUTE,
        counted,
        patches,
        route,
        route,
        visible / 1e9,
        Optional.empty(),
        "",
        List.copyOf(zones),
        cut);
  }
}
