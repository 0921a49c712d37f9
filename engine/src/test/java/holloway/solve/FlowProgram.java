package holloway.solve;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import holloway.catalog.Cable;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The joint problem as a mixed-integer program: a flow of one for each run, works open where
 * something needs them, one method for each hole in use, one of the loads that fit it. Takes
 * nothing from the planner.
 */
final class FlowProgram {
  /**
   * @param optimal the search was finished
   * @param cost of the best plan found, in units; infinite if there is none
   * @param bound no plan costs less
   */
  record Answer(boolean optimal, boolean impossible, double cost, double bound) {}

  private final RouteGraph g;
  private final Order order;
  private final MPSolver solver;
  private final MPObjective objective;
  private final MPVariable[] works;
  private final Map<String, MPVariable[]> ends = new TreeMap<>();

  /** By run and arc; arc 2e walks edge e from a to b. */
  private final MPVariable[][] walks;

  private FlowProgram(RouteGraph g, Order order) {
    this.g = g;
    this.order = order;
    Loader.loadNativeLibraries();
    solver = MPSolver.createSolver("SCIP");
    objective = solver.objective();
    works = new MPVariable[g.works().size()];
    for (int w = 0; w < works.length; w++) {
      boolean counted = order.profile() == Profile.FEWEST_HOLES;
      long price =
          g.works().get(w).price() + (counted ? 10_000_000_000L * g.works().get(w).holes() : 0);
      works[w] = binary(price);
    }
    walks = new MPVariable[order.runs().size()][2 * g.edges().size()];
  }

  static Answer solve(RouteGraph g, Order order, long mostMillis) {
    FlowProgram p = new FlowProgram(g, order);
    order.runs().forEach(r -> p.end(r.from()));
    order.runs().forEach(r -> p.end(r.to()));
    for (int k = 0; k < p.walks.length; k++) {
      p.run(k);
    }
    g.holes().forEach(p::hole);
    p.solver.setTimeLimit(mostMillis);
    MPSolverParameters exact = new MPSolverParameters();
    exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    MPSolver.ResultStatus status = p.solver.solve(exact);
    boolean found =
        status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
    Answer out =
        new Answer(
            status == MPSolver.ResultStatus.OPTIMAL,
            status == MPSolver.ResultStatus.INFEASIBLE,
            found ? p.objective.value() : Double.POSITIVE_INFINITY,
            found ? p.objective.bestBound() : 0);
    p.solver.delete();
    return out;
  }

  private MPVariable binary(double price) {
    MPVariable v = solver.makeBoolVar("");
    objective.setCoefficient(v, price);
    return v;
  }

  /** All runs of one end share the alternative chosen. */
  private void end(String name) {
    if (ends.containsKey(name)) {
      return;
    }
    MPVariable[] at = new MPVariable[g.nodes().size()];
    MPConstraint one = solver.makeConstraint(1, 1);
    for (int v : g.terminals().get(name).stream().distinct().toList()) {
      at[v] = binary(0);
      one.setCoefficient(at[v], 1);
      needs(g.nodes().get(v).works(), List.of(at[v]));
    }
    ends.put(name, at);
  }

  /** Each work is open if any of these, of which at most one can be, is one. */
  private void needs(int[] needed, List<MPVariable> by) {
    for (int w : needed) {
      MPConstraint c = solver.makeConstraint(0, Double.POSITIVE_INFINITY);
      c.setCoefficient(works[w], 1);
      by.forEach(v -> c.setCoefficient(v, -1));
    }
  }

  private void run(int k) {
    boolean metres = order.profile() == Profile.SHORTEST;
    for (RouteGraph.Edge e : g.edges()) {
      String kind = order.runs().get(k).cable().kind();
      long price = e.price() + g.fares().of(kind, e) + (metres ? e.length() : 0);
      walks[k][2 * e.id()] = binary(price);
      walks[k][2 * e.id() + 1] = binary(price);
      if (g.fares().mayNot(kind, e)) {
        walks[k][2 * e.id()].setUb(0);
        walks[k][2 * e.id() + 1].setUb(0);
      }
      needs(e.works(), List.of(walks[k][2 * e.id()], walks[k][2 * e.id() + 1]));
    }
    MPVariable[] from = ends.get(order.runs().get(k).from());
    MPVariable[] to = ends.get(order.runs().get(k).to());
    for (RouteGraph.Node v : g.nodes()) {
      MPConstraint flow = solver.makeConstraint(0, 0);
      MPConstraint once = solver.makeConstraint(0, 1);
      List<MPVariable> into = new ArrayList<>();
      for (RouteGraph.Edge e : g.edges()) {
        if (e.a() == v.id() || e.b() == v.id()) {
          MPVariable in = walks[k][2 * e.id() + (e.a() == v.id() ? 1 : 0)];
          into.add(in);
          once.setCoefficient(in, 1);
          flow.setCoefficient(in, 1);
          flow.setCoefficient(walks[k][2 * e.id() + (e.a() == v.id() ? 0 : 1)], -1);
        }
      }
      end(flow, from[v.id()], 1);
      end(flow, to[v.id()], -1);
      needs(v.works(), into);
    }
  }

  private static void end(MPConstraint flow, MPVariable v, double sign) {
    if (v != null) {
      flow.setCoefficient(v, flow.getCoefficient(v) + sign);
    }
  }

  private void hole(RouteGraph.Hole h) {
    List<Cable> kinds = order.runs().stream().map(Order.Wanted::cable).distinct().toList();
    int[] most = new int[kinds.size()];
    order.runs().forEach(r -> most[kinds.indexOf(r.cable())]++);
    MPConstraint[] count = new MPConstraint[most.length];
    Arrays.setAll(count, i -> solver.makeConstraint(0, 0));
    MPConstraint oneLoad = solver.makeConstraint(1, 1);
    MPVariable[] methods = h.methods().stream().map(m -> binary(0)).toArray(MPVariable[]::new);
    for (int m = 0; m < methods.length; m++) {
      needs(h.methods().get(m).works(), List.of(methods[m]));
    }
    for (boolean flexible : new boolean[] {false, true}) {
      MPConstraint bored = solver.makeConstraint(0, Double.POSITIVE_INFINITY);
      for (int m = 0; m < methods.length; m++) {
        bored.setCoefficient(methods[m], h.methods().get(m).flexible() == flexible ? 1 : 0);
      }
      for (HoleLoads.Load load : new HoleLoads(kinds, order.profile()).of(h, flexible, most)) {
        MPVariable chosen = binary(load.extra());
        oneLoad.setCoefficient(chosen, 1);
        boolean some = methods.length > 0 && Arrays.stream(load.counts()).sum() > 0;
        bored.setCoefficient(chosen, some ? -1 : 0);
        for (int i = 0; i < most.length; i++) {
          count[i].setCoefficient(chosen, -load.counts()[i]);
        }
      }
    }
    for (int k = 0; k < walks.length; k++) {
      MPConstraint once = solver.makeConstraint(0, 1);
      MPConstraint made = solver.makeConstraint(0, Double.POSITIVE_INFINITY);
      for (RouteGraph.Edge e : g.edges()) {
        if (Arrays.stream(e.holes()).anyMatch(x -> x == h.id())) {
          for (MPVariable walk : List.of(walks[k][2 * e.id()], walks[k][2 * e.id() + 1])) {
            once.setCoefficient(walk, 1);
            made.setCoefficient(walk, -1);
            count[kinds.indexOf(order.runs().get(k).cable())].setCoefficient(walk, 1);
          }
        }
      }
      Arrays.stream(methods).forEach(m -> made.setCoefficient(m, 1));
      if (methods.length == 0) {
        made.setLb(Double.NEGATIVE_INFINITY);
      }
    }
  }
}
