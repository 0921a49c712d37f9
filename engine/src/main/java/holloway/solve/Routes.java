package holloway.solve;

import holloway.plan.Plan;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Several really different routes of one run, each planned as if it were the only one. Routes
 * differ if they go through other hollows, where the bays of one wall count as one.
 */
public final class Routes {
  private static final int TRIES = 6;

  /**
   * A route, cheapest first in a list.
   *
   * @param through the hollows in order, bays of one wall as one: kind and owner
   * @param price units of the profile
   * @param minutes work and fishing
   * @param metres along the cable
   * @param plan the run alone
   */
  public record Route(
      List<String> through, long price, double minutes, int holes, double metres, Plan plan) {}

  private final Task task;
  private final Zones zones;
  private final Draft draft;
  private final MarginalSearch search;
  private final ZoneSubsets subsets;
  private final long[] penalty;

  private Routes(RouteGraph graph, Order order) {
    task = new Task(graph, order);
    zones = new Zones(task.net);
    draft = new Draft(task, zones);
    penalty = new long[task.net.edges];
    search = new MarginalSearch(draft, zones);
    search.penalise(penalty);
    subsets = new ZoneSubsets(draft, zones, search);
  }

  /** At most {@code howMany} routes of the run with this id; empty if it has none. */
  public static List<Route> of(RouteGraph graph, Order order, String run, int howMany) {
    List<Order.Wanted> one = order.runs().stream().filter(w -> w.id().equals(run)).toList();
    if (one.isEmpty()) {
      throw new IllegalArgumentException("no run " + run + " in the order");
    }
    return new Routes(graph, order.withRuns(one)).find(howMany);
  }

  private List<Route> find(int howMany) {
    Map<List<String>, Route> found = new TreeMap<>(Comparator.comparing(Object::toString));
    for (int i = 0; i < TRIES * howMany && found.size() < 2 * howMany; i++) {
      Solution s = cheapest();
      if (s == null) {
        break;
      }
      draft.load(s);
      new MethodChoice(draft).improve();
      new MethodsExact(draft).settle();
      Route r = route();
      found.merge(r.through(), r, (a, b) -> b.price() < a.price() ? b : a);
      penalise(s.paths()[0], Math.max(1, s.price()));
    }
    return found.values().stream()
        .sorted(Comparator.comparingLong(Route::price).thenComparing(r -> r.through().toString()))
        .limit(howMany)
        .toList();
  }

  /** The best over the sets of zones, penalties counted. */
  private Solution cheapest() {
    Solution best = null;
    long least = Long.MAX_VALUE;
    for (int mask = 0; mask < subsets.sets(); mask++) {
      subsets.enter(mask, true);
      Path p = search.find(0);
      if (p != null) {
        draft.add(0, p);
        long price = draft.price();
        for (int arc : p.arcs()) {
          price = Math.addExact(price, penalty[arc >> 1]);
        }
        if (price < least) {
          least = price;
          best = draft.save();
        }
      }
    }
    draft.clear();
    return best;
  }

  /** What passes a used hole or lies in a used hollow gets dearer, so that others come forward. */
  private void penalise(Path path, long price) {
    Set<String> owners = new HashSet<>();
    Set<Integer> holes = new HashSet<>();
    for (int arc : path.arcs()) {
      RouteGraph.Edge e = task.net.graph.edges().get(arc >> 1);
      owners.addAll(HollowNames.of(e, false));
      for (int h : e.holes()) {
        holes.add(h);
      }
    }
    for (RouteGraph.Edge e : task.net.graph.edges()) {
      int shared = 0;
      for (int h : e.holes()) {
        shared += holes.contains(h) ? 2 : 0;
      }
      for (String owner : HollowNames.of(e, false)) {
        shared += owners.contains(owner) ? 1 : 0;
      }
      penalty[e.id()] = Math.addExact(penalty[e.id()], price / 20 * shared);
    }
  }

  private Route route() {
    List<String> through = new ArrayList<>();
    for (int arc : draft.paths[0].arcs()) {
      RouteGraph.Edge e = task.net.graph.edges().get(arc >> 1);
      for (String name : HollowNames.of(e, (arc & 1) == 1)) {
        if (through.isEmpty() || !through.get(through.size() - 1).equals(name)) {
          through.add(name);
        }
      }
    }
    Plan plan = new PlanWriter(draft).write(0, false);
    Plan.Totals t = plan.totals();
    return new Route(List.copyOf(through), t.objective(), t.minutes(), t.holes(), t.routeM(), plan);
  }
}
