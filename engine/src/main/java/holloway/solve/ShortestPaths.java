package holloway.solve;

import java.util.Arrays;

/**
 * Dijkstra's algorithm over arrays: nodes settle in order of distance, equal distances in a fixed
 * order. With a pin every node has two states, before and after a pinned edge; the search then ends
 * in the second.
 */
final class ShortestPaths {
  /**
   * Price of walking an arc, {@link Network#SHUT} or more if it is closed: what is listed by arc
   * and, unless null, by edge.
   */
  record Lengths(long[] byArc, long[] byEdge) {
    long of(int arc) {
      return byArc[arc] + (byEdge == null ? 0 : byEdge[arc >> 1]);
    }
  }

  private final Network net;
  private final long[] distance;
  private final int[] entered;
  private final NodeHeap heap;

  /** By node: whether the search ends there. */
  private final boolean[] target;

  private long looks;

  /** A pinned search that is asked again with arcs closed is led by what is left to go. */
  private LeftToGo left;

  private long looksOfLast;

  /** No state is followed from which the way would cost more. */
  private long most = Network.SHUT;

  ShortestPaths(Network net) {
    this.net = net;
    int states = 2 * net.nodes;
    distance = new long[states];
    entered = new int[states];
    heap = new NodeHeap(distance);
    target = new boolean[net.nodes];
  }

  /**
   * The cheapest way from any source to any target, or null. The same lengths may be asked of again
   * after arcs were closed, and after such arcs were opened again; else they stay as they are.
   *
   * @param start price of starting at a source, by node
   * @param pin edges of which one must be used, or null
   */
  Path find(int[] sources, long[] start, int[] targets, Lengths lengths, boolean[] pin) {
    long before = looks;
    Path out =
        isAskedAgain(targets, lengths, pin)
            ? led(sources, start, targets, lengths, pin)
            : search(sources, start, targets, lengths, pin);
    looksOfLast = looks - before;
    return out;
  }

  private boolean isAskedAgain(int[] targets, Lengths lengths, boolean[] pin) {
    if (pin == null || net.oneWay) {
      return false;
    }
    boolean again = left != null && left.isOf(targets, lengths, pin);
    if (!again) {
      looks += left == null ? 0 : left.looks();
      left = new LeftToGo(net, targets, lengths, pin);
    }
    return again;
  }

  /**
   * The same as an open search: every state of a way that costs as little lies within the bound,
   * and in the same order. Where none does, the bound was too low.
   */
  private Path led(int[] sources, long[] start, int[] targets, Lengths lengths, boolean[] pin) {
    left.refresh(looksOfLast);
    long least = left.least(sources, start);
    for (long more = least / 64 + 1; least < Network.SHUT; more *= 4) {
      most = Math.min(Network.SHUT, least + more);
      Path p = search(sources, start, targets, lengths, pin);
      if (p != null || most == Network.SHUT) {
        most = Network.SHUT;
        return p;
      }
    }
    return null;
  }

  private Path search(int[] sources, long[] start, int[] targets, Lengths lengths, boolean[] pin) {
    Arrays.fill(distance, Network.SHUT);
    heap.clear();
    for (int s : sources) {
      if (start[s] < distance[s]) {
        reach(s, start[s], -1);
      }
    }
    mark(targets, true);
    int last = search(pin == null ? 0 : net.nodes, lengths, pin);
    mark(targets, false);
    return last < 0 ? null : trace(last);
  }

  private void mark(int[] targets, boolean on) {
    for (int t : targets) {
      target[t] = on;
    }
  }

  /** The first target met in a state from this one on, −1 if there is none. */
  private int search(int shift, Lengths lengths, boolean[] pin) {
    while (!heap.isEmpty()) {
      int state = heap.pop();
      int node = state >= net.nodes ? state - net.nodes : state;
      if (state >= shift && target[node]) {
        return state;
      }
      relax(state, node, lengths, pin);
    }
    return -1;
  }

  private void relax(int state, int node, Lengths lengths, boolean[] pin) {
    long base = distance[state];
    int end = net.first[node + 1];
    long[] byArc = lengths.byArc();
    long[] byEdge = lengths.byEdge();
    looks += end - net.first[node];
    for (int i = net.first[node]; i < end; i++) {
      int arc = net.arcs[i];
      long d = base + byArc[arc] + (byEdge == null ? 0 : byEdge[arc >> 1]);
      int next = net.head[arc];
      if (pin != null && (state >= net.nodes || pin[arc >> 1])) {
        next += net.nodes;
      }
      if (d < distance[next] && (most == Network.SHUT || d + left.from(next) <= most)) {
        reach(next, d, state >= net.nodes ? ~arc - 1 : arc);
      }
    }
  }

  private void reach(int state, long d, int arc) {
    distance[state] = d;
    entered[state] = arc;
    heap.put(state);
  }

  private Path trace(int state) {
    int count = 0;
    for (int s = state; entered[s] != -1; s = previous(s)) {
      count++;
    }
    int[] arcs = new int[count];
    int s = state;
    while (entered[s] != -1) {
      arcs[--count] = arcOf(entered[s]);
      s = previous(s);
    }
    return new Path(s, arcs, distance[state]);
  }

  /** An arc walked in the second state is kept as its complement less one. */
  private static int arcOf(int entered) {
    return entered >= 0 ? entered : ~(entered + 1);
  }

  private int previous(int state) {
    int tail = net.tail(arcOf(entered[state]));
    return entered[state] >= 0 ? tail : tail + net.nodes;
  }

  /** After a search: the price of reaching a node, {@link Network#SHUT} or more if not reached. */
  long distanceTo(int node) {
    return Math.min(distance[node], distance[node + net.nodes]);
  }

  /** Arcs looked at since the start. */
  long looks() {
    return looks + (left == null ? 0 : left.looks());
  }
}
