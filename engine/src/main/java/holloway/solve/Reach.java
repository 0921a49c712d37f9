package holloway.solve;

import holloway.geometry.Point3;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraphView;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jgrapht.alg.connectivity.ConnectivityInspector;

/** Which ends are joined at all by what the order leaves open. */
final class Reach {
  private static final int MOST_PLACES = 5;

  private final Task task;

  /** By cable kind; one for all where each may go everywhere. */
  private final List<ConnectivityInspector<Integer, Integer>> joined = new ArrayList<>();

  Reach(Task task) {
    this.task = task;
    Network net = task.net;
    boolean[] open = passable(net);
    boolean one = net.fare.length == 0 || net.alike();
    for (long[] fare : one ? new long[][] {all(net)} : net.fare) {
      joined.add(
          new ConnectivityInspector<>(
              RouteGraphView.of(
                  net.graph,
                  net.price,
                  e -> !net.edgeShut[e] && open[e] && fare[e] < Network.SHUT)));
    }
  }

  /** An edge whose works are shut or one of whose holes has no method left leads nowhere. */
  private static boolean[] passable(Network net) {
    boolean[] out = new boolean[net.edges];
    for (int e = 0; e < net.edges; e++) {
      boolean open = IntStream.of(net.edgeWorks[e]).noneMatch(w -> net.workShut[w]);
      for (int h : net.edgeHoles[e]) {
        int[][] methods = net.methods[h];
        boolean some = methods.length == 0;
        for (int[] m : methods) {
          some |= IntStream.of(m).noneMatch(w -> net.workShut[w]);
        }
        open &= some;
      }
      out[e] = open;
    }
    return out;
  }

  /** Runs with some pair of alternatives joined, ascending. */
  int[] routable() {
    return IntStream.range(0, task.runs()).filter(this::joined).toArray();
  }

  private static long[] all(Network net) {
    return net.fare.length == 0 ? new long[net.edges] : net.fare[0];
  }

  private ConnectivityInspector<Integer, Integer> of(int run) {
    return joined.get(joined.size() == 1 ? 0 : task.demands[run].kind());
  }

  private boolean joined(int run) {
    for (int a : task.ends[task.demands[run].from()]) {
      for (int b : task.ends[task.demands[run].to()]) {
        if (of(run).pathExists(a, b)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Names of places the run gets to from its first end, nearest to its far end first. */
  List<String> nearest(int run) {
    Set<Integer> got = new TreeSet<>();
    for (int a : task.ends[task.demands[run].from()]) {
      got.addAll(of(run).connectedSetOf(a));
    }
    List<Point3> wanted =
        IntStream.of(task.ends[task.demands[run].to()])
            .mapToObj(v -> task.net.graph.nodes().get(v).at())
            .toList();
    Comparator<RouteGraph.Node> near = Comparator.comparingLong(n -> away(n, wanted));
    return got.stream()
        .map(v -> task.net.graph.nodes().get(v))
        .sorted(near.thenComparing(RouteGraph.Node::name).thenComparing(RouteGraph.Node::id))
        .limit(MOST_PLACES)
        .map(RouteGraph.Node::name)
        .toList();
  }

  private static long away(RouteGraph.Node node, List<Point3> wanted) {
    return wanted.stream().mapToLong(p -> p.distanceTo(node.at())).min().orElse(0);
  }
}
