package holloway.solve;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * Reverse lists: the edges that pass a hole, the edges whose price a work can change, the places of
 * a work.
 */
final class Index {
  private static final int[] NONE = {};

  private Index() {}

  static int[][] edgesByHole(Network net) {
    return reverse(net.methods.length, net.edgeHoles, net.edgeShut);
  }

  /**
   * The edges whose price a work can change: those that need it themselves, at an end or at a hole.
   * Few works are ever asked for, and each is looked for once. May be used on several threads.
   */
  static final class WorkPlaces {
    private final Network net;
    private final int[][] nodes;
    private final int[][] ofEdges;
    private final int[][] holes;
    private final AtomicReferenceArray<int[]> known;

    WorkPlaces(Network net) {
      this.net = net;
      int works = net.workPrice.length;
      nodes = reverse(works, net.nodeWorks, new boolean[net.nodes]);
      ofEdges = reverse(works, net.edgeWorks, net.edgeShut);
      holes = reverse(works, net.holeWorks, new boolean[net.methods.length]);
      known = new AtomicReferenceArray<>(works);
    }

    /** Ascending, each once. */
    int[] edges(int work) {
      int[] was = known.get(work);
      if (was == null) {
        was = look(work);
        known.set(work, was);
      }
      return was;
    }

    private int[] look(int work) {
      IntStream.Builder all = IntStream.builder();
      each(ofEdges[work], all);
      for (int node : nodes[work]) {
        each(net.edgesAt(node), all);
      }
      for (int hole : holes[work]) {
        each(net.holeEdges[hole], all);
      }
      return all.build().sorted().distinct().toArray();
    }
  }

  /** By work: how many nodes, edges and holes need it. */
  static int[] placesOfWorks(Network net) {
    int[] out = new int[net.workPrice.length];
    for (int[][] places : new int[][][] {net.nodeWorks, net.edgeWorks, net.holeWorks}) {
      for (int[] works : places) {
        for (int w : works) {
          out[w]++;
        }
      }
    }
    return out;
  }

  /** By hole: the works of all its methods, each once. */
  static int[][] worksOfHoles(Network net) {
    int[][] out = new int[net.methods.length][];
    for (int h = 0; h < out.length; h++) {
      int n = 0;
      int most = 0;
      for (int[] m : net.methods[h]) {
        most += m.length;
      }
      int[] all = new int[most];
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

  /**
   * By key: the members that name it, ascending and each once.
   *
   * @param keys by member
   * @param not members that do not count
   */
  private static int[][] reverse(int count, int[][] keys, boolean[] not) {
    int[] size = new int[count];
    for (int m = 0; m < keys.length; m++) {
      for (int key : not[m] ? NONE : keys[m]) {
        size[key]++;
      }
    }
    int[][] out = new int[count][];
    for (int k = 0; k < count; k++) {
      out[k] = size[k] == 0 ? NONE : new int[size[k]];
      size[k] = 0;
    }
    for (int m = 0; m < keys.length; m++) {
      for (int key : not[m] ? NONE : keys[m]) {
        if (size[key] == 0 || out[key][size[key] - 1] != m) {
          out[key][size[key]++] = m;
        }
      }
    }
    for (int k = 0; k < count; k++) {
      out[k] = size[k] == out[k].length ? out[k] : Arrays.copyOf(out[k], size[k]);
    }
    return out;
  }
}
