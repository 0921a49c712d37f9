package holloway.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Runs that are alike (same two ends, cable and pin) as one commodity. Groups that end at the
 * busiest end, the root, are turned so that they start there, unless an edge is one-way.
 */
final class Groups {
  /**
   * @param runs members, ascending
   * @param rooted starts at the root and has no pin
   */
  record Group(int[] runs, int from, int to, int kind, boolean[] pin, boolean rooted) {}

  final List<Group> list;

  private record Key(int from, int to, int kind, boolean[] pin) {
    @Override
    public boolean equals(Object o) {
      return o instanceof Key k && k.from == from && k.to == to && k.kind == kind && k.pin == pin;
    }

    @Override
    public int hashCode() {
      return 31 * (31 * from + to) + kind;
    }
  }

  Groups(Task task, int[] runs) {
    int root = busiest(task, runs);
    boolean mayTurn = !task.net.oneWay;
    Map<Key, IntList> members = new LinkedHashMap<>();
    for (int run : runs) {
      Demand d = task.demands[run];
      boolean turn =
          mayTurn && (d.to() == root && d.from() != root || d.from() > d.to() && d.from() != root);
      Key key =
          turn
              ? new Key(d.to(), d.from(), d.kind(), d.pin())
              : new Key(d.from(), d.to(), d.kind(), d.pin());
      members.computeIfAbsent(key, k -> new IntList()).add(run);
    }
    list = new ArrayList<>();
    members.forEach(
        (k, m) ->
            list.add(
                new Group(
                    m.toArray(), k.from, k.to, k.kind, k.pin, k.from == root && k.pin == null)));
  }

  /** The end most runs share; the first by name of equals. */
  private static int busiest(Task task, int[] runs) {
    TreeMap<Integer, Integer> count = new TreeMap<>();
    for (int run : runs) {
      count.merge(task.demands[run].from(), 1, Integer::sum);
      count.merge(task.demands[run].to(), 1, Integer::sum);
    }
    int best = -1;
    for (Map.Entry<Integer, Integer> e : count.entrySet()) {
      if (best < 0 || e.getValue() > count.get(best)) {
        best = e.getKey();
      }
    }
    return best;
  }
}
