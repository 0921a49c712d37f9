package holloway.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Moves runs that pass one hole to another way together. One by one each would go back where it
 * was: the other way's holes pay only for all of them, and the first to leave does not see that the
 * hole has room for no second, or that it needs a second bore because of it. So the first is led
 * where all of them would cost least together, the others follow at marginal price: what a new way
 * saves each of them pays for its works. A few are also led where only the first has to pay for the
 * way, for they may part behind the hole.
 */
final class Company {
  private static final int MOST_RUNS = 8;

  /** So many of a crowd lead it in turn, for they part somewhere. */
  private static final int LEADERS = 4;

  /** So few runs are also tried two by two, whether they meet or not. */
  private static final int FEW = 8;

  private static final int MOST_PASSES = 3;

  private final Draft draft;
  private final MarginalSearch search;
  private final Watch watch;
  private final Insertion insertion;

  Company(Draft draft, MarginalSearch search, Watch watch) {
    this.draft = draft;
    this.search = search;
    this.watch = watch;
    insertion = new Insertion(draft, search);
  }

  /** Never leaves a dearer plan in the draft, nor one with fewer runs. */
  void improve(int[] runs, long mostLooks) {
    long stop = search.looks() + mostLooks;
    for (int pass = 0; pass < MOST_PASSES; pass++) {
      long before = draft.price();
      for (List<Integer> set : sets(runs)) {
        int leaders = set.size() > MOST_RUNS ? LEADERS : Math.min(2, set.size());
        for (int first = 0; first < leaders; first++) {
          if (search.looks() >= stop || watch.over()) {
            return;
          }
          together(set, first, true);
          if (set.size() <= MOST_RUNS) {
            together(set, first, false);
          }
        }
      }
      if (draft.price() >= before) {
        return;
      }
    }
  }

  /** Runs that meet in a hole, then pairs; each set once. */
  private Set<List<Integer>> sets(int[] runs) {
    Set<List<Integer>> out = new LinkedHashSet<>();
    List<List<Integer>> passing = new ArrayList<>();
    for (int h = 0; h < draft.net.methods.length; h++) {
      passing.add(new ArrayList<>());
    }
    for (int run : runs) {
      for (int arc : draft.paths[run] == null ? new int[0] : draft.paths[run].arcs()) {
        for (int h : draft.net.edgeHoles[arc >> 1]) {
          passing.get(h).add(run);
        }
      }
    }
    passing.stream().filter(p -> p.size() > 1).forEach(out::add);
    for (int i = 0; runs.length <= FEW && i < runs.length; i++) {
      for (int j = i + 1; j < runs.length; j++) {
        out.add(List.of(runs[i], runs[j]));
      }
    }
    return out;
  }

  /**
   * @param each the way counts as often as there are runs; else once, and the others only take up
   *     room
   */
  private void together(List<Integer> set, int first, boolean each) {
    int[] out = new int[set.size()];
    boolean crowd = set.size() > MOST_RUNS;
    for (int i = 0; i < out.length; i++) {
      int from = crowd ? first * out.length / LEADERS : first;
      out[i] = set.get((i + from) % out.length);
      if (draft.paths[out[i]] == null) {
        return;
      }
    }
    Solution before = draft.save();
    takeOut(out);
    int[] kinds = Arrays.stream(out).skip(1).map(r -> draft.task.demands[r].kind()).toArray();
    Path lead = each ? search.leading(kinds, out[0]) : beside(kinds, out[0]);
    if (lead != null && !PathRepair.same(lead, before.paths()[out[0]])) {
      draft.add(out[0], lead);
      insertion.insert(out);
      insertion.polish(out, 2);
    }
    if (draft.routed() < before.routed() || draft.price() >= before.price()) {
      takeOut(out);
      for (int run : out) {
        draft.add(run, before.paths()[run]);
      }
      draft.restoreMethods(before);
    }
  }

  private Path beside(int[] kinds, int run) {
    search.accompany(kinds);
    Path lead = search.find(run);
    search.accompany();
    return lead;
  }

  private void takeOut(int[] out) {
    for (int run : out) {
      if (draft.paths[run] != null) {
        draft.remove(run);
      }
    }
  }
}
