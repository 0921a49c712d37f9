package holloway.solve;

import java.util.List;
import java.util.TreeSet;

/**
 * The first guess of the shares: whoever uses a work in a good plan pays the same part of it. What
 * the plan leaves closed is nobody's yet.
 */
final class StartShares {
  private final Task task;
  private final Places places;
  private final List<Groups.Group> groups;

  StartShares(Task task, Places places, List<Groups.Group> groups) {
    this.task = task;
    this.places = places;
    this.groups = groups;
  }

  Shares of(Solution plan) {
    Shares out = new Shares(places, groups.stream().mapToInt(g -> g.runs().length).toArray());
    IntList[] payers = new IntList[out.rows()];
    for (int g = 0; g < groups.size(); g++) {
      TreeSet<Integer> seen = new TreeSet<>();
      for (int run : groups.get(g).runs()) {
        for (int p : placesOf(plan, run, groups.get(g).from())) {
          if (seen.add(p)) {
            int r = out.row(p);
            payers[r] = payers[r] == null ? new IntList() : payers[r];
            payers[r].add(g);
            payers[r].add(p);
          }
        }
      }
    }
    for (int r = 0; r < payers.length; r++) {
      if (payers[r] != null) {
        int n = payers[r].size() / 2;
        for (int i = 0; i < n; i++) {
          out.units[payers[r].get(2 * i)][payers[r].get(2 * i + 1)] = out.price(r) / n;
        }
        out.project(r);
      }
    }
    return out;
  }

  /** Places on the run's path, walked from the group's first end. */
  private int[] placesOf(Solution plan, int run, int from) {
    Path path = plan.paths()[run];
    boolean turned = task.demands[run].from() != from;
    IntList out = new IntList();
    add(out, places.startPlaces[turned ? path.end(task.net) : path.start()]);
    for (int walked : path.arcs()) {
      int arc = turned ? walked ^ 1 : walked;
      add(out, places.arcPlaces[arc]);
      int[] holes = task.net.edgeHoles[arc >> 1];
      for (int i = 0; i < holes.length; i++) {
        int[][] methods = places.methodsOf(arc, i);
        if (methods.length > 0) {
          add(out, methods[plan.method()[holes[i]]]);
        }
      }
    }
    return out.toArray();
  }

  private static void add(IntList out, int[] values) {
    for (int v : values) {
      out.add(v);
    }
  }
}
