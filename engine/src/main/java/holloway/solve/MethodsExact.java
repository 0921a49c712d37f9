package holloway.solve;

import java.util.Arrays;
import java.util.TreeMap;

/**
 * Settles the methods of holes that could share works by trying all choices together, as long as
 * there are at most {@link #MOST} of them in one group; larger groups keep what they have.
 */
final class MethodsExact {
  static final int MOST = 4096;

  private final Draft draft;
  private final Network net;

  MethodsExact(Draft draft) {
    this.draft = draft;
    this.net = draft.net;
  }

  void settle() {
    for (IntList group : groups().values()) {
      int[] holes = group.toArray();
      if (choices(holes) <= MOST) {
        best(holes);
      }
    }
  }

  /** Open holes with a choice, joined where a priced work is in methods of both. */
  private TreeMap<Integer, IntList> groups() {
    int[] open = Arrays.stream(draft.openHoles()).filter(h -> net.methods[h].length > 1).toArray();
    int[] root = new int[net.methods.length];
    int[] first = new int[net.workPrice.length];
    Arrays.fill(first, -1);
    for (int h : open) {
      root[h] = h;
    }
    for (int h : open) {
      for (int[] m : net.methods[h]) {
        for (int w : m) {
          if (first[w] < 0) {
            first[w] = h;
          } else {
            join(root, first[w], h);
          }
        }
      }
    }
    TreeMap<Integer, IntList> out = new TreeMap<>();
    for (int h : open) {
      out.computeIfAbsent(top(root, h), k -> new IntList()).add(h);
    }
    return out;
  }

  private static int top(int[] root, int h) {
    int r = h;
    while (root[r] != r) {
      r = root[r];
    }
    return r;
  }

  private static void join(int[] root, int a, int b) {
    int ra = top(root, a);
    int rb = top(root, b);
    root[Math.max(ra, rb)] = Math.min(ra, rb);
  }

  private int choices(int[] holes) {
    int n = 1;
    for (int h : holes) {
      n = Math.min(MOST + 1, n * net.methods[h].length);
    }
    return n;
  }

  private void best(int[] holes) {
    int[] kept = current(holes);
    long least = allowed(holes) ? draft.price() : Long.MAX_VALUE;
    int[] choice = new int[holes.length];
    do {
      apply(holes, choice);
      if (draft.price() < least && allowed(holes)) {
        least = draft.price();
        kept = choice.clone();
      }
    } while (next(holes, choice));
    apply(holes, kept);
  }

  private int[] current(int[] holes) {
    int[] out = new int[holes.length];
    for (int i = 0; i < holes.length; i++) {
      out[i] = draft.method[holes[i]];
    }
    return out;
  }

  private void apply(int[] holes, int[] choice) {
    for (int i = 0; i < holes.length; i++) {
      draft.setMethod(holes[i], choice[i]);
    }
  }

  private boolean allowed(int[] holes) {
    for (int h : holes) {
      for (int w : net.methods[h][draft.method[h]]) {
        if (net.workShut[w]) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean next(int[] holes, int[] choice) {
    for (int i = 0; i < holes.length; i++) {
      if (++choice[i] < net.methods[holes[i]].length) {
        return true;
      }
      choice[i] = 0;
    }
    return false;
  }
}
