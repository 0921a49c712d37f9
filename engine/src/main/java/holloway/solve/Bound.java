package holloway.solve;

import holloway.catalog.Cable;
import holloway.plan.Certificate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * Proves a lower bound: shares of works, one part for each set of zones, the least of all parts.
 */
final class Bound {
  private final Task task;
  private final Network net;
  private final Budget budget;
  private final Progress progress;
  private final Watch watch;
  private final int[] zones;
  private List<long[]> guides = List.of();
  private Ground ground;
  private List<BoundPart> proven;

  Bound(Task task, Budget budget, Progress progress) {
    this(task, budget, progress, new Watch(Stop.NEVER));
  }

  /**
   * @param watch ends it early: near enough, or when time is up, with what is proven by then
   */
  Bound(Task task, Budget budget, Progress progress, Watch watch) {
    this.watch = watch;
    this.task = task;
    this.net = task.net;
    this.budget = budget;
    this.progress = progress;
    zones = ZoneSubsets.enumerated(net);
  }

  /** What a proof for exactly these runs stands on. */
  record Ground(
      int[] runs,
      int[] paid,
      int[] zones,
      long always,
      Groups groups,
      Places places,
      boolean[][] fits) {}

  /** A bound for plans of exactly these runs; {@code best} is a plan of them. */
  Certificate prove(int[] runs, Solution best) {
    Ground on = ground(runs);
    Shares start = new StartShares(task, on.places(), on.groups().list).of(best);
    long aim = watch.enough(best.price(), net.grain());
    return raise(on, zoneParts(on.always(), start), aim, best.price());
  }

  /**
   * Raises the least of the parts.
   *
   * @param parts hold every plan, each in one of them
   * @param aim when all parts prove this much it is enough, at most {@code price}
   * @param price of a known plan
   */
  Certificate raise(Ground on, List<BoundPart> parts, long aim, long price) {
    BoundTree tree = new BoundTree(task, on.groups().list, on.places(), on.fits(), aim, parts);
    tree.raise(budget, progress, watch, price);
    guides = tree.guides();
    proven = tree.parts();
    ground = on;
    return certificate(proven, on.paid(), on.groups(), on.places(), price);
  }

  Ground ground(int[] runs) {
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
    int[] size = groups.list.stream().mapToInt(g -> g.runs().length).toArray();
    List<Cable> kinds = task.capacity.kindList();
    Roominess room =
        new Roominess(net, groups.list.stream().map(g -> kinds.get(g.kind())).toList(), size);
    boolean directed =
        net.alike()
            && groups.list.stream().allMatch(Groups.Group::rooted)
            && Directions.mayDirect(net, groups.list.size(), room.ofAll(), runs.length);
    Places places = new Places(net, free, directed, room);
    return new Ground(runs, paid, zones, always, groups, places, fits(directed));
  }

  /** After a proof: what it stands on, and its parts. */
  Ground ground() {
    return ground;
  }

  List<BoundPart> proven() {
    return proven;
  }

  /** After {@link #prove}: opening prices that lead a search to what the proof uses, or null. */
  long[] guide() {
    return guides.isEmpty() ? null : guides.get(0);
  }

  /** The same of several parts of the proof, that of the least first; empty if there are none. */
  List<long[]> guides() {
    return guides;
  }

  private List<BoundPart> zoneParts(long always, Shares start) {
    List<BoundPart> out = new ArrayList<>();
    for (int mask = (1 << zones.length) - 1; mask >= 0; mask--) {
      IntList prepaid = new IntList();
      IntList shut = new IntList();
      for (int i = 0; i < zones.length; i++) {
        ((mask >> i & 1) == 1 ? prepaid : shut).add(zones[i]);
      }
      out.add(BoundPart.ofZones(net, prepaid.toArray(), shut.toArray(), always, start));
    }
    return out;
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
      List<BoundPart> parts, int[] paid, Groups groups, Places places, long objective) {
    long bound = objective;
    List<Certificate.Part> out = new ArrayList<>();
    for (BoundPart p : parts) {
      bound = Math.min(bound, p.proved());
      out.add(
          new Certificate.Part(
              Arrays.stream(p.prepaid).boxed().toList(),
              Arrays.stream(p.shut).boxed().toList(),
              p.proved(),
              p.impossible,
              p.impossible || p.value == Long.MIN_VALUE ? List.of() : listShares(p.best, places)));
    }
    List<List<String>> runs = new ArrayList<>();
    for (Groups.Group g : groups.list) {
      runs.add(Arrays.stream(g.runs()).mapToObj(r -> task.order.runs().get(r).id()).toList());
    }
    long grain = net.grain();
    return new Certificate(
        net.profile.word(),
        Math.multiplyExact(Math.floorDiv(bound + grain - 1, grain), grain),
        grain,
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
    for (int l = 0; l < shares.lift.length; l++) {
      if (shares.lift[l] > 0) {
        Lifts.Lift lift = places.lifts().list.get(l);
        out.add(Certificate.Share.lift(lift.work(), lift.teller(), lift.without(), shares.lift[l]));
      }
    }
    int holes = places.holePlaces.length;
    for (int r = 0; r < shares.rent.length; r++) {
      if (shares.rent[r] > 0) {
        out.add(Certificate.Share.rent(r % holes, r / holes, shares.rent[r]));
      }
    }
    for (int p = 0; p < places.places.size(); p++) {
      for (int g = 0; g < shares.units.length; g++) {
        if (shares.units[g][p] > 0) {
          Places.Place at = places.places.get(p);
          long units = shares.units[g][p];
          out.add(new Certificate.Share(at.work(), at.kind(), at.at(), g, units));
        }
      }
    }
    return out;
  }
}
