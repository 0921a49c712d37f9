package holloway.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The cheapest path where each work is paid once, however many places of the path need it: labels
 * of a place and the works paid on the way, of which only those that stand at several places are
 * remembered. A label is dropped if another at its place would cost no more even after paying all
 * that this one has paid, or if no way on from it can cost less than what is asked for. Best first
 * (Hart, Nilsson and Raphael 1968) over labels with resources (Desrochers 1988).
 */
final class OncePaths {
  /** Where more labels are made than this the search gives up. */
  private static final int MOST_LABELS = 20_000;

  /**
   * What is asked of the search.
   *
   * @param less only a path that costs less than this is wanted
   * @param byArc {@link Network#SHUT} where an arc is closed, else not looked at
   * @param byEdge travel and room in holes, works apart
   */
  record Wanted(int[] from, int[] to, boolean[] pin, long less, long[] byArc, long[] byEdge) {}

  private static final class Label {
    final int state;
    final long price;
    final long least;
    final int[] paid;
    final int arc;
    final Label before;
    final int number;
    boolean beaten;

    Label(int state, long price, long least, int[] paid, int arc, Label before, int number) {
      this.state = state;
      this.price = price;
      this.least = least;
      this.paid = paid;
      this.arc = arc;
      this.before = before;
      this.number = number;
    }
  }

  private final Network net;
  private final PaidWorks works;
  private final long[] rest;
  private final NodeHeap heap;
  private final List<List<Label>> kept;
  private final IntList touched = new IntList();
  private final PriorityQueue<Label> queue =
      new PriorityQueue<>(
          Comparator.comparingLong((Label l) -> l.least).thenComparingInt(l -> l.number));
  private Wanted wanted;
  private int made;
  private long looks;

  private final boolean any;

  OncePaths(Draft draft, Zones zones) {
    this.net = draft.net;
    works = new PaidWorks(draft, zones);
    any = works.any() && !net.oneWay;
    rest = new long[net.nodes];
    heap = new NodeHeap(rest);
    kept = new ArrayList<>(Collections.nCopies(2 * net.nodes, null));
  }

  /** Some work stands at several places, so that a path may need it twice. */
  boolean any() {
    return any;
  }

  /** Arcs looked at since the start. */
  long looks() {
    return looks;
  }

  /** The cheapest walk under the price asked for, or null if there is none or it is too far. */
  Path find(Wanted asked) {
    wanted = asked;
    made = 0;
    remaining();
    for (int s : wanted.from()) {
      pay(null, s, -1, new int[][] {net.nodeWorks[s]}, 0, 0, PaidWorks.NONE);
    }
    Label last = null;
    while (last == null && !queue.isEmpty() && made < MOST_LABELS) {
      Label l = queue.remove();
      int node = l.state % net.nodes;
      if (!l.beaten && ended(l.state) && Places.has(wanted.to(), node)) {
        last = l;
      } else if (!l.beaten) {
        expand(l, node);
      }
    }
    queue.clear();
    for (int i = 0; i < touched.size(); i++) {
      kept.set(touched.get(i), null);
    }
    touched.clear();
    return last == null ? null : trace(last);
  }

  private boolean ended(int state) {
    return wanted.pin() == null || state >= net.nodes;
  }

  private void expand(Label l, int node) {
    looks += net.first[node + 1] - net.first[node];
    for (int i = net.first[node]; i < net.first[node + 1]; i++) {
      int arc = net.arcs[i];
      int e = arc >> 1;
      int next = net.head[arc];
      long travel = net.price[e] + wanted.byEdge()[e];
      if (wanted.byArc()[arc] < Network.SHUT
          && travel < Network.SHUT
          && l.price + travel + rest[next] - works.slack(l.paid) < wanted.less()) {
        boolean second = wanted.pin() != null && (l.state >= net.nodes || wanted.pin()[e]);
        int[][] sets = {net.edgeWorks[e], net.nodeWorks[next]};
        pay(l, second ? next + net.nodes : next, arc, sets, 0, l.price + travel, l.paid);
      }
    }
  }

  /** Pays the works one set after the other, then each hole of the arc by each of its methods. */
  private void pay(
      Label before, int state, int arc, int[][] sets, int done, long price, int[] paid) {
    if (done < sets.length) {
      long sum = price + works.missing(sets[done], paid);
      pay(before, state, arc, sets, done + 1, sum, works.with(sets[done], paid));
      return;
    }
    int[] holes = arc < 0 ? PaidWorks.NONE : net.edgeHoles[arc >> 1];
    int hole = done - sets.length;
    if (price >= wanted.less()) {
      return;
    }
    if (hole == holes.length) {
      keep(state, price, paid, arc, before);
    } else if (net.methods[holes[hole]].length == 0) {
      pay(before, state, arc, sets, done + 1, price, paid);
    } else {
      for (int[] m : net.methods[holes[hole]]) {
        long sum = price + works.missing(m, paid);
        pay(before, state, arc, sets, done + 1, sum, works.with(m, paid));
      }
    }
  }

  private void keep(int state, long price, int[] paid, int arc, Label before) {
    int node = state % net.nodes;
    long least = price + Math.max(0, rest[node] - works.slack(paid));
    if (least >= wanted.less()) {
      return;
    }
    List<Label> there = kept.get(state);
    if (there == null) {
      there = new ArrayList<>();
      kept.set(state, there);
      touched.add(state);
    }
    for (Label l : there) {
      if (l.price <= price && works.within(price - l.price, paid, l.paid)) {
        return;
      }
    }
    Label fresh = new Label(state, price, least, paid, arc, before, made++);
    int left = 0;
    for (int i = 0; i < there.size(); i++) {
      Label l = there.get(i);
      l.beaten = price <= l.price && works.within(l.price - price, l.paid, paid);
      if (!l.beaten) {
        there.set(left++, l);
      }
    }
    there.subList(left, there.size()).clear();
    there.add(fresh);
    queue.add(fresh);
  }

  /**
   * By node: what the way from it costs at least if nothing is paid yet, works counted in parts.
   */
  private void remaining() {
    Arrays.fill(rest, Network.SHUT);
    heap.clear();
    for (int t : wanted.to()) {
      rest[t] = 0;
      heap.put(t);
    }
    while (!heap.isEmpty()) {
      int node = heap.pop();
      if (rest[node] >= wanted.less()) {
        rest[node] = Network.SHUT;
        continue;
      }
      looks += net.first[node + 1] - net.first[node];
      for (int i = net.first[node]; i < net.first[node + 1]; i++) {
        int arc = net.arcs[i] ^ 1;
        int before = net.head[arc ^ 1];
        long d = rest[node] + atLeast(arc);
        if (d < rest[before]) {
          rest[before] = d;
          heap.put(before);
        }
      }
    }
  }

  private long atLeast(int arc) {
    int e = arc >> 1;
    long travel = net.price[e] + wanted.byEdge()[e];
    if (wanted.byArc()[arc] >= Network.SHUT || travel >= Network.SHUT) {
      return Network.SHUT;
    }
    long sum = travel + works.parts(net.edgeWorks[e]) + works.parts(net.nodeWorks[net.head[arc]]);
    for (int h : net.edgeHoles[e]) {
      long least = net.methods[h].length == 0 ? 0 : Network.SHUT;
      for (int[] m : net.methods[h]) {
        least = Math.min(least, works.parts(m));
      }
      sum += least;
    }
    return Math.min(Network.SHUT, sum);
  }

  private Path trace(Label last) {
    int count = 0;
    Label first = last;
    for (; first.before != null; first = first.before) {
      count++;
    }
    int[] arcs = new int[count];
    for (Label l = last; l.before != null; l = l.before) {
      arcs[--count] = l.arc;
    }
    return new Path(first.state, arcs, last.price);
  }
}
