package holloway.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Looks for the cheapest joint plan: sets of zones, insertion, then ruin and recreate. */
final class PlanSearch {
  private static final long SEED = 7;
  private static final int POLISHED_SETS = 2;

  /** New starts for each insertion order of the budget. */
  private static final int STARTS = 3;

  /** As a part of the price: where more is open than this it may be the plan that is at fault. */
  static final double FAR = 0.01;

  private final Task task;
  private final Budget budget;
  private final Progress progress;
  private final Watch watch;
  private final Zones zones;
  private final Draft draft;
  private final MarginalSearch search;

  PlanSearch(Task task, Budget budget, Progress progress) {
    this(task, budget, progress, new Watch(Stop.NEVER));
  }

  PlanSearch(Task task, Budget budget, Progress progress, Watch watch) {
    this.watch = watch;
    this.task = task;
    this.budget = budget;
    this.progress = progress;
    zones = new Zones(task.net);
    draft = new Draft(task, zones);
    search = new MarginalSearch(draft, zones);
  }

  /** The best plan for the runs; some may stay without a path where holes are full. */
  Solution run(int[] runs) {
    List<int[]> orders = orders(runs);
    Solution best = independent(runs);
    ZoneSubsets subsets = new ZoneSubsets(draft, zones, search);
    List<ZoneSubsets.Tried> tried = subsets.run(orders, progress, watch);
    int sets = Math.min(POLISHED_SETS, tried.size());
    for (int i = 0; i < sets && (i == 0 || !watch.over()); i++) {
      subsets.enter(tried.get(i).mask(), false);
      draft.load(tried.get(i).best().betterThan(best) || i > 0 ? tried.get(i).best() : best);
      Solution s = improve(runs, i == 0 ? budget.ruins() : budget.ruins() / 4, sets);
      best = s.betterThan(best) ? s : best;
    }
    return finish(best.routed() < runs.length ? rescued(runs, best) : best);
  }

  private Solution rescued(int[] runs, Solution some) {
    draft.clear();
    zones.reset();
    search.refresh();
    Solution more = new LeftOut(draft, search, watch).rescue(runs, some);
    if (more.routed() < runs.length && !watch.over()) {
      Bound.Ground ground = new Bound(task, budget, Progress.SILENT).ground(runs);
      more = new Finish(task, ground, budget.finish(), watch).more(more);
    }
    draft.load(more);
    return more.routed() > some.routed() ? improve(runs, budget.ruins() / 4, 2) : some;
  }

  /**
   * Starts from paths of an earlier plan and mends it: who lost its path gets another, and each
   * looks round once or twice. That takes a few milliseconds; how good it is, a bound has to say.
   *
   * @param known by run: a path that is still open, or null
   */
  Solution mend(int[] runs, Path[] known) {
    draft.clear();
    zones.reset();
    search.refresh();
    for (int run : runs) {
      Path p = known[run];
      Demand d = task.demands[run];
      if (p != null
          && Places.has(draft.alternatives(d.from()), p.start())
          && Places.has(draft.alternatives(d.to()), p.end(task.net))) {
        draft.add(run, p);
        if (draft.price() >= Network.SHUT) {
          draft.remove(run);
        }
      }
    }
    Insertion insertion = new Insertion(draft, search);
    insertion.insert(runs);
    insertion.polish(runs, 2);
    return finish(draft.save());
  }

  /** The plan, or the better one that ruin and recreate and the rest make of it. */
  Solution improved(int[] runs, Solution known) {
    draft.load(known);
    Solution s = finish(improve(runs, budget.ruins(), 2));
    return s.betterThan(known) ? s : known;
  }

  private Solution improve(int[] runs, int rounds, int sets) {
    long looks = budget.looks() / (2L * sets);
    new RuinRecreate(draft, zones, search, watch).improve(runs, rounds, looks, progress);
    new Company(draft, search, watch).improve(runs, looks / 4);
    new PaidOnce(draft, search, watch).improve(runs, looks / 4);
    new Exchange(draft).improve(runs);
    return draft.save();
  }

  private Solution independent(int[] runs) {
    draft.clear();
    zones.reset();
    search.refresh();
    new Insertion(draft, search).independent(runs);
    return draft.save();
  }

  /** Follows the opening prices that a proof suggests; returns the better of old and new plan. */
  Solution guided(int[] runs, Solution known, long[] openingPrices) {
    Solution best = known;
    for (int[] order : orders(runs)) {
      if (watch.over()) {
        return finish(best);
      }
      led(order, openingPrices);
      Solution s = draft.save();
      best = s.betterThan(best) ? s : best;
    }
    draft.load(best);
    Solution s = improve(runs, budget.ruins() / 4, 2);
    return finish(s.betterThan(best) ? s : best);
  }

  /**
   * Starts anew several times, each time led by other opening prices, because from one start all
   * that is tried afterwards ends in the same plan.
   *
   * @param guides opening prices that proofs suggest
   * @param bound what is proven: a plan so near to it that it need not be asked about ends it
   */
  Solution restarted(int[] runs, Solution known, List<long[]> guides, long bound) {
    List<int[]> orders = orders(runs);
    SplittableRandom random = new SplittableRandom(SEED);
    Solution best = known;
    long stop = search.looks() + budget.looks() / 4;
    long enough = (long) (bound / (1 - FAR));
    int starts = STARTS * budget.orders();
    for (int i = 0; i < starts && best.price() > enough && search.looks() < stop; i++) {
      if (watch.over()) {
        break;
      }
      led(orders.get(i % orders.size()), varied(guides.get(i % guides.size()), random));
      Solution s = improve(runs, budget.ruins() / 8, 2);
      if (s.betterThan(best)) {
        best = finish(s);
        progress.closing(best.price(), bound);
      }
      progress.at("starting anew", i + 1, starts);
    }
    return best;
  }

  /** Each price between half and double. */
  private static long[] varied(long[] prices, SplittableRandom random) {
    long[] out = new long[prices.length];
    for (int w = 0; w < out.length; w++) {
      double more = 1 + random.nextDouble();
      out[w] = Math.round(random.nextBoolean() ? prices[w] * more : prices[w] / more);
    }
    return out;
  }

  private void led(int[] order, long[] openingPrices) {
    draft.clear();
    zones.reset();
    zones.discount(openingPrices);
    search.refresh();
    new Insertion(draft, search).insert(order);
    zones.discount(null);
    search.refresh();
    new Insertion(draft, search).polish(order, 2);
  }

  private Solution finish(Solution best) {
    draft.load(best);
    new MethodChoice(draft).improve();
    new MethodsExact(draft).settle();
    return draft.save();
  }

  /** By length alone, longest first and shortest first, then shuffles. */
  private List<int[]> orders(int[] runs) {
    long[] alone = new long[task.runs()];
    for (int run : runs) {
      Path p = search.find(run);
      alone[run] = p == null ? 0 : p.price();
    }
    List<int[]> out = new ArrayList<>();
    out.add(sorted(runs, Comparator.comparingLong(r -> -alone[r])));
    out.add(sorted(runs, Comparator.comparingLong(r -> alone[r])));
    SplittableRandom random = new SplittableRandom(SEED);
    while (out.size() < budget.orders()) {
      long[] key = new long[task.runs()];
      for (int run : runs) {
        key[run] = random.nextLong();
      }
      out.add(sorted(runs, Comparator.comparingLong(r -> key[r])));
    }
    return out.subList(0, budget.orders());
  }

  private static int[] sorted(int[] runs, Comparator<Integer> by) {
    return IntStream.of(runs)
        .boxed()
        .sorted(by.thenComparing(Comparator.naturalOrder()))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
