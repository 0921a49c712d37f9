package holloway.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;

/**
 * The shortest path of one group when it pays its travel and its shares, with some zones shut: the
 * least any plan of those zones can charge to the group.
 */
final class GroupPaths {
  private final Task task;
  private final Network net;
  private final List<Groups.Group> groups;
  private final Places places;
  private final Queue<Desk> desks = new ConcurrentLinkedQueue<>();
  private final AtomicLong looks = new AtomicLong();

  /** What each arc costs, reckoned anew at each question. */
  final GroupLengths lengths;

  private final long[][] holePrice;
  private final long[][] arcPrice;

  /** Prices of all groups together are too many to be kept: they are reckoned for each search. */
  private final boolean lean;

  private final IntList[] stale;

  /** So many prices are kept at most, half a gigabyte of them. */
  private static final long MOST_KEPT = 60_000_000;

  /** What one thread needs for itself; groups are looked at side by side. */
  private final class Desk {
    final ShortestPaths search = new ShortestPaths(net);
    final NearPaths near = new NearPaths(net);
    final int[] mark = new int[net.edges];
    final long[] start = new long[net.nodes];
    final long[] arcs = lean ? new long[2 * net.edges] : null;
    final long[] holes = lean ? new long[net.methods.length] : null;
    int stamp;
  }

  /**
   * @param shutWorks zones not to be had, besides what the order bans
   * @param fits by group kind and hole: whether one such cable passes
   */
  GroupPaths(
      Task task, List<Groups.Group> groups, Places places, boolean[] shutWorks, boolean[][] fits) {
    this.groups = groups;
    this.task = task;
    this.net = task.net;
    this.places = places;
    lean = 2L * net.edges * groups.size() > MOST_KEPT;
    holePrice = new long[groups.size()][];
    arcPrice = new long[groups.size()][];
    stale = new IntList[groups.size()];
    Arrays.setAll(stale, g -> new IntList());
    lengths = new GroupLengths(net, groups, places, shutWorks, fits);
  }

  long looks() {
    return looks.get();
  }

  /** A share of the group changed; edges near the place are priced anew before the next search. */
  void changed(int group, int place) {
    stale[group].add(place);
  }

  /** The path with its exact price, or null if the group has none. */
  Path find(int group, long[] units) {
    Desk free = desks.poll();
    Desk desk = free == null ? new Desk() : free;
    try {
      return find(group, units, desk);
    } finally {
      leave(group, desk);
    }
  }

  private Path find(int group, long[] units, Desk desk) {
    Groups.Group g = groups.get(group);
    prepare(group, units, desk);
    long before = desk.search.looks();
    ShortestPaths.Lengths at = new ShortestPaths.Lengths(arcPrice[group], null);
    Path found = desk.search.find(task.ends[g.from()], desk.start, task.ends[g.to()], at, g.pin());
    looks.addAndGet(desk.search.looks() - before);
    return found;
  }

  /**
   * The path with its exact price first, then others that are longer by at most the slack; none if
   * the group has none. A pinned group gets its path alone.
   */
  List<Path> near(int group, long[] units, long slack, int most) {
    Groups.Group g = groups.get(group);
    if (g.pin() != null) {
      Path only = find(group, units);
      return only == null ? List.of() : List.of(only);
    }
    Desk free = desks.poll();
    Desk desk = free == null ? new Desk() : free;
    try {
      prepare(group, units, desk);
      long before = desk.near.looks();
      List<Path> found =
          desk.near.find(
              task.ends[g.from()], desk.start, task.ends[g.to()], arcPrice[group], slack, most);
      looks.addAndGet(desk.near.looks() - before);
      return found;
    } finally {
      leave(group, desk);
    }
  }

  private void leave(int group, Desk desk) {
    if (lean) {
      holePrice[group] = null;
      arcPrice[group] = null;
    }
    desks.add(desk);
  }

  private void prepare(int group, long[] units, Desk desk) {
    if (arcPrice[group] == null) {
      priceAll(group, units, desk);
    } else {
      priceStale(group, units, desk);
    }
    stale[group].clear();
    for (int s : task.ends[groups.get(group).from()]) {
      desk.start[s] = lengths.startOf(s, units);
    }
  }

  /** As if the group had no shares, then what is near its shares: most places have none. */
  private void priceAll(int group, long[] units, Desk desk) {
    holePrice[group] = lean ? desk.holes : new long[net.methods.length];
    arcPrice[group] = lean ? desk.arcs : new long[2 * net.edges];
    for (int h = 0; h < net.methods.length; h++) {
      holePrice[group][h] = lengths.passes(group, h) ? 0 : Network.SHUT;
    }
    for (int arc = 0; arc < 2 * net.edges; arc++) {
      arcPrice[group][arc] = bare(arc, group);
    }
    stale[group].clear();
    for (int p = 0; p < units.length; p++) {
      if (units[p] > 0) {
        stale[group].add(p);
      }
    }
    priceStale(group, units, desk);
  }

  private long bare(int arc, int group) {
    int e = arc >> 1;
    if (lengths.isShut(arc)) {
      return Network.SHUT;
    }
    long sum = lengths.travelOf(arc, group);
    for (int h : net.edgeHoles[e]) {
      sum = Math.min(Network.SHUT, sum + holePrice[group][h]);
    }
    return Math.min(Network.SHUT, sum);
  }

  private void priceStale(int group, long[] units, Desk desk) {
    desk.stamp++;
    for (int i = 0; i < stale[group].size(); i++) {
      int hole = places.holeAt(stale[group].get(i));
      if (hole >= 0) {
        priceHole(group, hole, units);
      }
    }
    for (int i = 0; i < stale[group].size(); i++) {
      for (int e : places.edgesNear(stale[group].get(i))) {
        if (desk.mark[e] != desk.stamp) {
          desk.mark[e] = desk.stamp;
          priceEdge(group, e, units);
        }
      }
    }
  }

  private void priceHole(int group, int h, long[] units) {
    holePrice[group][h] =
        lengths.fits(group, h) ? lengths.holeOf(h, places.holePlaces[h], units) : Network.SHUT;
  }

  private void priceEdge(int group, int e, long[] units) {
    arcPrice[group][2 * e] = price(2 * e, group, units);
    arcPrice[group][2 * e + 1] = price(2 * e + 1, group, units);
  }

  private long price(int arc, int group, long[] units) {
    int e = arc >> 1;
    if (lengths.isShut(arc)) {
      return Network.SHUT;
    }
    long sum = lengths.travelOf(arc, group) + GroupLengths.sum(places.arcPlaces[arc], units);
    int[] holes = net.edgeHoles[e];
    int[][][] own = places.ownHolePlaces[arc];
    for (int i = 0; i < holes.length; i++) {
      int h = holes[i];
      long p = holePrice[group][h];
      if (own != null && own[i] != places.holePlaces[h] && p < Network.SHUT) {
        p = lengths.holeOf(h, own[i], units);
      }
      sum = Math.min(Network.SHUT, sum + p);
    }
    return sum;
  }
}
