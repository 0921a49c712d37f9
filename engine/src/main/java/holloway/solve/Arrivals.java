package holloway.solve;

import java.util.Arrays;

/** The arcs that lead to each node: those to v are {@code arcs[first[v] .. first[v+1])}. */
final class Arrivals {
  final int[] first;
  final int[] arcs;

  Arrivals(Network net) {
    first = new int[net.nodes + 1];
    for (int arc : net.arcs) {
      first[net.head[arc] + 1]++;
    }
    for (int v = 0; v < net.nodes; v++) {
      first[v + 1] += first[v];
    }
    int[] next = Arrays.copyOf(first, net.nodes);
    arcs = new int[net.arcs.length];
    for (int arc : net.arcs) {
      arcs[next[net.head[arc]]++] = arc;
    }
  }
}
