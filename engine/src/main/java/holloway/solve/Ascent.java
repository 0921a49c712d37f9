package holloway.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Raises the bound of a part by column generation: the groups' short paths at the present shares
 * join a model of the bound, the model's best shares are found, and the next shares lie between the
 * best proven so far and those (Wentges 1997 smoothed the multipliers so). What counts is only what
 * the shortest paths over the whole graph prove.
 */
final class Ascent {
  /** Paths a group adds in one step, besides its shortest. */
  private static final int NEAR = 200;

  /** How much longer than the shortest these may be, in average prices of works. */
  private static final double SLACK = 1.5;

  /** Steps of the model between two looks at the graph. */
  private static final int INNER = 200;

  /** The model's step, found by trial: larger ones swing, smaller ones crawl. */
  private static final double STRIDE = 64;

  /** The model's temperature is each group's part of what is open, over this. */
  private static final double COOL = 100;

  /** A gain is little below this part of what is open; so many little ones and the part stalls. */
  private static final double LITTLE = 1 / 40.0;

  private static final int PATIENCE = 3;

  /**
   * Where the known paths still promise more the part waits longer: a look may find what is new.
   */
  private static final int LONGEST_WAIT = 15;

  private static final int CANDIDATES = 4;

  /** By so many temperatures a group the model may lie below what its known paths prove. */
  private static final double SOFT = 8;

  private final List<Groups.Group> groups;
  private final GroupPaths paths;
  private final BoundPart part;
  private final Shares shares;
  private final Shares inner;
  private final PathPool[] pools;
  private final Watch watch;
  private final long target;
  private final long typical;
  private final long[] each;
  private double mix = 1;

  /** What the model thought its shares would prove. */
  private double promised;

  private int slow;

  /**
   * @param target value to aim at, without what the part pays anyway
   * @param watch may end it between steps, and a step after its look at the graph
   */
  Ascent(BoundPart part, List<Groups.Group> groups, GroupPaths paths, long target, Watch watch) {
    this.watch = watch;
    this.part = part;
    this.groups = groups;
    this.paths = paths;
    this.target = target;
    shares = part.best.copy();
    typical = (long) shares.places.rowPrice.stream().mapToLong(Long::longValue).average().orElse(1);
    inner = part.best.copy();
    pools = new PathPool[groups.size()];
    each = new long[groups.size()];
    List<List<Path>> known = new ArrayList<>();
    for (int g = 0; g < pools.length; g++) {
      pools[g] = new PathPool(paths, g);
      known.add(new ArrayList<>());
      for (Path p : part.known == null ? List.<Path>of() : part.known.get(g)) {
        if (paths.lengths.open(p, g) && pools[g].add(p)) {
          known.get(g).add(p);
        }
      }
    }
    part.known = known;
  }

  /**
   * Some steps, the first in any case; stops early once the target is reached, the part turns out
   * impossible or time is up.
   */
  void run(int most) {
    for (int i = 0; i < most && !part.impossible && !part.stalled && part.value < target; i++) {
      if (i > 0 && watch.over()) {
        return;
      }
      long before = part.value;
      once();
      boolean little =
          before != Long.MIN_VALUE && part.value - before < LITTLE * (target - part.value);
      slow = little ? slow + 1 : 0;
      boolean promising = promised - part.value > LITTLE * (target - part.value);
      part.stalled = slow >= (promising ? LONGEST_WAIT : PATIENCE);
    }
  }

  private void once() {
    long value = look();
    if (part.impossible) {
      return;
    }
    if (value > part.value) {
      part.value = value;
      part.each = each.clone();
      part.improve(shares);
      mix = Math.min(1, 1.3 * mix);
    } else {
      mix = Math.max(0.2, 0.6 * mix);
    }
    if (part.value >= target || timeUp()) {
      return;
    }
    double open = target - part.value;
    double temperature = Math.max(1, open / groups.size() / COOL / part.cool);
    ShareModel model = model(temperature);
    model.raise(INNER, temperature, STRIDE, this::timeUp);
    promised = model.value();
    model.writeTo(inner);
    part.often = model.often(part.works());
    part.candidates = candidates();
    between();
  }

  /**
   * The model goes on from its own last shares, unless the new paths tell that they are worse than
   * the best proven.
   */
  private ShareModel model(double temperature) {
    ShareModel own = new ShareModel(inner, pools);
    double soft = groups.size() * temperature * SOFT;
    if (own.valueAt(temperature) >= part.value - soft) {
      return own;
    }
    inner.copyFrom(part.best);
    return new ShareModel(inner, pools);
  }

  /** Nobody asks the clock where there is none to look at. */
  private boolean timeUp() {
    return watch.timed() && watch.over();
  }

  /** Looks for the shortest paths at the shares; their sum. */
  private long look() {
    List<List<Path>> found = new ArrayList<>();
    groups.forEach(g -> found.add(null));
    long open = target - Math.max(0, part.value);
    long slack = Math.max(1, Math.min(open / 2, Math.round(SLACK * typical)));
    IntStream.range(0, groups.size())
        .parallel()
        .forEach(g -> found.set(g, paths.near(g, shares.units[g], slack, NEAR)));
    long value = -shares.rents();
    for (int g = 0; g < found.size(); g++) {
      if (found.get(g).isEmpty()) {
        part.impossible = true;
        return Long.MIN_VALUE;
      }
      each[g] = found.get(g).get(0).price();
      value = Math.addExact(value, each[g]);
      for (Path p : found.get(g)) {
        if (pools[g].add(p)) {
          part.known.get(g).add(p);
        }
      }
    }
    return value;
  }

  /** The next shares to look at: from the best ones towards the model's. */
  private void between() {
    Shares old = shares.copy();
    for (int g = 0; g < shares.units.length; g++) {
      long[] from = part.best.units[g];
      for (int p = 0; p < from.length; p++) {
        shares.units[g][p] = from[p] + (long) Math.floor(mix * (inner.units[g][p] - from[p]));
      }
    }
    for (int l = 0; l < shares.lift.length; l++) {
      long from = part.best.lift[l];
      shares.lift[l] = from + (long) Math.floor(mix * (inner.lift[l] - from));
    }
    for (int h = 0; h < shares.rent.length; h++) {
      long from = part.best.rent[h];
      shares.rent[h] = from + (long) Math.floor(mix * (inner.rent[h] - from));
    }
    shares.projectAll();
    for (int g = 0; g < shares.units.length; g++) {
      for (int p = 0; p < old.units[g].length; p++) {
        if (shares.units[g][p] != old.units[g][p]) {
          paths.changed(g, p);
        }
      }
    }
  }

  /** Works that the fractional routing opens in part, the dearest in doubt first. */
  private int[] candidates() {
    Comparator<Integer> worst = Comparator.comparingDouble(w -> -doubt(w));
    return IntStream.range(0, part.works())
        .boxed()
        .filter(w -> !part.blocked.contains(w) && doubt(w) > 1)
        .sorted(worst.thenComparing(Comparator.naturalOrder()))
        .limit(CANDIDATES)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /**
   * What is at stake. Two ways to make a hole that is made in any case are not in doubt: half of
   * each proves as much as one of them.
   */
  private double doubt(int work) {
    double y = 0;
    boolean paid = false;
    for (int w : shares.places.instead(work)) {
      y += part.often[w];
      paid |= Places.has(part.prepaid, w);
    }
    boolean settled = paid || part.often[work] < 0.05 || y > 0.95;
    return settled ? 0 : shares.places.priceOf(work) * Math.min(y, 1 - y);
  }
}
