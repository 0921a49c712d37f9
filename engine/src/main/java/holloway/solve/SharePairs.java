package holloway.solve;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Which shares the known paths can make use of: pairs of a group and a place where one of its paths
 * pays, and parts of a work that may be lent, numbered row by row.
 */
final class SharePairs {
  /** In the place of a group: a lift that a common row lends. */
  static final int LIFT = -1;

  /** Rows that some known path meets. */
  final int[] rows;

  /** By row here: numbers of its pairs. */
  final int[][] rowPairs;

  /** By pair: its group, or {@link #LIFT}. */
  final int[] groupOf;

  /** By pair: its place, or the number of the lift. */
  final int[] placeOf;

  /** By group and place: the pair, negative where no known path of the group pays. */
  final int[][] pairOf;

  /** By row here: pairs that are lent to it. */
  final int[][] liftPairs;

  private final Shares shares;

  SharePairs(Shares shares, PathPool[] pools) {
    this.shares = shares;
    pairOf = new int[pools.length][shares.places.places.size()];
    boolean[] active = new boolean[shares.rows()];
    for (int g = 0; g < pools.length; g++) {
      Arrays.fill(pairOf[g], -1);
      for (PathPool.Column c : pools[g].columns) {
        meet(c.places(), pairOf[g], active);
      }
      for (int[][] menu : pools[g].menus) {
        for (int[] method : menu) {
          meet(method, pairOf[g], active);
        }
      }
    }
    rows = IntStream.range(0, active.length).filter(r -> active[r]).toArray();
    rowPairs = new int[rows.length][];
    IntList group = new IntList();
    IntList place = new IntList();
    for (int i = 0; i < rows.length; i++) {
      IntList own = new IntList();
      for (int p : shares.places.rowMembers()[rows[i]]) {
        for (int g = 0; g < pools.length; g++) {
          if (pairOf[g][p] == -2 || shares.units[g][p] > 0) {
            pairOf[g][p] = group.size();
            own.add(group.size());
            group.add(g);
            place.add(p);
          }
        }
      }
      for (int l : shares.places.lifts().lentBy(rows[i])) {
        if (active[shares.places.lifts().list.get(l).liftedRow()]) {
          own.add(group.size());
          group.add(LIFT);
          place.add(l);
        }
      }
      rowPairs[i] = own.toArray();
    }
    groupOf = group.toArray();
    placeOf = place.toArray();
    liftPairs = liftPairs();
  }

  /** By row here the lifts that are lent to it, as numbers of shares. */
  private int[][] liftPairs() {
    int[] pairOfLift = new int[shares.lift.length];
    Arrays.fill(pairOfLift, -1);
    for (int k = 0; k < groupOf.length; k++) {
      if (groupOf[k] == LIFT) {
        pairOfLift[placeOf[k]] = k;
      }
    }
    return Arrays.stream(rows)
        .mapToObj(
            r ->
                Arrays.stream(shares.places.lifts().lentTo(r))
                    .map(l -> pairOfLift[l])
                    .filter(k -> k >= 0)
                    .toArray())
        .toArray(int[][]::new);
  }

  private void meet(int[] at, int[] pairOf, boolean[] active) {
    for (int p : at) {
      pairOf[p] = -2;
      active[shares.row(p)] = true;
    }
  }
}
