package holloway.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Tries sets of zones: those of a set count as paid while searching, the others are not to be had.
 * So one cable alone need not carry the whole price of going into the attic. At most four zones,
 * the dearest, are enumerated; further zones keep their price.
 */
final class ZoneSubsets {
  private static final int MOST_ZONES = 4;

  private final Draft draft;
  private final Zones zones;
  private final MarginalSearch search;
  private final int[] works;

  /** A set of zones (bit i is {@code works[i]}) and the best plan found with it. */
  record Tried(int mask, Solution best) {}

  ZoneSubsets(Draft draft, Zones zones, MarginalSearch search) {
    this.draft = draft;
    this.zones = zones;
    this.search = search;
    works = enumerated(draft.net);
  }

  static int[] enumerated(Network net) {
    Comparator<Integer> dearest = Comparator.comparingLong(w -> -net.workPrice[w]);
    return net.zoneWorks().stream()
        .sorted(dearest.thenComparing(Comparator.naturalOrder()))
        .limit(MOST_ZONES)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  int sets() {
    return 1 << works.length;
  }

  /** The plans of all sets that could differ, best first; the draft is left empty. */
  List<Tried> run(List<int[]> orders, Progress progress, Watch watch) {
    List<Tried> out = new ArrayList<>();
    int sets = 1 << works.length;
    for (int mask = sets - 1; mask >= 0; mask--) {
      boolean settled = settledBy(out, mask);
      if (!settled && !out.isEmpty() && watch.over()) {
        break;
      }
      if (!settled) {
        enter(mask, true);
        Solution best = null;
        for (int[] order : orders) {
          Solution s = build(order);
          best = s.betterThan(best) ? s : best;
        }
        out.add(new Tried(mask, best));
        progress.at("trying sets of zones", sets - mask, sets);
      }
    }
    draft.clear();
    out.sort(
        Comparator.comparingInt((Tried t) -> -t.best().routed())
            .thenComparingLong(t -> t.best().price())
            .thenComparingInt(Tried::mask));
    return out;
  }

  /** A larger set that was tried and used only zones of this one gives this one's plan too. */
  private boolean settledBy(List<Tried> tried, int mask) {
    for (Tried t : tried) {
      if ((t.mask() & mask) == mask && (used(t.best()) & ~mask) == 0) {
        return true;
      }
    }
    return false;
  }

  private int used(Solution s) {
    draft.load(s);
    int bits = 0;
    for (int i = 0; i < works.length; i++) {
      bits |= draft.isOpen(works[i]) ? 1 << i : 0;
    }
    return bits;
  }

  /** Lays a set over the search; zones outside it are shut, or only priced. */
  void enter(int mask, boolean shutOthers) {
    draft.clear();
    zones.reset();
    for (int i = 0; i < works.length; i++) {
      if ((mask >> i & 1) == 1) {
        zones.prepay(works[i]);
      } else if (shutOthers) {
        zones.shut(works[i]);
      }
    }
    search.refresh();
  }

  private Solution build(int[] order) {
    draft.clear();
    Insertion insertion = new Insertion(draft, search);
    insertion.insert(order);
    insertion.polish(order, 2);
    return draft.save();
  }
}
