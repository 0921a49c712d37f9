package holloway.bench;

import holloway.framing.Framed;
import holloway.framing.Framing;
import holloway.hollow.Hollows;
import holloway.plan.Plan;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraphView;
import holloway.routing.Routing;
import holloway.solve.Budget;
import holloway.solve.JointPlanner;
import holloway.solve.Order;
import holloway.support.LargeHouse;
import holloway.support.StagedPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.BidirectionalDijkstraShortestPath;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The stages of a plan at three sizes of house, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class HouseBenchmark {
  @Param({"SMALL", "MEDIUM", "LARGE"})
  LargeHouse.Size size;

  private StagedPlan staged;
  private Graph<Integer, Integer> view;
  private Order order;
  private int from;
  private int to;

  /** Plans the house once and lets the referee look at it before anything is timed. */
  @Setup
  public void plan() throws IOException {
    Path file = Files.createTempFile("large", ".yaml");
    file.toFile().deleteOnExit();
    staged = new StagedPlan(Files.writeString(file, LargeHouse.text(size, 1)));
    order = staged.order();
    Plan plan = jointPlan();
    if (plan.runs().size() != size.runs() || !staged.refusals(plan).isEmpty()) {
      throw new IllegalStateException("the plan of the house does not stand");
    }
    RouteGraph graph = staged.routed.graph();
    view = RouteGraphView.of(graph);
    Order.Wanted last = order.runs().get(order.runs().size() - 1);
    from = graph.terminals().get(last.from()).get(0);
    to = graph.terminals().get(last.to()).get(0);
  }

  @Benchmark
  public Framed framing() {
    return Framing.of(staged.placed);
  }

  @Benchmark
  public RouteGraph hollowsAndGraph() {
    var hollows = Hollows.of(staged.framed, staged.ends.interests());
    return Routing.of(hollows, staged.ends, staged.request).graph();
  }

  /** The cheapest travel of one run, works left out. */
  @Benchmark
  public double singleQuery() {
    return new BidirectionalDijkstraShortestPath<>(view).getPathWeight(from, to);
  }

  /** At quick effort, with its proof. */
  @Benchmark
  public Plan jointPlan() {
    return JointPlanner.solve(staged.routed.graph(), order, Budget.QUICK, (what, done, of) -> {})
        .plan();
  }
}
