package holloway.solve;

import java.util.Arrays;

/**
 * What is left to go, at least, from every state of a pinned search to its targets. Where a walk
 * leads into a blind hollow for its pin and out again the same way, it takes hundreds of searches
 * that each close one more arc until a path is found: what is left to go leads each of them
 * straight there, as long as the arcs that were closed when it was looked for still are. A node's
 * second state, after a pinned edge, lies as far on as there are nodes.
 */
final class LeftToGo {
  /** A search that looks at more than this part of all arcs is worth while to look anew for. */
  private static final int WORTH = 6;

  private final Network net;
  private final long[] left;
  private final NodeHeap heap;
  private final int[] targets;
  private final ShortestPaths.Lengths lengths;
  private final boolean[] pin;
  private final long[] first;
  private int[] closed;
  private long looked;
  private long looks;

  /**
   * For searches that close arcs of these lengths, and open some again; else the lengths stay.
   *
   * @param net all of whose edges are walked both ways
   */
  LeftToGo(Network net, int[] targets, ShortestPaths.Lengths lengths, boolean[] pin) {
    this.net = net;
    this.targets = targets;
    this.lengths = lengths;
    this.pin = pin;
    first = lengths.byArc().clone();
    left = new long[2 * net.nodes];
    heap = new NodeHeap(left);
  }

  boolean isOf(int[] t, ShortestPaths.Lengths l, boolean[] p) {
    return targets == t && lengths == l && pin == p;
  }

  /** Looks anew where an arc was opened again, or where the last search was led too little. */
  void refresh(long looksOfLast) {
    if (closed == null || looksOfLast > looked / WORTH || isOpenAgain()) {
      look();
    }
  }

  private boolean isOpenAgain() {
    return Arrays.stream(closed).anyMatch(arc -> lengths.byArc()[arc] < Network.SHUT);
  }

  private void look() {
    long before = looks;
    closed = closedSince();
    Arrays.fill(left, Network.SHUT);
    heap.clear();
    for (int t : targets) {
      nearer(t + net.nodes, 0);
    }
    while (!heap.isEmpty()) {
      int state = heap.pop();
      boolean after = state >= net.nodes;
      int node = after ? state - net.nodes : state;
      looks += net.first[node + 1] - net.first[node];
      for (int i = net.first[node]; i < net.first[node + 1]; i++) {
        int arc = net.arcs[i] ^ 1;
        int from = net.head[net.arcs[i]];
        long d = left[state] + lengths.of(arc);
        if (after) {
          nearer(from + net.nodes, d);
        }
        if (after == pin[arc >> 1]) {
          nearer(from, d);
        }
      }
    }
    looked = looks - before;
  }

  private int[] closedSince() {
    int n = 0;
    int[] out = new int[first.length];
    for (int arc = 0; arc < first.length; arc++) {
      if (first[arc] < Network.SHUT && lengths.byArc()[arc] >= Network.SHUT) {
        out[n++] = arc;
      }
    }
    return Arrays.copyOf(out, n);
  }

  private void nearer(int state, long d) {
    if (d < left[state]) {
      left[state] = d;
      heap.put(state);
    }
  }

  /** At least so much is left from a state; {@link Network#SHUT} where no way leads on. */
  long from(int state) {
    return left[state];
  }

  /** No way from these sources is cheaper. */
  long least(int[] sources, long[] start) {
    long out = Network.SHUT;
    for (int s : sources) {
      out = Math.min(out, start[s] + left[s]);
    }
    return out;
  }

  /** Arcs looked at since the start. */
  long looks() {
    return looks;
  }
}
