package holloway.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Lets two runs of unlike cable change ways between two places that both pass. Neither gains by
 * going there alone where all the holes are paid for: only which cable lies in which hole decides
 * on the bit.
 */
final class Exchange {
  private final Draft draft;
  private final Network net;

  Exchange(Draft draft) {
    this.draft = draft;
    this.net = draft.net;
  }

  /** Never leaves a dearer plan in the draft. */
  void improve(int[] runs) {
    for (int a : runs) {
      for (int b : runs) {
        if (b > a && kind(a) != kind(b) && draft.paths[a] != null && draft.paths[b] != null) {
          pair(a, b);
        }
      }
    }
  }

  private int kind(int run) {
    return draft.task.demands[run].kind();
  }

  private void pair(int a, int b) {
    int last = -1;
    for (int i = 0; i <= draft.paths[a].arcs().length; i++) {
      int[] places = nodes(draft.paths[a]);
      Map<Integer, Integer> other = byNode(draft.paths[b]);
      if (other.containsKey(places[i])) {
        if (last >= 0) {
          between(a, b, last, i, other.get(places[last]), other.get(places[i]));
          // The stretch before this place may have another number of arcs now.
          i += draft.paths[a].arcs().length + 1 - places.length;
        }
        last = i;
      }
    }
  }

  private int[] nodes(Path p) {
    int[] out = new int[p.arcs().length + 1];
    out[0] = p.start();
    for (int i = 1; i < out.length; i++) {
      out[i] = net.head[p.arcs()[i - 1]];
    }
    return out;
  }

  private Map<Integer, Integer> byNode(Path p) {
    Map<Integer, Integer> out = new HashMap<>();
    int[] nodes = nodes(p);
    for (int i = 0; i < nodes.length; i++) {
      out.put(nodes[i], i);
    }
    return out;
  }

  /**
   * The first run has the stretch between these of its places, the second the one between those.
   */
  private void between(int a, int b, int fromA, int toA, int fromB, int toB) {
    if (toB < fromB && net.oneWay) {
      return;
    }
    Path one = draft.paths[a];
    Path two = draft.paths[b];
    int[] ofA = Arrays.copyOfRange(one.arcs(), fromA, toA);
    int[] ofB = Arrays.copyOfRange(two.arcs(), Math.min(fromB, toB), Math.max(fromB, toB));
    int[] forA = toB < fromB ? turned(ofB) : ofB;
    int[] forB = toB < fromB ? turned(ofA) : ofA;
    if (!Arrays.equals(ofA, forA)) {
      Path newA = with(one, fromA, toA, forA);
      Path newB = with(two, Math.min(fromB, toB), Math.max(fromB, toB), forB);
      if (valid(a, newA) && valid(b, newB)) {
        change(a, newA, b, newB);
      }
    }
  }

  private static int[] turned(int[] arcs) {
    return IntStream.range(0, arcs.length).map(i -> arcs[arcs.length - 1 - i] ^ 1).toArray();
  }

  private static Path with(Path p, int from, int to, int[] stretch) {
    List<Integer> out = new ArrayList<>();
    Arrays.stream(p.arcs(), 0, from).forEach(out::add);
    Arrays.stream(stretch).forEach(out::add);
    Arrays.stream(p.arcs(), to, p.arcs().length).forEach(out::add);
    return new Path(p.start(), out.stream().mapToInt(Integer::intValue).toArray(), p.price());
  }

  private boolean valid(int run, Path p) {
    boolean[] pin = draft.task.demands[run].pin();
    return (pin == null || Arrays.stream(p.arcs()).anyMatch(arc -> pin[arc >> 1]))
        && new PathRepair(net, 0).clash(p) == null;
  }

  private void change(int a, Path newA, int b, Path newB) {
    Solution kept = draft.save();
    move(a, newA, b, newB);
    draft.restoreMethods(kept);
    if (draft.price() >= kept.price()) {
      move(a, kept.paths()[a], b, kept.paths()[b]);
      draft.restoreMethods(kept);
    }
  }

  private void move(int a, Path newA, int b, Path newB) {
    draft.remove(a);
    draft.remove(b);
    draft.add(a, newA);
    draft.add(b, newB);
  }
}
