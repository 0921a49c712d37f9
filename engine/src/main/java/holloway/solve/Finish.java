package holloway.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Tries everything that could be cheaper than the plan in hand, where that is not too much. In each
 * part of the proof a plan costs at least what the part proves and, for each run, what its path is
 * longer by than the least at the part's shares. So only paths count that are longer by less than
 * what is open between proof and plan, and only sets of them, one a run, that together are.
 * (Reduced cost fixing, taken to its end.)
 */
final class Finish {
  /** This part of the effort lists paths; what is left goes through sets of them. */
  private static final int LISTING = 10;

  private final Task task;
  private final Network net;
  private final Bound.Ground ground;
  private final List<Groups.Group> groups;
  private final Effort effort;
  private final Effort listing;
  private Solution best;

  /**
   * @param ground what a proof for the very runs stands on
   * @param steps how much may be tried, about as many as arcs could be looked at
   */
  Finish(Task task, Bound.Ground ground, long steps, Watch watch) {
    this.task = task;
    this.net = task.net;
    this.ground = ground;
    groups = ground.groups().list;
    effort = new Effort(steps, watch);
    listing = new Effort(steps / LISTING, watch);
  }

  /**
   * The cheapest plan of all if the effort was enough, else the best one met.
   *
   * @param known has all the runs
   * @param parts hold every plan of the runs, each in one of them
   */
  Solution cheapest(Solution known, List<BoundPart> parts) {
    best = known;
    for (BoundPart part : parts) {
      if (!part.impossible && part.proved() < best.price() && complete()) {
        Choices all = choices(part);
        best = all == null ? best : all.cheaper(best);
      }
    }
    return best;
  }

  /**
   * A plan with more of the runs than the known one; that one if there is none or it is too far.
   */
  Solution more(Solution known) {
    int[] size = groups.stream().mapToInt(g -> g.runs().length).toArray();
    Shares nothing = new Shares(ground.places(), size);
    int[] none = {};
    best = null;
    Choices all = choices(BoundPart.ofZones(net, none, none, 0, nothing));
    int missing = ground.runs().length - known.routed();
    for (int without = 0; all != null && without < missing; without++) {
      Solution s = all.any(without);
      if (s != null) {
        return s;
      }
    }
    return known;
  }

  /** False if not all was tried. */
  boolean complete() {
    return !effort.over() && !listing.over();
  }

  /** The paths that count in a part; null if no plan there can be better or there are too many. */
  private Choices choices(BoundPart part) {
    GroupPaths paths =
        new GroupPaths(task, groups, ground.places(), part.shutWorks(), ground.fits());
    WaysWithin ways = new WaysWithin(net);
    long[] least = new long[groups.size()];
    long proved = part.fixed - part.best.rents();
    for (int g = 0; g < least.length; g++) {
      effort.take(2L * net.edges);
      least[g] = effort.over() ? Network.SHUT : ways.least(wanted(paths, g, part.best.units[g]));
      if (least[g] >= Network.SHUT) {
        return null;
      }
      proved = Math.addExact(proved, least[g]);
    }
    long open = best == null ? Network.SHUT : best.price() - net.grain() - proved;
    List<Choices.Choice> all = new ArrayList<>();
    for (int g = 0; g < least.length && open >= 0 && complete(); g++) {
      int size = groups.get(g).runs().length;
      long more = open < Network.SHUT / size ? size * open : Network.SHUT;
      long longest = Math.min(Network.SHUT - 1, least[g] + more);
      WaysWithin.Wanted wanted = wanted(paths, g, part.best.units[g]);
      all.add(choice(g, ways.find(wanted, longest, listing), least[g]));
    }
    if (open < 0 || !complete()) {
      return null;
    }
    all.sort(Comparator.comparingInt(c -> c.paths().size()));
    return new Choices(task, all, proved, effort);
  }

  private WaysWithin.Wanted wanted(GroupPaths paths, int group, long[] units) {
    Groups.Group g = groups.get(group);
    long[] start = new long[net.nodes];
    for (int s : task.ends[g.from()]) {
      start[s] = paths.lengths.startOf(s, units);
    }
    long[] lengths = new long[2 * net.edges];
    for (int arc : net.arcs) {
      lengths[arc] = paths.lengths.lengthOf(arc, group, units);
    }
    return new WaysWithin.Wanted(task.ends[g.from()], start, task.ends[g.to()], lengths, g.pin());
  }

  /** The paths as the runs walk them, which a group may do the other way round. */
  private Choices.Choice choice(int group, List<Path> near, long least) {
    Groups.Group g = groups.get(group);
    boolean turned = task.demands[g.runs()[0]].from() != g.from();
    List<Path> out = new ArrayList<>();
    long[] over = new long[near.size()];
    for (int i = 0; i < over.length; i++) {
      Path p = near.get(i);
      over[i] = (p.price() - least) / g.runs().length;
      out.add(turned ? turned(p) : p);
    }
    return new Choices.Choice(g.runs(), out, over);
  }

  private Path turned(Path p) {
    int n = p.arcs().length;
    int[] arcs = new int[n];
    for (int i = 0; i < n; i++) {
      arcs[i] = p.arcs()[n - 1 - i] ^ 1;
    }
    return new Path(p.end(net), arcs, p.price());
  }
}
