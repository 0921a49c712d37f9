package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How often something is drawn through a blind stretch. Runs that share a stretch are drawn
 * together, as many at once as there are boxes to draw from: two runs out of one box need two
 * pulls. A ready-made lead is a piece of its own and goes along with any pull.
 */
final class Pulls {
  /** Runs of one blind stretch, by their numbers. */
  private final List<int[]> stretches;

  private final List<String> runs;
  private final List<String> kinds;

  /** Each run's kind as the number of the first run of that kind. */
  private final int[] kindOf;

  private final boolean[] ready;

  Pulls(Plan plan, Jackets jackets) {
    this.runs = plan.runs().stream().map(Plan.PlannedRun::id).toList();
    this.kinds = plan.runs().stream().map(r -> jackets.of(r.id()).words()).toList();
    this.kindOf = kinds.stream().mapToInt(kinds::indexOf).toArray();
    this.ready = new boolean[runs.size()];
    for (int r = 0; r < ready.length; r++) {
      ready[r] = Cable.get(plan.runs().get(r).cable()).factoryEnds();
    }
    Map<String, List<Integer>> by = new LinkedHashMap<>();
    for (int r = 0; r < runs.size(); r++) {
      for (String stretch : stretches(plan.runs().get(r))) {
        by.computeIfAbsent(stretch, k -> new ArrayList<>()).add(r);
      }
    }
    this.stretches =
        by.values().stream().map(l -> l.stream().mapToInt(Integer::intValue).toArray()).toList();
  }

  /** Ids of the legs of each fish of a run, in their order, with where it begins. */
  private static List<String> stretches(Plan.PlannedRun run) {
    Map<Integer, StringBuilder> out = new TreeMap<>();
    for (Plan.PlanStep s : run.steps()) {
      s.fish()
          .ifPresent(
              f ->
                  out.computeIfAbsent(f, k -> new StringBuilder(s.path().get(0).toString()))
                      .append('\n')
                      .append(s.id()));
    }
    return out.values().stream().map(StringBuilder::toString).toList();
  }

  /** Every stretch once: what no number of boxes can beat. */
  int least() {
    return stretches.size();
  }

  /** Boxes of a kind at once beyond which nothing is saved; nobody carries more than a dozen. */
  int mostUseful() {
    int most = 1;
    for (int[] s : stretches) {
      Map<String, Integer> count = new TreeMap<>();
      for (int r : s) {
        if (!ready(r)) {
          most = Math.max(most, count.merge(kinds.get(r), 1, Integer::sum));
        }
      }
    }
    return Math.min(most, 12);
  }

  /** Pulls that so many boxes of each kind cannot beat, however runs are shared out. */
  int bound(int boxes) {
    int sum = 0;
    for (int[] s : stretches) {
      Map<String, Integer> count = new TreeMap<>();
      int most = 1;
      for (int r : s) {
        if (!ready(r)) {
          int n = count.merge(kinds.get(r), 1, Integer::sum);
          most = Math.max(most, (n + boxes - 1) / boxes);
        }
      }
      sum += most;
    }
    return sum;
  }

  /** Box number of each run, boxes counted within a kind, such that pulls are few. */
  int[] shared(int boxes) {
    int[] from = new int[runs.size()];
    Map<String, Integer> next = new TreeMap<>();
    for (int r = 0; r < from.length; r++) {
      from[r] = next.merge(kinds.get(r), 1, Integer::sum) % boxes;
    }
    new Exchange(this, from, (r, b) -> true).improve(boxes);
    return from;
  }

  /** Pulls of all stretches, each run drawn from its box; boxes are counted within a kind. */
  int count(int[] from) {
    int boxes = Arrays.stream(from).max().orElse(0) + 1;
    int[] drawn = new int[boxes * kindOf.length];
    int sum = 0;
    for (int[] s : stretches) {
      int most = 1;
      for (int r : s) {
        most = ready(r) ? most : Math.max(most, ++drawn[kindOf[r] * boxes + from[r]]);
      }
      sum += most;
      for (int r : s) {
        drawn[kindOf[r] * boxes + from[r]] = 0;
      }
    }
    return sum;
  }

  boolean sameKind(int a, int b) {
    return kindOf[a] == kindOf[b];
  }

  boolean ready(int run) {
    return ready[run];
  }

  int indexOf(String run) {
    return runs.indexOf(run);
  }

  @Override
  public String toString() {
    return stretches.stream().map(Arrays::toString).toList().toString();
  }
}
