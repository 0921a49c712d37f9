package holloway.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The shortest path and others nearly as short that between them walk as many different arcs as may
 * be: a search from the targets, one from the sources, then for each arc on a short enough path,
 * the shortest first, one path over it unless an earlier one walks it too.
 */
final class NearPaths {
  private final Network net;
  private final long[] toTarget;
  private final long[] fromSource;
  private final int[] onward;
  private final int[] entered;
  private final NodeHeap back;
  private final NodeHeap forth;
  private final int[] onPath;
  private final boolean[] walked;
  private final boolean[] isSource;

  /** Arcs on short enough paths: what these are longer by, then the arc in the lowest bits. */
  private final long[] order;

  private final int arcBits;

  private final Arrivals into;
  private int stamp;
  private long looks;

  NearPaths(Network net) {
    this.net = net;
    toTarget = new long[net.nodes];
    fromSource = new long[net.nodes];
    onward = new int[net.nodes];
    entered = new int[net.nodes];
    back = new NodeHeap(toTarget);
    forth = new NodeHeap(fromSource);
    onPath = new int[net.nodes];
    walked = new boolean[2 * net.edges];
    isSource = new boolean[net.nodes];
    order = new long[2 * net.edges];
    arcBits = Long.SIZE - Long.numberOfLeadingZeros(2L * net.edges);
    into = new Arrivals(net);
  }

  /** Arcs looked at since the start. */
  long looks() {
    return looks;
  }

  /**
   * @param start price of starting at a source, by node
   * @param lengths price of walking an arc, {@link Network#SHUT} or more if it is closed
   * @param slack how much longer than the shortest a path may be
   * @param most number of paths besides the shortest
   * @return the shortest first; none if there is no path
   */
  List<Path> find(
      int[] sources, long[] start, int[] targets, long[] lengths, long slack, int most) {
    mark(sources, true);
    searchBack(targets, start, lengths, slack);
    mark(sources, false);
    int first = -1;
    for (int s : sources) {
      if (start[s] < Network.SHUT
          && (first < 0 || start[s] + toTarget[s] < start[first] + toTarget[first])) {
        first = s;
      }
    }
    if (first < 0 || start[first] + toTarget[first] >= Network.SHUT) {
      return List.of();
    }
    List<Path> out = new ArrayList<>();
    out.add(follow(new IntList(), first, start[first], lengths));
    if (most > 0) {
      long limit = out.get(0).price() + Math.min(slack, Long.MAX_VALUE >> arcBits);
      searchForth(sources, start, lengths, limit);
      others(out, start, lengths, limit, most);
    }
    return out;
  }

  private void mark(int[] sources, boolean on) {
    for (int s : sources) {
      isSource[s] = on;
    }
  }

  private void searchBack(int[] targets, long[] start, long[] lengths, long slack) {
    Arrays.fill(toTarget, Network.SHUT);
    back.clear();
    for (int t : targets) {
      toTarget[t] = 0;
      onward[t] = -1;
      back.put(t);
    }
    long limit = Network.SHUT;
    while (!back.isEmpty()) {
      int v = back.pop();
      if (toTarget[v] > limit) {
        return;
      }
      if (isSource[v] && start[v] < Network.SHUT) {
        limit = Math.min(limit, toTarget[v] + start[v] + slack);
      }
      looks += into.first[v + 1] - into.first[v];
      for (int i = into.first[v]; i < into.first[v + 1]; i++) {
        int arc = into.arcs[i];
        int u = net.tail(arc);
        long d = toTarget[v] + lengths[arc];
        if (d < toTarget[u]) {
          toTarget[u] = d;
          onward[u] = arc;
          back.put(u);
        }
      }
    }
  }

  private void searchForth(int[] sources, long[] start, long[] lengths, long limit) {
    Arrays.fill(fromSource, Network.SHUT);
    forth.clear();
    for (int s : sources) {
      if (start[s] + toTarget[s] <= limit) {
        fromSource[s] = start[s];
        entered[s] = -1;
        forth.put(s);
      }
    }
    while (!forth.isEmpty()) {
      int u = forth.pop();
      looks += net.first[u + 1] - net.first[u];
      for (int i = net.first[u]; i < net.first[u + 1]; i++) {
        int arc = net.arcs[i];
        int v = net.head[arc];
        long d = fromSource[u] + lengths[arc];
        if (d < fromSource[v] && d + toTarget[v] <= limit) {
          fromSource[v] = d;
          entered[v] = arc;
          forth.put(v);
        }
      }
    }
  }

  private void others(List<Path> out, long[] start, long[] lengths, long limit, int most) {
    int count = listNear(lengths, out.get(0).price(), limit);
    long arcMask = (1L << arcBits) - 1;
    mark(out.get(0), true);
    for (int i = 0; i < count && out.size() <= most; i++) {
      int arc = (int) (order[i] & arcMask);
      if (!walked[arc]) {
        Path p = over(arc, start, lengths);
        if (p != null) {
          out.add(p);
          mark(p, true);
        }
        walked[arc] = true;
      }
    }
    for (int i = 0; i < count; i++) {
      walked[(int) (order[i] & arcMask)] = false;
    }
    out.forEach(p -> mark(p, false));
  }

  /** Puts the arcs of paths within the limit in order; how many there are. */
  private int listNear(long[] lengths, long shortest, long limit) {
    int count = 0;
    for (int u = 0; u < net.nodes; u++) {
      for (int i = net.first[u]; fromSource[u] < Network.SHUT && i < net.first[u + 1]; i++) {
        int arc = net.arcs[i];
        long sum = fromSource[u] + lengths[arc] + toTarget[net.head[arc]];
        if (sum <= limit) {
          order[count++] = sum - shortest << arcBits | arc;
        }
      }
    }
    Arrays.sort(order, 0, count);
    return count;
  }

  private void mark(Path p, boolean value) {
    for (int arc : p.arcs()) {
      walked[arc] = value;
    }
  }

  /** The shortest walk over the arc, or null if it meets a node twice. */
  private Path over(int arc, long[] start, long[] lengths) {
    IntList reversed = new IntList();
    int v = net.tail(arc);
    while (entered[v] >= 0) {
      reversed.add(entered[v]);
      v = net.tail(entered[v]);
    }
    IntList arcs = new IntList();
    for (int i = reversed.size() - 1; i >= 0; i--) {
      arcs.add(reversed.get(i));
    }
    arcs.add(arc);
    Path p = follow(arcs, v, start[v], lengths);
    stamp++;
    onPath[p.start()] = stamp;
    for (int a : p.arcs()) {
      if (onPath[net.head[a]] == stamp) {
        return null;
      }
      onPath[net.head[a]] = stamp;
    }
    return p;
  }

  /** Goes on from the last arc to the nearest target. */
  private Path follow(IntList arcs, int from, long startPrice, long[] lengths) {
    int v = from;
    long price = startPrice;
    for (int i = 0; i < arcs.size(); i++) {
      price += lengths[arcs.get(i)];
      v = net.head[arcs.get(i)];
    }
    price += toTarget[v];
    while (onward[v] >= 0) {
      arcs.add(onward[v]);
      v = net.head[onward[v]];
    }
    return new Path(from, arcs.toArray(), price);
  }
}
