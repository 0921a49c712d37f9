package holloway.solve;

import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** A series of changes to a live plan, each named, and what warm and cold answers take and cost. */
final class LiveChanges {
  /** One change; prices on the profile's scale, times in milliseconds of the clock. */
  record Step(
      String name,
      Solved warm,
      Solved cold,
      Optional<String> refused,
      boolean fromNothing,
      double warmMs,
      double coldMs) {}

  private final Budget budget;
  private final List<Step> steps = new ArrayList<>();
  private LivePlan live;

  LiveChanges(RouteGraph graph, Order order, Budget budget) {
    this.budget = budget;
    live = LivePlan.of(graph, order, budget, Progress.SILENT);
  }

  LivePlan live() {
    return live;
  }

  List<Step> steps() {
    return steps;
  }

  RouteGraph graph() {
    return live.graph();
  }

  void take(String name, UnaryOperator<LivePlan> change) {
    long t0 = System.nanoTime();
    LivePlan next = change.apply(live);
    long t1 = System.nanoTime();
    Solved cold = JointPlanner.solve(next.graph(), next.order(), budget, Progress.SILENT);
    long t2 = System.nanoTime();
    live = next;
    Optional<String> refused = Certified.check(next.graph(), next.order(), next.solved()).refusal();
    steps.add(
        new Step(
            name,
            next.solved(),
            cold,
            refused,
            next.isFromNothing(),
            (t1 - t0) / 1e6,
            (t2 - t1) / 1e6));
  }

  /** Every kind of change that needs no other graph, and one dearer graph; the last is an undo. */
  void series() {
    LivePlan first = live;
    String hole = live.solved().plan().holes().stream().map(h -> h.id()).findFirst().orElse("none");
    take("forbid a hole", l -> l.forbid(hole, Progress.SILENT));
    String hollow = busiest();
    take("forbid a hollow", l -> l.forbid(hollow, Progress.SILENT));
    take("allow the hole", l -> l.allow(hole, Progress.SILENT));
    Order.Wanted last = live.order().runs().get(live.order().runs().size() - 1);
    take("drop a run", l -> l.drop(last.id(), Progress.SILENT));
    take("add it", l -> l.add(last, Progress.SILENT));
    take("allow the hollow", l -> l.allow(hollow, Progress.SILENT));
    take("move an outlet", l -> l.on(moved(l.graph(), last.to()), Progress.SILENT));
    take("dearer holes", l -> l.on(dearer(l.graph(), 5, 4), Progress.SILENT));
    take("undo all", l -> l.ask(first.graph(), first.order(), Progress.SILENT));
  }

  /** Three changes and back. */
  void few() {
    LivePlan first = live;
    String hole = live.solved().plan().holes().stream().map(h -> h.id()).findFirst().orElse("none");
    take("forbid a hole", l -> l.forbid(hole, Progress.SILENT));
    String last = live.order().runs().get(live.order().runs().size() - 1).id();
    take("drop a run", l -> l.drop(last, Progress.SILENT));
    take("dearer holes", l -> l.on(dearer(l.graph(), 5, 4), Progress.SILENT));
    take("undo all", l -> l.ask(first.graph(), first.order(), Progress.SILENT));
  }

  /** The hollow that most legs of the plan lie in, rooms left out; the first by name of equals. */
  private String busiest() {
    TreeMap<String, Integer> legs = new TreeMap<>();
    live.solved()
        .plan()
        .runs()
        .forEach(
            r -> r.steps().forEach(s -> s.hollow().ifPresent(h -> legs.merge(h, 1, Integer::sum))));
    legs.keySet().removeIf(h -> h.startsWith("room"));
    String best = legs.isEmpty() ? "none" : legs.firstKey();
    for (String name : legs.keySet()) {
      best = legs.get(name) > legs.get(best) ? name : best;
    }
    return best;
  }

  /** The end stands where some edge leads from where it stood, as if built anew. */
  private static RouteGraph moved(RouteGraph g, String end) {
    TreeMap<String, List<Integer>> ends = new TreeMap<>(g.terminals());
    int at = ends.get(end).get(0);
    int to =
        g.edges().stream()
            .filter(e -> e.a() == at || e.b() == at)
            .mapToInt(e -> e.other(at))
            .findFirst()
            .orElse(at);
    ends.put(end, List.of(to));
    return new RouteGraph(g.nodes(), g.edges(), g.holes(), g.works(), ends);
  }

  /** Every second work costs more. */
  private static RouteGraph dearer(RouteGraph g, long times, long over) {
    List<RouteGraph.Work> works = new ArrayList<>();
    for (RouteGraph.Work w : g.works()) {
      long price = w.id() % 2 == 0 ? w.price() * times / over : w.price();
      works.add(
          new RouteGraph.Work(w.id(), w.name(), w.kind(), price, w.holes(), w.patches(), w.zone()));
    }
    return new RouteGraph(g.nodes(), g.edges(), g.holes(), works, g.terminals());
  }
}
