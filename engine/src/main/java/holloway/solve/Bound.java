package holloway.solve;

import holloway.plan.Certificate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * Proves a lower bound: shares of works, one part for each set of zones, the least of all parts.
 */
final class Bound {
  private static final int BATCH = 20;

  private final Task task;
  private final Network net;
  private final Budget budget;
  private final Progress progress;
  private final int[] zones;

  Bound(Task task, Budget budget, Progress progress) {
    this.task = task;
    this.net = task.net;
    this.budget = budget;
    this.progress = progress;
    zones = ZoneSubsets.enumerated(net);
  }

  /** A bound for plans of exactly these runs; {@code best} is a plan of them. */
  Certificate prove(int[] runs, Solution best) {
    int[] paid = paidByAll(runs);
    long always = 0;
    boolean[] free = new boolean[net.workPrice.length];
    for (int w : paid) {
      always = Math.addExact(always, net.workPrice[w]);
      free[w] = true;
    }
    for (int z : zones) {
      free[z] = true;
    }
    Groups groups = new Groups(task, runs);
    LeastExtra least = new LeastExtra(net, task.capacity.kindList(), runs.length);
    boolean directed =
        groups.list.stream().allMatch(Groups.Group::rooted)
            && Places.mayDirect(net, groups.list.size(), least, runs.length);
    Places places = new Places(net, free, directed, least);
    Shares start = new StartShares(task, places, groups.list).of(best);
    boolean[][] fits = fits(directed);
    List<ZonePart> parts = new ArrayList<>();
    for (int mask = (1 << zones.length) - 1; mask >= 0; mask--) {
      parts.add(new ZonePart(mask, always));
    }
    raise(parts, groups, start, fits, best.price());
    return certificate(parts, paid, groups, places, best.price());
  }

  /** One set of zones with what is known of it. */
  private final class ZonePart {
    final int mask;
    final long fixed;
    BoundPart part;
    long known;

    ZonePart(int mask, long always) {
      this.mask = mask;
      long sum = always;
      for (int i = 0; i < zones.length; i++) {
        sum = Math.addExact(sum, (mask >> i & 1) == 1 ? net.workPrice[zones[i]] : 0);
      }
      fixed = sum;
      known = sum;
    }

    boolean[] shut() {
      boolean[] out = new boolean[net.workPrice.length];
      for (int i = 0; i < zones.length; i++) {
        out[zones[i]] = (mask >> i & 1) == 0;
      }
      return out;
    }
  }

  /** Always works on the part with the least bound, for only that one holds the whole back. */
  private void raise(
      List<ZonePart> parts, Groups groups, Shares start, boolean[][] fits, long target) {
    int rounds = Math.max(1, budget.boundSteps() * 2 / BATCH);
    long looks = 0;
    for (int i = 0; i < rounds + parts.size(); i++) {
      ZonePart least = least(parts);
      if (least.known >= target || looks > budget.looks()) {
        return;
      }
      if (least.part == null) {
        Shares warm = nearest(parts, least, start);
        GroupPaths paths = new GroupPaths(task, groups.list, start.places, least.shut(), fits);
        least.part = new BoundPart(groups.list, paths, warm, target - least.fixed);
      }
      long before = least.part.looks();
      least.part.step(BATCH);
      least.part.release();
      looks += least.part.looks() - before;
      least.known =
          least.part.impossible()
              ? Network.SHUT
              : Math.max(least.known, Math.addExact(least.fixed, least.part.value()));
      progress.at("proving the bound", i + 1, rounds);
    }
  }

  private static ZonePart least(List<ZonePart> parts) {
    ZonePart out = parts.get(0);
    for (ZonePart p : parts) {
      out = p.known < out.known ? p : out;
    }
    return out;
  }

  /** The shares of the part with most zones in common, or the first guess. */
  private static Shares nearest(List<ZonePart> parts, ZonePart wanted, Shares start) {
    ZonePart near = null;
    for (ZonePart p : parts) {
      if (p.part != null
          && p.part.best() != null
          && (near == null || apart(p, wanted) < apart(near, wanted))) {
        near = p;
      }
    }
    return near == null ? start.copy() : near.part.best().copy();
  }

  private static int apart(ZonePart a, ZonePart b) {
    return Integer.bitCount(a.mask ^ b.mask);
  }

  /** Works at all alternatives of an end that some run has. */
  private int[] paidByAll(int[] runs) {
    TreeSet<Integer> out = new TreeSet<>();
    for (int run : runs) {
      for (int end : new int[] {task.demands[run].from(), task.demands[run].to()}) {
        int[] nodes = task.ends[end];
        for (int w : net.nodeWorks[nodes[0]]) {
          if (Arrays.stream(nodes).allMatch(v -> Places.has(net.nodeWorks[v], w))) {
            out.add(w);
          }
        }
      }
    }
    for (int z : zones) {
      out.remove(z);
    }
    return out.stream().mapToInt(Integer::intValue).toArray();
  }

  /** When directed, a hole that any kind passes is open to all, as the argument needs. */
  private boolean[][] fits(boolean directed) {
    int kinds = task.capacity.kinds();
    boolean[][] out = new boolean[kinds][net.methods.length];
    for (int h = 0; h < net.methods.length; h++) {
      boolean any = false;
      for (int k = 0; k < kinds; k++) {
        int[] one = new int[kinds];
        one[k] = 1;
        out[k][h] = task.capacity.bores(h, one).fits();
        any |= out[k][h];
      }
      for (int k = 0; k < kinds && directed; k++) {
        out[k][h] = any;
      }
    }
    return out;
  }

  private Certificate certificate(
      List<ZonePart> parts, int[] paid, Groups groups, Places places, long objective) {
    long bound = objective;
    List<Certificate.Part> out = new ArrayList<>();
    for (ZonePart p : parts) {
      bound = Math.min(bound, p.known);
      List<Integer> prepaid = new ArrayList<>();
      for (int i = 0; i < zones.length; i++) {
        if ((p.mask >> i & 1) == 1) {
          prepaid.add(zones[i]);
        }
      }
      boolean impossible = p.part != null && p.part.impossible();
      List<Certificate.Share> shares =
          p.part == null || p.part.best() == null ? List.of() : listShares(p.part.best(), places);
      out.add(new Certificate.Part(prepaid, p.known, impossible, shares));
    }
    List<List<String>> runs = new ArrayList<>();
    for (Groups.Group g : groups.list) {
      runs.add(Arrays.stream(g.runs()).mapToObj(r -> task.order.runs().get(r).id()).toList());
    }
    return new Certificate(
        net.profile.word(),
        bound,
        Arrays.stream(paid).boxed().toList(),
        Arrays.stream(zones).boxed().toList(),
        runs,
        places.directed,
        out);
  }

  private static List<Certificate.Share> listShares(Shares shares, Places places) {
    if (!shares.valid()) {
      throw new IllegalStateException("shares exceed the price of a work");
    }
    List<Certificate.Share> out = new ArrayList<>();
    for (int p = 0; p < places.places.size(); p++) {
      for (int g = 0; g < shares.units.length; g++) {
        if (shares.units[g][p] > 0) {
          Places.Place at = places.places.get(p);
          out.add(new Certificate.Share(at.work(), at.kind(), at.at(), g, shares.units[g][p]));
        }
      }
    }
    return out;
  }
}
