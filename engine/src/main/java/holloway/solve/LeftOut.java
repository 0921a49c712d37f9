package holloway.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Looks for a plan that has all runs where one was left out because the others were there first:
 * they filled a hole, or chose for it among the places where an end may be. Whoever is left out
 * takes the way of another, who looks for a new one or takes that of a third; then whoever is left
 * out goes to the front, once from each of those places, and all others follow.
 */
final class LeftOut {
  private static final int MOST_FRONTS = 12;
  private static final int MOST_IN_A_CHAIN = 5;
  private static final int MOST_SEARCHES = 4_000;
  private static final int MOST_WAYS = 16;

  private final Draft draft;
  private final MarginalSearch search;
  private final Watch watch;
  private final Insertion insertion;
  private int searches;

  /**
   * @param search sees the draft as it is, with no set of zones laid over it
   */
  LeftOut(Draft draft, MarginalSearch search, Watch watch) {
    this.draft = draft;
    this.search = search;
    this.watch = watch;
    insertion = new Insertion(draft, search);
  }

  /** The best plan met, never one with fewer runs than the one known. */
  Solution rescue(int[] runs, Solution known) {
    Solution best = chained(runs, known);
    List<Integer> order = new ArrayList<>(IntStream.of(runs).boxed().toList());
    Set<List<Integer>> tried = new HashSet<>();
    int first = missing(order, best);
    while (first >= 0 && tried.size() < MOST_FRONTS && !watch.over()) {
      order.remove(Integer.valueOf(first));
      order.add(0, first);
      if (!tried.add(List.copyOf(order))) {
        return best;
      }
      Solution led = led(order, true);
      best = led.betterThan(best) ? led : best;
      Solution free = led(order, false);
      best = free.betterThan(best) ? free : best;
      best = best.routed() == runs.length ? best : chained(runs, best);
      first = best.routed() == runs.length ? -1 : missing(order, free);
    }
    return best;
  }

  /** Each run without a path tries to push others aside; the longer chains last. */
  private Solution chained(int[] runs, Solution known) {
    draft.load(known);
    searches = 0;
    for (int run : runs) {
      for (int length = 1; draft.paths[run] == null && length <= MOST_IN_A_CHAIN; length++) {
        place(run, new int[0], length, runs);
      }
    }
    Solution s = draft.save();
    return s.betterThan(known) ? s : known;
  }

  /**
   * Puts the run in, if need be in the place of one that is put in elsewhere; else undoes all.
   *
   * @param taken holes that whoever pushed it out wants for itself
   */
  private boolean place(int run, int[] taken, int length, int[] runs) {
    Path p = avoiding(run, taken);
    if (p != null) {
      draft.add(run, p);
      return true;
    }
    for (int i = 0; length > 0 && i < runs.length; i++) {
      if (runs[i] != run
          && draft.paths[runs[i]] != null
          && push(run, taken, runs[i], length, runs)) {
        return true;
      }
    }
    return false;
  }

  private boolean push(int run, int[] taken, int other, int length, int[] runs) {
    Solution before = draft.save();
    draft.remove(other);
    Path p = avoiding(run, taken);
    if (p != null) {
      draft.add(run, p);
      int[] wanted = holes(p);
      int[] common =
          IntStream.of(holes(before.paths()[other])).filter(h -> Places.has(wanted, h)).toArray();
      if (place(other, common, length - 1, runs)
          || common.length > 0 && place(other, new int[0], length - 1, runs)) {
        return true;
      }
      draft.remove(run);
    }
    draft.add(other, before.paths()[other]);
    draft.restoreMethods(before);
    return false;
  }

  private Path avoiding(int run, int[] taken) {
    if (searches++ >= MOST_SEARCHES || watch.over()) {
      return null;
    }
    IntStream.of(taken).forEach(h -> search.shutHole(h, true));
    Path p = search.find(run);
    IntStream.of(taken).forEach(h -> search.shutHole(h, false));
    return p;
  }

  private int[] holes(Path p) {
    return IntStream.of(p.arcs())
        .flatMap(arc -> IntStream.of(draft.net.edgeHoles[arc >> 1]))
        .toArray();
  }

  /** The last of the order without a path, or −1. */
  private static int missing(List<Integer> order, Solution s) {
    int out = -1;
    for (int run : order) {
      out = s.paths()[run] == null ? run : out;
    }
    return out;
  }

  /** The first run goes from every place to every other, or the cheapest way; the best of these. */
  private Solution led(List<Integer> order, boolean everywhere) {
    int[] all = order.stream().mapToInt(Integer::intValue).toArray();
    Demand d = draft.task.demands[all[0]];
    int[][] from =
        everywhere ? each(draft.task.ends[d.from()]) : new int[][] {draft.task.ends[d.from()]};
    int[][] to = everywhere ? each(draft.task.ends[d.to()]) : new int[][] {draft.task.ends[d.to()]};
    Solution best = null;
    int ways = 0;
    for (int[] s : from) {
      for (int[] t : to) {
        if (ways++ < MOST_WAYS && (best == null || !watch.over())) {
          Solution plan = after(all, s, t);
          best = plan.betterThan(best) ? plan : best;
        }
      }
    }
    return best;
  }

  private Solution after(int[] order, int[] from, int[] to) {
    draft.clear();
    Path p = search.find(order[0], from, to);
    if (p != null) {
      draft.add(order[0], p);
    }
    insertion.insert(order);
    return draft.save();
  }

  private static int[][] each(int[] nodes) {
    return IntStream.of(nodes).mapToObj(v -> new int[] {v}).toArray(int[][]::new);
  }
}
