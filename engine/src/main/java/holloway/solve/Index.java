package holloway.solve;

import java.util.Arrays;
import java.util.function.IntConsumer;

/**
 * Reverse lists: the edges that pass a hole, the edges whose price a work can change, the places of
 * a work.
 */
final class Index {
  private Index() {}

  static int[][] edgesByHole(Network net) {
    return collect(
        net.methods.length,
        net.edges,
        (e, sink) -> {
          for (int h : net.edgeHoles[e]) {
            sink.accept(h);
          }
        },
        net.edgeShut);
  }

  static int[][] edgesByWork(Network net) {
    return collect(
        net.workPrice.length, net.edges, (e, sink) -> worksNear(net, e, sink), net.edgeShut);
  }

  /** By work: how many nodes, edges and holes need it. */
  static int[] placesOfWorks(Network net) {
    int[] out = new int[net.workPrice.length];
    IntConsumer count = w -> out[w]++;
    Arrays.stream(net.nodeWorks).forEach(works -> each(works, count));
    Arrays.stream(net.edgeWorks).forEach(works -> each(works, count));
    for (int[][] methods : net.methods) {
      Arrays.stream(methods).flatMapToInt(Arrays::stream).distinct().forEach(count);
    }
    return out;
  }

  /** Every work of the edge, its ends and its holes; some come more than once. */
  private static void worksNear(Network net, int e, IntConsumer sink) {
    each(net.edgeWorks[e], sink);
    each(net.nodeWorks[net.head[2 * e]], sink);
    each(net.nodeWorks[net.head[2 * e + 1]], sink);
    for (int h : net.edgeHoles[e]) {
      for (int[] m : net.methods[h]) {
        each(m, sink);
      }
    }
  }

  private static void each(int[] values, IntConsumer sink) {
    for (int v : values) {
      sink.accept(v);
    }
  }

  private interface Members {
    void of(int edge, IntConsumer sink);
  }

  private static int[][] collect(int keys, int edges, Members members, boolean[] shut) {
    int[][] out = new int[keys][4];
    int[] size = new int[keys];
    for (int e = 0; e < edges; e++) {
      if (shut[e]) {
        continue;
      }
      int edge = e;
      members.of(
          e,
          key -> {
            if (size[key] > 0 && out[key][size[key] - 1] == edge) {
              return;
            }
            if (size[key] == out[key].length) {
              out[key] = Arrays.copyOf(out[key], 2 * size[key]);
            }
            out[key][size[key]++] = edge;
          });
    }
    for (int k = 0; k < keys; k++) {
      out[k] = Arrays.copyOf(out[k], size[k]);
    }
    return out;
  }
}
