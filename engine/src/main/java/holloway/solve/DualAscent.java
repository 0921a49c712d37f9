package holloway.solve;

import java.util.Arrays;
import java.util.List;

/**
 * A first division of works into shares, by dual ascent: in turn each group's shortest path is made
 * a step longer with as little of what is left of the works near its end as that takes, until no
 * group gets further. After Wong (1984) and Balakrishnan, Magnanti and Wong (1989); how far a path
 * can get is found by one search with all that is left counted in.
 */
final class DualAscent {
  private static final int ROUNDS = 24;

  private final Network net;
  private final Task task;
  private final List<Groups.Group> groups;
  private final Places places;
  private final GroupPaths paths;
  private final Shares shares;
  private final long[] left;
  private final long[] top;
  private final BackSearch back;

  /**
   * @param paths knows what the part shuts
   * @param empty no shares at all; raised in place
   */
  DualAscent(Task task, List<Groups.Group> groups, Places places, GroupPaths paths, Shares empty) {
    this.task = task;
    this.net = task.net;
    this.groups = groups;
    this.places = places;
    this.paths = paths;
    shares = empty;
    left = new long[shares.rows()];
    Arrays.setAll(left, shares::price);
    top = new long[places.places.size()];
    back = new BackSearch(net);
  }

  Shares run() {
    long[] length = new long[groups.size()];
    long longest = 1;
    for (int g = 0; g < length.length; g++) {
      length[g] = raise(g, 0, 0);
      longest = Math.max(longest, reachable(g));
    }
    long step = Math.max(1, longest / ROUNDS);
    boolean moved = true;
    for (int round = 0; moved && round < 4 * ROUNDS; round++) {
      moved = false;
      for (int g = 0; g < length.length; g++) {
        if (length[g] >= 0) {
          long before = length[g];
          length[g] = raise(g, before, before + step);
          moved |= length[g] > before;
          length[g] = length[g] > before ? length[g] : ~length[g];
        }
      }
    }
    shares.projectAll();
    return shares;
  }

  /** The length with all that is left, at most what a search may count to. */
  private long reachable(int g) {
    Groups.Group group = groups.get(g);
    if (group.pin() != null) {
      return 0;
    }
    fillTop(g);
    back.run(task.ends[group.to()], Network.SHUT, arc -> paths.lengths.lengthOf(arc, g, top));
    long least = least(g);
    return least >= Network.SHUT ? 0 : least;
  }

  private long least(int g) {
    long least = Network.SHUT;
    for (int s : task.ends[groups.get(g).from()]) {
      least = Math.min(least, back.distance(s) + paths.lengths.startOf(s, top));
    }
    return least;
  }

  private void fillTop(int g) {
    long[] own = shares.units[g];
    for (int p = 0; p < top.length; p++) {
      top[p] = own[p] + left[shares.row(p)];
    }
  }

  /** Makes the group's shortest path as long as the wish or as long as it gets; its new length. */
  private long raise(int g, long now, long wish) {
    Groups.Group group = groups.get(g);
    if (group.pin() != null) {
      return now;
    }
    fillTop(g);
    back.run(task.ends[group.to()], wish, arc -> paths.lengths.lengthOf(arc, g, top));
    long reached = Math.min(wish, least(g));
    if (reached <= now) {
      return now;
    }
    long[] fresh = new long[top.length];
    for (int i = 0; i < back.reached(); i++) {
      int v = back.reachedAt(i);
      if (back.distance(v) < reached) {
        raiseInto(g, v, reached, fresh);
      }
    }
    for (int s : task.ends[group.from()]) {
      fill(places.startPlaces[s], reached - back.distance(s), fresh);
    }
    keep(g, fresh);
    return reached;
  }

  private void raiseInto(int g, int v, long reached, long[] fresh) {
    for (int i = net.first[v]; i < net.first[v + 1]; i++) {
      int arc = net.arcs[i] ^ 1;
      long from = Math.min(reached, back.distance(net.tail(arc)));
      long need = from - back.distance(v) - paths.lengths.travelOf(arc, g);
      if (need > 0) {
        raiseArc(arc, need, fresh);
      }
    }
  }

  /** Holes are raised first, by all their methods alike, then the edge and the node it leads to. */
  private void raiseArc(int arc, long need, long[] fresh) {
    int[] own = places.arcPlaces[arc];
    int[] holes = net.edgeHoles[arc >> 1];
    long missing = need - sum(own, fresh);
    for (int i = 0; i < holes.length; i++) {
      missing -= paths.lengths.holeOf(holes[i], places.methodsOf(arc, i), fresh);
    }
    for (int i = 0; i < holes.length && missing > 0; i++) {
      int[][] methods = places.methodsOf(arc, i);
      long had = paths.lengths.holeOf(holes[i], methods, fresh);
      for (int[] m : methods) {
        fill(m, had + missing, fresh);
      }
      missing -= paths.lengths.holeOf(holes[i], methods, fresh) - had;
    }
    fill(own, sum(own, fresh) + missing, fresh);
  }

  /** Raises places in order until together they have what is wanted or all they may. */
  private void fill(int[] at, long wanted, long[] fresh) {
    long missing = wanted - sum(at, fresh);
    for (int p : at) {
      if (missing <= 0) {
        return;
      }
      long more = Math.min(missing, top[p] - fresh[p]);
      fresh[p] += more;
      missing -= more;
    }
  }

  private static long sum(int[] at, long[] units) {
    long s = 0;
    for (int p : at) {
      s += units[p];
    }
    return s;
  }

  /** The group's new shares; what a row cannot give is cut off, so that every row holds. */
  private void keep(int g, long[] fresh) {
    long[] own = shares.units[g];
    for (int p = 0; p < fresh.length; p++) {
      left[shares.row(p)] += own[p];
      own[p] = 0;
    }
    for (int p = 0; p < fresh.length; p++) {
      own[p] = Math.min(fresh[p], Math.max(0, left[shares.row(p)]));
      left[shares.row(p)] -= own[p];
    }
  }
}
