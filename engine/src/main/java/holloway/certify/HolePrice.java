package holloway.certify;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.routing.RouteGraph;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;

/**
 * The least that a hole costs for n cables, beyond one of its works: a larger bit, two bores; and
 * how many fit at all. Speaks of a class of cables: all but those of the thinnest jackets.
 */
final class HolePrice {
  private final Proof proof;
  private final int most;

  /** Jackets of all runs of the class, the slimmest first. */
  private final List<Length> jackets = new ArrayList<>();

  /** The slimmest head of them. */
  private final Length head;

  /** By group. */
  private final boolean[] counts;

  private final Map<List<Object>, long[]> known = new HashMap<>();

  /**
   * @param without how many of the thinnest jackets are left out, with all runs that have them
   */
  HolePrice(Proof proof, int without) {
    this.proof = proof;
    List<Length> thinnest =
        proof.commodities.stream().map(c -> c.cable().outside()).distinct().sorted().toList();
    if (without < 0 || without >= thinnest.size()) {
      throw new Unproven("no cables are left without the %d thinnest".formatted(without));
    }
    counts = new boolean[proof.commodities.size()];
    Length slimmest = null;
    for (int g = 0; g < counts.length; g++) {
      Commodity c = proof.commodities.get(g);
      counts[g] = c.cable().outside().compareTo(thinnest.get(without)) >= 0;
      if (counts[g]) {
        jackets.addAll(Collections.nCopies(c.runs(), c.cable().outside()));
        Length own = c.cable().pullHead();
        slimmest = slimmest == null || own.compareTo(slimmest) < 0 ? own : slimmest;
      }
    }
    Collections.sort(jackets);
    head = slimmest;
    most = jackets.size();
  }

  /** Whether the cables of a group belong to the class. */
  boolean counts(int group) {
    return counts[group];
  }

  /** Whether no cables of the class that fit the sizes have shares of more than the rent. */
  boolean fitWithin(Sizes sizes, long rent, long[] byGroup) {
    long[] each = perCable(byGroup);
    int fit = extra(sizes).length;
    long sum = 0;
    for (int n = 0; n < each.length && n < fit; n++) {
      sum = Math.addExact(sum, each[n]);
    }
    return sum <= rent;
  }

  /**
   * Whether any n cables, for each n that fits at all, have shares of at most the price and what
   * the hole costs for n more.
   */
  boolean covers(Sizes sizes, long price, long[] byGroup) {
    long[] each = perCable(byGroup);
    long[] extra = extra(sizes);
    long sum = 0;
    for (int n = 1; n <= each.length && n <= extra.length; n++) {
      sum = Math.addExact(sum, each[n - 1]);
      if (sum > Math.addExact(price, extra[n - 1])) {
        return false;
      }
    }
    return true;
  }

  /** The share of each cable, rounded up, the largest first. */
  private long[] perCable(long[] byGroup) {
    long[] out = new long[most];
    int at = 0;
    for (int g = 0; g < byGroup.length; g++) {
      int runs = counts[g] ? proof.commodities.get(g).runs() : 0;
      if (runs == 0) {
        continue;
      }
      long each = Math.floorDiv(Math.addExact(byGroup[g], (long) runs - 1), runs);
      Arrays.fill(out, at, at + runs, -each);
      at += runs;
    }
    Arrays.sort(out);
    return Arrays.stream(out).map(v -> -v).toArray();
  }

  /** Entry n - 1 for n cables; ends before the first number that does not fit. */
  private long[] extra(Sizes sizes) {
    long second = proof.scale.second(sizes.hole());
    return known.computeIfAbsent(List.of(sizes.steps(), second), k -> work(sizes.steps(), second));
  }

  private long[] work(List<RouteGraph.Step> steps, long second) {
    OptionalLong[] one = new OptionalLong[most + 1];
    for (int n = 0; n <= most; n++) {
      one[n] = n > 0 && one[n - 1].isEmpty() ? one[n - 1] : bit(steps, n);
    }
    long[] out = new long[most];
    for (int n = 1; n <= most; n++) {
      OptionalLong least = one[n];
      for (int left = 1; second >= 0 && left < n; left++) {
        OptionalLong two = both(one[left], one[n - left], second);
        least = less(two, least) ? two : least;
      }
      if (least.isEmpty()) {
        return Arrays.copyOf(out, n - 1);
      }
      out[n - 1] = least.getAsLong();
    }
    return out;
  }

  private OptionalLong bit(List<RouteGraph.Step> steps, int n) {
    if (steps.isEmpty()) {
      return OptionalLong.of(0);
    }
    List<Cable> cables = slimmest(n);
    return steps.stream()
        .filter(s -> Fit.fits(cables, s.diameterMm()))
        .mapToLong(RouteGraph.Step::extra)
        .min();
  }

  /**
   * Where any n of the runs fit, so do n with the slimmest jackets and the slimmest head, pulled in
   * the order of their names: the last meets the second widest jacket, as the last of any n does at
   * least.
   */
  private List<Cable> slimmest(int n) {
    List<Cable> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      String name = String.format(Locale.ROOT, "%09d", i);
      out.add(new Cable(name, jackets.get(i), head, Length.ZERO, false, false, false, "reckoned"));
    }
    return out;
  }

  private static OptionalLong both(OptionalLong a, OptionalLong b, long second) {
    return a.isEmpty() || b.isEmpty()
        ? OptionalLong.empty()
        : OptionalLong.of(Math.addExact(second, Math.addExact(a.getAsLong(), b.getAsLong())));
  }

  private static boolean less(OptionalLong a, OptionalLong b) {
    return a.isPresent() && (b.isEmpty() || a.getAsLong() < b.getAsLong());
  }
}
