package holloway.solve;

import holloway.catalog.Cable;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** An order laid over a network: ends, cable kinds and runs as indices. */
final class Task {
  final Network net;
  final Order order;
  final Capacity capacity;
  final Demand[] demands;

  /** Node alternatives of each end, ascending. */
  final int[][] ends;

  private final List<String> endNames;

  Task(RouteGraph graph, Order order) {
    this.order = order;
    List<Cable> kinds =
        order.runs().stream()
            .map(Order.Wanted::cable)
            .distinct()
            .sorted(Comparator.comparing(Cable::kind))
            .toList();
    net = new Network(graph, order.profile(), order.bans(), kinds);
    capacity = new Capacity(net, kinds);
    TreeSet<String> names = new TreeSet<>();
    order.runs().forEach(r -> names.addAll(List.of(r.from(), r.to())));
    endNames = new ArrayList<>(names);
    ends = endNames.stream().map(n -> alternatives(graph, n)).toArray(int[][]::new);
    Map<String, boolean[]> pinned = new HashMap<>();
    demands = new Demand[order.runs().size()];
    for (int k = 0; k < demands.length; k++) {
      Order.Wanted w = order.runs().get(k);
      String pin = order.pins().get(w.id());
      demands[k] =
          new Demand(
              endNames.indexOf(w.from()),
              endNames.indexOf(w.to()),
              kinds.indexOf(w.cable()),
              pin == null ? null : pinned.computeIfAbsent(pin, net::touching));
    }
  }

  private static int[] alternatives(RouteGraph graph, String end) {
    return graph.terminals().getOrDefault(end, List.of()).stream()
        .mapToInt(Integer::intValue)
        .sorted()
        .distinct()
        .toArray();
  }

  int runs() {
    return demands.length;
  }
}
