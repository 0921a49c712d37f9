package holloway.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Divides the plans of an order into parts and raises the bound of whichever part has the least,
 * splitting it by a work (opened or not) when its shares get no further. Every plan stays in
 * exactly one part all the time.
 */
final class BoundTree {
  private static final int BATCH = 8;
  private static final int FEW = 2;
  private static final long MOST_SHARES = 20_000_000;
  private static final int MOST_BLOCKED = 6;
  private static final double COOLEST = 64;
  private static final int GUIDES = 12;

  /** Of what is open: so much more in one half is worth a split. */
  private static final double MUCH = 0.25;

  private final Task task;
  private final List<Groups.Group> groups;
  private final Places places;
  private final boolean[][] fits;
  private final long target;
  private final List<BoundPart> parts;
  private final long grain;
  private long looks;
  private BoundPart worked;
  private GroupPaths paths;
  private Ascent ascent;
  private Watch watch = new Watch(Stop.NEVER);
  private long told = -1;

  /**
   * @param target price of a known plan; a part that reaches it is done
   */
  BoundTree(
      Task task,
      List<Groups.Group> groups,
      Places places,
      boolean[][] fits,
      long target,
      List<BoundPart> zoneParts) {
    this.task = task;
    this.groups = groups;
    this.places = places;
    this.fits = fits;
    this.target = target;
    grain = task.net.grain();
    parts = new ArrayList<>(zoneParts);
  }

  List<BoundPart> parts() {
    return parts;
  }

  void raise(Budget budget, Progress progress) {
    raise(budget, progress, watch, target);
  }

  /**
   * Until all parts reach the target, the budget is spent or time is up; what the parts have proven
   * by then holds.
   *
   * @param price of the plan in hand, at least the target
   */
  void raise(Budget budget, Progress progress, Watch ended, long price) {
    watch = ended;
    rounds(budget, progress, price);
    tell(progress, price);
  }

  private void rounds(Budget budget, Progress progress, long price) {
    int rounds = Math.max(1, budget.boundSteps() / BATCH);
    long once = 2L * task.net.edges * groups.size();
    long most = most(budget.looks(), once);
    int begun = ofZones() ? climb(rounds / 2, most / 2, progress, rounds) : 0;
    for (int i = begun; i < rounds && looks < most; i++) {
      BoundPart least = least();
      if (least.proved() > target - grain) {
        return;
      }
      if (watch.over()) {
        return;
      }
      if (least.stalled && least.candidates.length > 0 && mayGrow(least)) {
        split(least, least.candidates[0]);
        i++;
      } else if (!least.stalled || cooled(least)) {
        work(least);
      } else {
        return;
      }
      tell(progress, price);
      progress.at("proving the bound", Math.min(i + 1, rounds), rounds);
    }
  }

  /**
   * Looks for the proof: a quarter of all, and the more of a third the longer it takes to see the
   * whole house once; but never too few to see it at all.
   */
  static long most(long all, long once) {
    long some = Math.min(all / 3, all / 4 + 60 * once);
    return Math.min(all, Math.max(some, 50 * once));
  }

  /** Nothing proven yet, and the first part has all zones. */
  private boolean ofZones() {
    boolean fresh = parts.size() > 1;
    for (BoundPart p : parts) {
      fresh &= p.whole && p.value == Long.MIN_VALUE && !p.impossible;
    }
    return fresh;
  }

  /**
   * Raises the part with all zones until it gets no further: whatever it proves its shares prove in
   * every other, so the steps are taken once and not in each. How many rounds that took.
   */
  private int climb(int most, long mostLooks, Progress progress, int rounds) {
    BoundPart all = parts.get(0);
    int done = 0;
    do {
      work(all);
      done++;
      progress.at("proving the bound", done, rounds);
    } while (done < most
        && looks < mostLooks
        && !all.stalled
        && !all.impossible
        && all.proved() <= target - grain
        && !watch.over());
    inherit();
    return done;
  }

  private void tell(Progress progress, long price) {
    long bound = Math.min(price, least().proved());
    if (bound > told) {
      told = bound;
      progress.closing(price, Math.floorDiv(bound + grain - 1, grain) * grain);
    }
  }

  /**
   * What the part with all zones proves its shares prove in every other, where there is only less
   * to walk on: no part is left with nothing, however soon the budget or the time is spent.
   */
  private void inherit() {
    BoundPart all = parts.get(0);
    for (BoundPart p : parts) {
      if (p != all && p.whole && (p.value < all.value || all.impossible)) {
        p.begin(all);
        p.value = all.value;
        p.impossible |= all.impossible;
        p.often = all.often;
      }
    }
  }

  /** Where no split helps, a cooler model may; false once it has been tried. */
  private boolean cooled(BoundPart part) {
    part.cool *= 4;
    part.stalled = false;
    worked = null;
    return part.cool <= COOLEST;
  }

  private boolean mayGrow(BoundPart part) {
    long each = Math.max(1, (long) places.places.size() * groups.size());
    return part.blocked.size() < MOST_BLOCKED && (parts.size() + 1) * each < MOST_SHARES;
  }

  /**
   * Opening prices for searches that follow the proof: low where a part uses a work often. One for
   * each of the parts with the least bounds that were worked on, the least first; empty if the
   * least of all was not.
   */
  List<long[]> guides() {
    if (least().often == null) {
      return List.of();
    }
    return parts.stream()
        .filter(p -> p.often != null && !p.impossible)
        .sorted(Comparator.comparingLong(BoundPart::proved))
        .limit(GUIDES)
        .map(this::guide)
        .toList();
  }

  private long[] guide(BoundPart part) {
    long[] out = task.net.workPrice.clone();
    for (int w = 0; w < out.length; w++) {
      boolean paid = Places.has(part.prepaid, w);
      out[w] = paid ? 0 : Math.round(out[w] * Math.max(0.02, 1.02 - part.often[w]));
    }
    return out;
  }

  private BoundPart least() {
    BoundPart out = parts.get(0);
    for (BoundPart p : parts) {
      out = p.proved() < out.proved() ? p : out;
    }
    return out;
  }

  private void work(BoundPart part) {
    work(part, Network.SHUT);
  }

  /**
   * Goes on where it left off if the part is the one it was at before.
   *
   * @param enough to be proven now; what proves so much is let be until it is the least
   */
  private void work(BoundPart part, long enough) {
    if (part != worked) {
      if (part.whole && part.known == null && parts.get(0).known != null) {
        part.begin(parts.get(0));
      }
      worked = part;
      // Before the next is made: what one knows of a large house is a third of its memory.
      ascent = null;
      paths = new GroupPaths(task, groups, places, part.shutWorks(), fits);
      begin(part);
      ascent = new Ascent(part, groups, paths, target - part.fixed, watch);
    }
    long before = paths.looks();
    ascent.run(FEW);
    for (int i = FEW; i < BATCH && part.proved() < enough && !part.stalled; i += FEW) {
      if (watch.over()) {
        break;
      }
      ascent.run(FEW);
    }
    looks += paths.looks() - before;
  }

  /** A part that has proved nothing yet starts from whichever first guess proves more. */
  private void begin(BoundPart part) {
    if (part.value == Long.MIN_VALUE && part.whole && !places.directed && !task.net.oneWay) {
      long guess = worth(part.best);
      Shares raised = new DualAscent(task, groups, places, paths, part.best.none()).run();
      if (guess < Network.SHUT && worth(raised) > guess) {
        part.best = raised;
      }
    }
  }

  /** What shares prove, or {@link Network#SHUT} if some group has no path. */
  private long worth(Shares shares) {
    GroupPaths fresh = new GroupPaths(task, groups, places, worked.shutWorks(), fits);
    long sum = -shares.rents();
    for (int g = 0; g < groups.size(); g++) {
      Path p = fresh.find(g, shares.units[g]);
      if (p == null) {
        return Network.SHUT;
      }
      sum += p.price();
    }
    return sum;
  }

  /**
   * Keeps the two halves if both prove more than the whole did, or one so much more that little is
   * left to be said of it: then the other has one doubt less, though it proves no more yet. Of a
   * chain of patches that is as good as another way, each would be tried else, and each in vain.
   */
  private void split(BoundPart whole, int work) {
    BoundPart with = whole.with(work);
    BoundPart without = whole.without(work);
    long much = whole.proved() + (long) (MUCH * (target - whole.proved()));
    work(with, much);
    work(without, much);
    long less = Math.min(with.proved(), without.proved()) - whole.proved();
    long more = Math.max(with.proved(), without.proved()) - whole.proved();
    // A half that time cut off keeps what it has, which may be less than the whole's.
    if (less > 0 || less == 0 && whole.proved() + more >= much) {
      parts.set(parts.indexOf(whole), letBe(with, much, whole));
      parts.add(letBe(without, much, whole));
    } else {
      whole.blocked.add(work);
      whole.stalled = false;
    }
  }

  /** What is not worked on soon needs no paths of its own: in a large house those fill memory. */
  private static BoundPart letBe(BoundPart half, long much, BoundPart whole) {
    half.known = half.proved() >= much ? whole.known : half.known;
    return half;
  }
}
