package holloway.solve;

import java.util.Arrays;

/**
 * Chooses the method of every open hole so that the works are cheapest together: one hole at a
 * time, then by opening or closing one shared work for all holes at once. {@link MethodsExact}
 * settles the small rest exactly.
 */
final class MethodChoice {
  private final Draft draft;
  private final Network net;

  MethodChoice(Draft draft) {
    this.draft = draft;
    this.net = draft.net;
  }

  /** Never raises the price of the draft. */
  void improve() {
    int[] open = choosable();
    boolean better = true;
    while (better) {
      singles(open);
      better = together(open);
    }
  }

  private int[] choosable() {
    return Arrays.stream(draft.openHoles()).filter(h -> net.methods[h].length > 1).toArray();
  }

  private void singles(int[] open) {
    boolean better = true;
    while (better) {
      better = false;
      for (int h : open) {
        for (int m = 0; m < net.methods[h].length; m++) {
          if (change(h, m) < 0) {
            draft.setMethod(h, m);
            better = true;
          }
        }
      }
    }
  }

  /** Tries each work that several open holes could share; true if one change paid. */
  private boolean together(int[] open) {
    int[] count = new int[net.workPrice.length];
    for (int h : open) {
      for (int w : union(h)) {
        count[w]++;
      }
    }
    for (int w = 0; w < count.length; w++) {
      if (count[w] > 1 && !net.workShut[w] && tryAll(open, w, !draft.isOpen(w))) {
        return true;
      }
    }
    return false;
  }

  private int[] union(int hole) {
    return Arrays.stream(net.methods[hole]).flatMapToInt(Arrays::stream).distinct().toArray();
  }

  /** Turns every hole that gains to (or away from) a work; keeps it only if the price falls. */
  private boolean tryAll(int[] open, int work, boolean to) {
    long before = draft.price();
    int[] kept = new int[open.length];
    for (int i = 0; i < open.length; i++) {
      kept[i] = draft.method[open[i]];
    }
    if (to) {
      draft.use(new int[] {work}, 1);
    }
    for (int h : open) {
      int m = to ? bestOf(h, work, true) : uses(h, work) ? bestOf(h, work, false) : -1;
      if (m >= 0 && (!to || change(h, m) < 0)) {
        draft.setMethod(h, m);
      }
    }
    if (to) {
      draft.use(new int[] {work}, -1);
    }
    if (draft.price() < before) {
      return true;
    }
    for (int i = 0; i < open.length; i++) {
      draft.setMethod(open[i], kept[i]);
    }
    return false;
  }

  private boolean uses(int hole, int work) {
    return has(net.methods[hole][draft.method[hole]], work);
  }

  /** The cheapest method with (or without) the work, or -1. */
  private int bestOf(int hole, int work, boolean with) {
    int best = -1;
    long least = Network.SHUT;
    for (int m = 0; m < net.methods[hole].length; m++) {
      if (has(net.methods[hole][m], work) == with && change(hole, m) < least) {
        least = change(hole, m);
        best = m;
      }
    }
    return best;
  }

  private static boolean has(int[] works, int work) {
    for (int w : works) {
      if (w == work) {
        return true;
      }
    }
    return false;
  }

  /** What the draft's price would change by. */
  private long change(int hole, int m) {
    int[] next = net.methods[hole][m];
    int[] now = net.methods[hole][draft.method[hole]];
    if (m == draft.method[hole]) {
      return 0;
    }
    long sum = 0;
    if (draft.task.capacity.dependsOnMethod(hole)) {
      Capacity.Bores b = draft.bores(hole, m);
      if (!b.fits()) {
        return Network.SHUT;
      }
      sum = b.extra() - draft.holeExtra(hole);
    }
    for (int w : next) {
      if (net.workShut[w]) {
        return Network.SHUT;
      }
      sum += draft.workUse[w] == 0 ? net.workPrice[w] : 0;
    }
    for (int w : now) {
      sum -= draft.workUse[w] == 1 && !has(next, w) ? net.workPrice[w] : 0;
    }
    return sum;
  }
}
