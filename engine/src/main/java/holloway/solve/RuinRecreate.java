package holloway.solve;

import holloway.hollow.WorkKind;
import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Takes a few runs out of a draft, sometimes shutting the hole or work they shared or making
 * another one free for the moment, puts them back at marginal price, and keeps what is better
 * (early on also what is a little worse). Its generator has a fixed seed.
 */
final class RuinRecreate {
  private static final long SEED = 0x40110;

  private final Draft draft;
  private final Network net;
  private final Zones zones;
  private final MarginalSearch search;
  private final Watch watch;
  private final Insertion insertion;
  private final MethodChoice methods;
  private final Strands strands;
  private final Ruins ruins;
  private final SplittableRandom random = new SplittableRandom(SEED);

  RuinRecreate(Draft draft, Zones zones, MarginalSearch search, Watch watch) {
    this.watch = watch;
    this.draft = draft;
    this.net = draft.net;
    this.zones = zones;
    this.search = search;
    insertion = new Insertion(draft, search);
    methods = new MethodChoice(draft);
    strands = new Strands(draft);
    ruins = new Ruins(draft, strands, random);
  }

  /** Starts from what the draft holds and leaves the best plan found in it. */
  Solution improve(int[] runs, int rounds, long mostLooks, Progress progress) {
    Solution best = draft.save();
    long stop = search.looks() + mostLooks;
    double heat = largestWork() * 0.3;
    for (int i = 0; i < rounds && search.looks() < stop && runs.length > 0; i++) {
      if (watch.over()) {
        break;
      }
      round(runs, heat * (rounds - i) / rounds, i % 4 == 3);
      Solution now = draft.save();
      if (now.betterThan(best)) {
        best = now;
      }
      if (i % 50 == 49) {
        draft.load(best);
        progress.at("improving the plan", i + 1, rounds);
      }
    }
    draft.load(best);
    return best;
  }

  private long largestWork() {
    long most = 0;
    for (int w = 0; w < net.workPrice.length; w++) {
      boolean zone = net.graph.works().get(w).kind() == WorkKind.ZONE;
      most = !zone && draft.isOpen(w) ? Math.max(most, net.workPrice[w]) : most;
    }
    return most;
  }

  private void round(int[] runs, double heat, boolean cold) {
    Solution before = draft.save();
    Ruins.Ruin ruin = ruins.choose(runs);
    int[] out = shuffled(strands.whole(ruin.runs()));
    for (int run : out) {
      if (draft.paths[run] != null) {
        draft.remove(run);
      }
    }
    recreate(ruin, out);
    methods.improve();
    double slack = cold ? 0 : heat * random.nextDouble();
    boolean keep =
        draft.routed() > before.routed()
            || draft.routed() == before.routed() && draft.price() <= before.price() + slack;
    if (!keep) {
      putBack(before, out);
    }
  }

  private void recreate(Ruins.Ruin ruin, int[] out) {
    if (ruin.shutHole() >= 0) {
      search.shutHole(ruin.shutHole(), true);
    }
    int work = ruin.work();
    boolean touched = work >= 0 && !zones.isShut(work) && !zones.isPrepaid(work);
    if (touched) {
      if (ruin.gift()) {
        zones.prepay(work);
      } else {
        zones.shut(work);
      }
      search.reprice(work);
    }
    insertion.insert(out);
    if (touched) {
      zones.priceAgain(work);
      search.reprice(work);
    }
    if (ruin.shutHole() >= 0) {
      search.shutHole(ruin.shutHole(), false);
    }
    insertion.insert(out);
  }

  private void putBack(Solution before, int[] out) {
    for (int run : out) {
      if (draft.paths[run] != null) {
        draft.remove(run);
      }
    }
    for (int run : out) {
      if (before.paths()[run] != null) {
        draft.add(run, before.paths()[run]);
      }
    }
    draft.restoreMethods(before);
  }

  private int[] shuffled(int[] runs) {
    int[] out = Arrays.copyOf(runs, runs.length);
    for (int i = out.length - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      int kept = out[i];
      out[i] = out[j];
      out[j] = kept;
    }
    return out;
  }
}
