package holloway.solve;

import holloway.hollow.Way;
import holloway.plan.Plan;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The best plan of each way of working: everything allowed, each way alone, each way left out. A
 * way alone shuts whatever needs another way; what needs no way at all stays open to all.
 */
public final class Compare {
  /**
   * One plan.
   *
   * @param names what was allowed: {@code everything}, {@code only attic}, {@code without attic},
   *     …; several where they lead to the same plan
   * @param unrouted how many runs have no route this way
   */
  public record Line(List<String> names, Plan plan, int unrouted) {
    public Plan.Totals totals() {
      return plan.totals();
    }
  }

  private final RouteGraph graph;
  private final Order order;
  private final Budget budget;
  private final Progress progress;
  private final List<Line> lines = new ArrayList<>();

  private Compare(RouteGraph graph, Order order, Budget budget, Progress progress) {
    this.graph = graph;
    this.order = order;
    this.budget = budget;
    this.progress = progress;
  }

  /** Lines in a fixed order, the one with everything first. */
  public static List<Line> of(RouteGraph graph, Order order, Budget budget, Progress progress) {
    return new Compare(graph, order, budget, progress).lines();
  }

  private List<Line> lines() {
    Solved all = JointPlanner.solve(graph, order, budget, progress);
    add("everything", all);
    Set<Way> present = waysOf(graph);
    for (Way w : Way.values()) {
      if (present.contains(w)) {
        List<String> others = new ArrayList<>();
        for (Way o : Way.values()) {
          if (o != w) {
            others.add(o.word());
          }
        }
        add("only " + w.word(), solve(others));
      }
    }
    for (Way w : Way.values()) {
      if (present.contains(w)) {
        // a plan that does not use the way is also the best of those without it
        boolean unused = (all.ways() & w.bit()) == 0;
        add("without " + w.word(), unused ? all : solve(List.of(w.word())));
      }
    }
    return List.copyOf(lines);
  }

  private Solved solve(List<String> bans) {
    return JointPlanner.solve(graph, order.withBans(bans), budget, progress);
  }

  /** The ways that something of this house needs; shutting another changes nothing. */
  public static Set<Way> waysOf(RouteGraph graph) {
    int bits = 0;
    for (RouteGraph.Edge e : graph.edges()) {
      bits |= e.ways();
    }
    for (RouteGraph.Hole h : graph.holes()) {
      bits |= h.ways();
    }
    for (RouteGraph.Work w : graph.works()) {
      bits |= w.zone().isEmpty() ? 0 : Bans.wayOf(w);
    }
    Set<Way> out = EnumSet.noneOf(Way.class);
    for (Way w : Way.values()) {
      if ((bits & w.bit()) != 0) {
        out.add(w);
      }
    }
    return out;
  }

  /** A second name for a known plan joins its line; the bound is the one of the first name. */
  private void add(String name, Solved solved) {
    Plan plan = solved.plan();
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      if (line.plan().runs().equals(plan.runs())
          && line.plan().holes().equals(plan.holes())
          && line.plan().unrouted().equals(plan.unrouted())) {
        List<String> names = new ArrayList<>(line.names());
        names.add(name);
        lines.set(i, new Line(List.copyOf(names), line.plan(), line.unrouted()));
        return;
      }
    }
    lines.add(new Line(List.of(name), plan, plan.unrouted().size()));
  }
}
