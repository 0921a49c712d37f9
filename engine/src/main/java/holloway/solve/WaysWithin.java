package holloway.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Every valid path from one end to another that is not longer than a limit: depth first, turning
 * back where even the shortest way on is too long.
 */
final class WaysWithin {
  /** What is asked: lengths are {@link Network#SHUT} or more where an arc or a start is closed. */
  record Wanted(int[] sources, long[] start, int[] targets, long[] lengths, boolean[] pin) {}

  /** What keeping a path counts for besides its arcs: memory is short before time is. */
  private static final int KEEPING = 8;

  private final Network net;
  private final Arrivals into;
  private final long[] rest;
  private final NodeHeap heap;
  private final boolean[] onPath;
  private final boolean[] passed;
  private final boolean[] target;
  private final IntList arcs = new IntList();
  private Wanted wanted;
  private Effort effort;
  private long limit;
  private int from;
  private List<Path> found;

  WaysWithin(Network net) {
    this.net = net;
    into = new Arrivals(net);
    rest = new long[net.nodes];
    heap = new NodeHeap(rest);
    onPath = new boolean[net.nodes];
    passed = new boolean[net.methods.length];
    target = new boolean[net.nodes];
  }

  /** The length of the shortest walk, {@link Network#SHUT} or more if there is none. */
  long least(Wanted asked) {
    wanted = asked;
    searchBack();
    long least = Network.SHUT;
    for (int s : asked.sources()) {
      least = Math.min(least, asked.start()[s] + rest[s]);
    }
    return least;
  }

  /**
   * The shortest first; not all of them where the effort is over.
   *
   * @param longest below {@link Network#SHUT}
   */
  List<Path> find(Wanted asked, long longest, Effort steps) {
    wanted = asked;
    limit = longest;
    effort = steps;
    found = new ArrayList<>();
    searchBack();
    for (int t : asked.targets()) {
      target[t] = true;
    }
    for (int s : asked.sources()) {
      if (asked.start()[s] + rest[s] <= limit) {
        from = s;
        onPath[s] = true;
        walk(s, asked.start()[s], asked.pin() == null);
        onPath[s] = false;
      }
    }
    for (int t : asked.targets()) {
      target[t] = false;
    }
    found.sort(Comparator.comparingLong(Path::price));
    return found;
  }

  private void walk(int at, long length, boolean pinned) {
    if (pinned && target[at]) {
      found.add(new Path(from, arcs.toArray(), length));
      effort.take(KEEPING + arcs.size());
    }
    for (int i = net.first[at]; i < net.first[at + 1]; i++) {
      int arc = net.arcs[i];
      int next = net.head[arc];
      long now = length + wanted.lengths()[arc];
      if (!onPath[next] && now + rest[next] <= limit && effort.take(1) && enter(arc)) {
        onPath[next] = true;
        arcs.add(arc);
        walk(next, now, pinned || wanted.pin()[arc >> 1]);
        arcs.removeLast();
        onPath[next] = false;
        leave(net.edgeHoles[arc >> 1].length, arc);
      }
    }
  }

  /** False, and nothing entered, if the path has passed one of the holes. */
  private boolean enter(int arc) {
    int[] holes = net.edgeHoles[arc >> 1];
    for (int i = 0; i < holes.length; i++) {
      if (passed[holes[i]]) {
        leave(i, arc);
        return false;
      }
      passed[holes[i]] = true;
    }
    return true;
  }

  private void leave(int some, int arc) {
    for (int i = 0; i < some; i++) {
      passed[net.edgeHoles[arc >> 1][i]] = false;
    }
  }

  private void searchBack() {
    Arrays.fill(rest, Network.SHUT);
    heap.clear();
    for (int t : wanted.targets()) {
      rest[t] = 0;
      heap.put(t);
    }
    while (!heap.isEmpty()) {
      int v = heap.pop();
      for (int i = into.first[v]; i < into.first[v + 1]; i++) {
        int arc = into.arcs[i];
        long d = rest[v] + wanted.lengths()[arc];
        if (d < rest[net.tail(arc)]) {
          rest[net.tail(arc)] = d;
          heap.put(net.tail(arc));
        }
      }
    }
  }
}
