package holloway.solve;

import java.util.Arrays;

/**
 * By kind of cable: what one more costs in a hole beyond what the cables there cost already (a
 * wider bit, a second hole), and what it costs along an edge for its fare and all holes there.
 */
final class HoleExtras {
  private final Task task;
  private final Network net;
  private final Draft draft;
  private final Zones zones;
  private final long[][] byHole;
  private final long[][] byEdge;
  private final boolean[] shut;

  /** By kind: cables that a new path is to have room for besides its own. */
  private int[] company;

  private boolean lonely = true;

  HoleExtras(Draft draft, Zones zones) {
    this.draft = draft;
    this.task = draft.task;
    this.net = draft.net;
    this.zones = zones;
    shut = new boolean[net.methods.length];
    byHole = new long[task.capacity.kinds()][net.methods.length];
    byEdge = new long[task.capacity.kinds()][net.edges];
    company = new int[task.capacity.kinds()];
  }

  /** Prices of the holes and edges at one time, to come back to. */
  record Kept(long[][] byHole, long[][] byEdge) {}

  Kept kept() {
    return new Kept(copy(byHole), copy(byEdge));
  }

  /** The prices as they were kept, and no company. */
  void back(Kept kept) {
    accompany();
    for (int k = 0; k < byHole.length; k++) {
      System.arraycopy(kept.byHole[k], 0, byHole[k], 0, byHole[k].length);
      System.arraycopy(kept.byEdge[k], 0, byEdge[k], 0, byEdge[k].length);
    }
  }

  private static long[][] copy(long[][] of) {
    return Arrays.stream(of).map(long[]::clone).toArray(long[][]::new);
  }

  /** By edge, what one cable of the kind pays there; the numbers live on. */
  long[] byEdge(int kind) {
    return byEdge[kind];
  }

  /** From the next pricing on no cable may pass the hole, or may again. */
  void shut(int hole, boolean closed) {
    shut[hole] = closed;
  }

  /** From the next pricing on a hole is to have room for cables of these kinds as well. */
  void accompany(int... kinds) {
    company = new int[company.length];
    for (int k : kinds) {
      company[k]++;
    }
    lonely = kinds.length == 0;
  }

  void priceAll() {
    for (int h = 0; h < shut.length; h++) {
      priceHole(h);
    }
    for (int e = 0; e < net.edges; e++) {
      priceEdge(e);
    }
  }

  /** Prices a hole anew, and the edges through it. */
  void price(int hole) {
    priceHole(hole);
    for (int e : net.holeEdges[hole]) {
      priceEdge(e);
    }
  }

  private void priceEdge(int e) {
    for (int kind = 0; kind < byEdge.length; kind++) {
      long sum = net.fare[kind][e];
      for (int h : net.edgeHoles[e]) {
        sum = Math.min(Network.SHUT, sum + byHole[kind][h]);
      }
      byEdge[kind][e] = sum;
    }
  }

  private void priceHole(int hole) {
    for (int kind = 0; kind < byHole.length; kind++) {
      byHole[kind][hole] = extra(hole, kind);
    }
  }

  private long extra(int hole, int kind) {
    if (shut[hole]) {
      return Network.SHUT;
    }
    if (draft.holeUse(hole) == 0 && lonely && !task.capacity.dependsOnMethod(hole)) {
      return Math.max(0, task.capacity.alone(hole, kind));
    }
    int[] load = draft.loads[hole];
    int[] more = load == null ? new int[byEdge.length] : Arrays.copyOf(load, load.length);
    long before = draft.holeUse(hole) == 0 ? 0 : draft.holeExtra(hole);
    more[kind]++;
    for (int k = 0; k < company.length; k++) {
      more[k] += company[k];
    }
    long after = least(hole, more);
    return after >= Network.SHUT ? Network.SHUT : Math.max(0, after - before);
  }

  /** By the method that bores it best; the works of changing to it the draft's price counts. */
  private long least(int hole, int[] cables) {
    if (!task.capacity.dependsOnMethod(hole)) {
      return task.capacity.bores(hole, cables).extra();
    }
    long least = Network.SHUT;
    for (int m = 0; m < net.methods[hole].length; m++) {
      if (Arrays.stream(net.methods[hole][m]).allMatch(this::mayBeHad)) {
        least = Math.min(least, task.capacity.bores(hole, m, cables).extra());
      }
    }
    return least;
  }

  private boolean mayBeHad(int work) {
    return draft.isOpen(work) || zones.price(work) < Network.SHUT;
  }
}
