package holloway.solve;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;

/**
 * Runs so many alike (same ends, cable and pin) that one of them alone never pays for a new way, as
 * units of flow in a benchmark network. Those on one path are a strand and move together.
 */
final class Strands {
  /** More runs alike than this are moved as strands; no house has so many to one outlet. */
  private static final int MANY = 24;

  private final Draft draft;
  private final int[] groupOf;
  private final boolean any;

  Strands(Draft draft) {
    this.draft = draft;
    Map<Demand, Integer> count = new LinkedHashMap<>();
    for (Demand d : draft.task.demands) {
      count.merge(d, 1, Integer::sum);
    }
    Map<Demand, Integer> number = new LinkedHashMap<>();
    groupOf = new int[draft.task.runs()];
    for (int run = 0; run < groupOf.length; run++) {
      Demand d = draft.task.demands[run];
      groupOf[run] = count.get(d) > MANY ? number.computeIfAbsent(d, k -> number.size()) : -1;
    }
    any = !number.isEmpty();
  }

  /** Whether there are runs that move as strands. */
  boolean any() {
    return any;
  }

  boolean inStrand(int run) {
    return groupOf[run] >= 0;
  }

  boolean alike(int a, int b) {
    return a == b || groupOf[a] >= 0 && groupOf[a] == groupOf[b];
  }

  /** The runs of the order without a path that are like this one, itself among them. */
  int[] waiting(int run, int[] order) {
    return Arrays.stream(order).filter(r -> draft.paths[r] == null && alike(run, r)).toArray();
  }

  /** The runs like this one on the same path. */
  int[] of(int run) {
    if (!inStrand(run) || draft.paths[run] == null) {
      return new int[] {run};
    }
    IntList out = new IntList();
    for (int r = 0; r < groupOf.length; r++) {
      if (groupOf[r] == groupOf[run]
          && draft.paths[r] != null
          && PathRepair.same(draft.paths[r], draft.paths[run])) {
        out.add(r);
      }
    }
    return out.toArray();
  }

  /** One run of each strand that has some of these. */
  int[] heads(int[] runs) {
    if (!any) {
      return runs;
    }
    TreeSet<Integer> covered = new TreeSet<>();
    IntList out = new IntList();
    for (int run : runs) {
      if (covered.add(run)) {
        out.add(run);
        Arrays.stream(of(run)).forEach(covered::add);
      }
    }
    return out.toArray();
  }

  /** All runs of the strands that have some of these. */
  int[] whole(int[] runs) {
    if (!any) {
      return runs;
    }
    TreeSet<Integer> out = new TreeSet<>();
    for (int run : runs) {
      if (out.add(run)) {
        Arrays.stream(of(run)).forEach(out::add);
      }
    }
    return out.stream().mapToInt(Integer::intValue).toArray();
  }
}
