package holloway.solve;

import java.util.Arrays;

/**
 * Finds where one more cable goes at least extra price, given what a draft has open. The price of
 * an arc counts the works of its edge, its holes and the node it leads to, less those of the node
 * it comes from. A work met again later on the same path is counted again, but where {@link #once}
 * is asked: this search proposes, the draft's exact price decides.
 */
final class MarginalSearch {
  private static final int MOST_BRANCHES = 40;
  private static final int UNTIL_FOUND = 2_000;
  private static final int FEW_BRANCHES = 8;

  private final Task task;
  private final Network net;
  private final Draft draft;
  private final Zones zones;
  private final ShortestPaths search;
  private final OncePaths once;
  private final long[] arcPrice;
  private final long[] start;
  private final HoleExtras extras;
  private final boolean[] pricedOpen;

  /** By work: what opening it costs as edges are priced; nothing where it is open. */
  private final long[] toOpen;

  private final int[] mark;
  private long[] penalty;
  private int stamp;
  private final int[] holeAt;
  private int drained;

  MarginalSearch(Draft draft, Zones zones) {
    this.draft = draft;
    this.task = draft.task;
    this.net = draft.net;
    this.zones = zones;
    search = new ShortestPaths(net);
    once = new OncePaths(draft, zones);
    arcPrice = new long[2 * net.edges];
    start = new long[net.nodes];
    mark = new int[net.workPrice.length];
    holeAt = new int[net.methods.length];
    extras = new HoleExtras(draft, zones);
    pricedOpen = new boolean[net.workPrice.length];
    toOpen = new long[net.workPrice.length];
    refresh();
  }

  /** Prices everything anew; needed after the zones changed. */
  void refresh() {
    draft.changedWorks.clear();
    draft.changedHoles.clear();
    for (int w = 0; w < pricedOpen.length; w++) {
      pricedOpen[w] = draft.isOpen(w);
      toOpen[w] = toOpen(w);
    }
    for (int e = 0; e < net.edges; e++) {
      priceEdge(e);
    }
    extras.priceAll();
  }

  /** A further price of each edge, for the search only; call {@link #refresh} when it changed. */
  void penalise(long[] perEdge) {
    penalty = perEdge;
  }

  /** No new path may pass a hole in this state. */
  void shutHole(int hole, boolean shut) {
    extras.shut(hole, shut);
    draft.changedHoles.add(hole);
  }

  /** From now on a hole costs a new path what it would cost with cables of these kinds as well. */
  void accompany(int... kinds) {
    extras.accompany(kinds);
    for (int h = 0; h < holeAt.length; h++) {
      draft.changedHoles.add(h);
    }
  }

  long looks() {
    return search.looks() + once.looks();
  }

  /** Prices the edges of a work anew after its price in {@link Zones} changed. */
  void reprice(int work) {
    toOpen[work] = toOpen(work);
    for (int e : net.edgesOfWork(work)) {
      priceEdge(e);
    }
  }

  private long toOpen(int work) {
    return draft.isOpen(work) ? 0 : zones.price(work);
  }

  /** The best valid path of a run that is not in the draft, or null. */
  Path find(int run) {
    Demand d = task.demands[run];
    return find(run, draft.alternatives(d.from()), draft.alternatives(d.to()));
  }

  /** The best path for so many runs like this one at once. */
  Path find(int run, int many) {
    int[] others = new int[many - 1];
    Arrays.fill(others, task.demands[run].kind());
    return leading(others, run);
  }

  /** The best path of a run if cables of these kinds took it too. */
  Path leading(int[] others, int run) {
    drain();
    long[] keptArc = arcPrice.clone();
    HoleExtras.Kept keptExtras = extras.kept();
    long[] kept = penalty;
    penalty = new long[net.edges];
    for (int e = 0; e < net.edges; e++) {
      long more = travel(others, e);
      penalty[e] = (kept == null ? 0 : kept[e]) + more;
      arcPrice[2 * e] = Math.min(Network.SHUT, arcPrice[2 * e] + more);
      arcPrice[2 * e + 1] = Math.min(Network.SHUT, arcPrice[2 * e + 1] + more);
    }
    extras.accompany(others);
    extras.priceAll();
    Path p = cheapest(run);
    penalty = kept;
    System.arraycopy(keptArc, 0, arcPrice, 0, keptArc.length);
    extras.back(keptExtras);
    return p;
  }

  private long travel(int[] kinds, int e) {
    long sum = 0;
    for (int k : kinds) {
      sum = Math.min(Network.SHUT, sum + net.travel(e, k));
    }
    return sum;
  }

  Path find(int run, int[] from, int[] to) {
    drain();
    Demand d = task.demands[run];
    for (int s : from) {
      start[s] = startPrice(s);
    }
    long[] extra = extras.byEdge(d.kind());
    ShortestPaths.Lengths lengths = new ShortestPaths.Lengths(arcPrice, extra);
    return new PathRepair(net, MOST_BRANCHES, UNTIL_FOUND)
        .find(arcPrice, () -> search.find(from, start, to, lengths, d.pin()));
  }

  /** The best valid path with every work paid once, as far as that is looked for, or null. */
  Path cheapest(int run) {
    Path p = find(run);
    Path cheaper = p == null || !mayMeetTwice() ? null : once(run, p.price());
    return cheaper == null ? p : cheaper;
  }

  /** Some path may need a work at several places. */
  boolean mayMeetTwice() {
    return once.any();
  }

  /** The best valid path of a run with every work paid once, if it costs less; else null. */
  Path once(int run, long less) {
    drain();
    Demand d = task.demands[run];
    int[] from = draft.alternatives(d.from());
    int[] to = draft.alternatives(d.to());
    long[] byEdge = extras.byEdge(d.kind()).clone();
    for (int e = 0; penalty != null && e < byEdge.length; e++) {
      byEdge[e] = Math.min(Network.SHUT, byEdge[e] + penalty[e]);
    }
    OncePaths.Wanted wanted = new OncePaths.Wanted(from, to, d.pin(), less, arcPrice, byEdge);
    return new PathRepair(net, FEW_BRANCHES).find(arcPrice, () -> once.find(wanted));
  }

  private long startPrice(int node) {
    long p = 0;
    for (int w : net.nodeWorks[node]) {
      p += toOpen(w);
      p = Math.min(p, Network.SHUT);
    }
    return p;
  }

  private void drain() {
    for (int i = 0; i < draft.changedWorks.size(); i++) {
      int w = draft.changedWorks.get(i);
      if (pricedOpen[w] != draft.isOpen(w)) {
        pricedOpen[w] = draft.isOpen(w);
        reprice(w);
      }
    }
    drained++;
    for (int i = 0; i < draft.changedHoles.size(); i++) {
      int hole = draft.changedHoles.get(i);
      if (holeAt[hole] == drained) {
        continue;
      }
      holeAt[hole] = drained;
      extras.price(hole);
    }
    draft.changedWorks.clear();
    draft.changedHoles.clear();
  }

  private void priceEdge(int e) {
    if (!net.edgeShut[e]) {
      arcPrice[2 * e] = works(2 * e);
      // Between ends that need the same, neither way opens anything at its far end.
      boolean same = Arrays.equals(net.nodeWorks[net.head[2 * e]], net.nodeWorks[net.tail(2 * e)]);
      arcPrice[2 * e + 1] = same ? arcPrice[2 * e] : works(2 * e + 1);
    }
  }

  private long works(int arc) {
    int e = arc >> 1;
    stamp++;
    for (int w : net.nodeWorks[net.tail(arc)]) {
      mark[w] = stamp;
    }
    long sum =
        net.price[e]
            + (penalty == null ? 0 : penalty[e])
            + count(net.nodeWorks[net.head[arc]], true);
    sum += count(net.edgeWorks[e], true);
    for (int h : net.edgeHoles[e]) {
      sum += cheapest(net.methods[h]);
    }
    return Math.min(sum, Network.SHUT);
  }

  /** Price of the works neither open nor marked; marks them all if {@code taken}. */
  private long count(int[] works, boolean taken) {
    long sum = 0;
    for (int w : works) {
      if (mark[w] != stamp) {
        sum = Math.min(Network.SHUT, sum + toOpen[w]);
        if (taken) {
          mark[w] = stamp;
        }
      }
    }
    return sum;
  }

  private long cheapest(int[][] methods) {
    long least = methods.length == 0 ? 0 : Long.MAX_VALUE;
    int[] best = null;
    for (int[] m : methods) {
      long p = count(m, false);
      if (p < least) {
        least = p;
        best = m;
      }
    }
    if (best != null) {
      count(best, true);
    }
    return least;
  }
}
