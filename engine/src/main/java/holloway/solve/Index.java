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
    int[][] ofHole = worksOfHoles(net);
    return collect(
        net.workPrice.length,
        net.edges,
        (e, sink) -> worksNear(net, ofHole, e, sink),
        net.edgeShut);
  }

  /** By work: how many nodes, edges and holes need it. */
  static int[] placesOfWorks(Network net) {
    int[] out = new int[net.workPrice.length];
    IntConsumer count = w -> out[w]++;
    Arrays.stream(net.nodeWorks).forEach(works -> each(works, count));
    Arrays.stream(net.edgeWorks).forEach(works -> each(works, count));
    for (int[] works : worksOfHoles(net)) {
      each(works, count);
    }
    return out;
  }

  /** Every work of the edge, its ends and its holes; some come more than once. */
  private static void worksNear(Network net, int[][] ofHole, int e, IntConsumer sink) {
    each(net.edgeWorks[e], sink);
    each(net.nodeWorks[net.head[2 * e]], sink);
    each(net.nodeWorks[net.head[2 * e + 1]], sink);
    for (int h : net.edgeHoles[e]) {
      each(ofHole[h], sink);
    }
  }

  /** By hole: the works of all its methods, each once. */
  private static int[][] worksOfHoles(Network net) {
    int[][] out = new int[net.methods.length][];
    for (int h = 0; h < out.length; h++) {
      int n = 0;
      int[] all = new int[Arrays.stream(net.methods[h]).mapToInt(m -> m.length).sum()];
      for (int[] m : net.methods[h]) {
        for (int w : m) {
          boolean there = false;
          for (int i = 0; i < n; i++) {
            there |= all[i] == w;
          }
          if (!there) {
            all[n++] = w;
          }
        }
      }
      out[h] = Arrays.copyOf(all, n);
    }
    return out;
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
