package holloway.solve;

import holloway.plan.Certificate;
import holloway.solve.Places.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What the rows of shares at a hole may be: what the hole costs with so many cables, by the sizes
 * that the methods bore which charge there. A flexible bit is made in few sizes, so a hole bored
 * with one takes fewer cables than by its other methods.
 */
final class HoleRows {
  static final String ROOM = Certificate.Share.ROOM;
  static final String OWN_ROOM = Certificate.Share.OWN_ROOM;

  private final Network net;
  private final Roominess room;
  private final LeastExtra least;
  private final int[] holeOf;

  /** By hole: every method has an own work that tells its price. */
  private final boolean[] told;

  HoleRows(Network net, Roominess room) {
    this.net = net;
    this.room = room;
    least = room.ofAll();
    holeOf = OwnWorks.holeOf(net);
    told = new boolean[net.methods.length];
    for (int h = 0; h < told.length; h++) {
      int hole = h;
      told[h] = Arrays.stream(net.methods[h]).allMatch(m -> teller(hole, m) >= 0);
    }
  }

  int classes() {
    return room.classes();
  }

  /** The own work of the hole that tells the price of the method, or a negative number. */
  int teller(int hole, int[] method) {
    for (int w : method) {
      if (holeOf[w] == hole) {
        return w;
      }
    }
    return -1;
  }

  /** The own works that tell of the same hole as this one, or the work alone. */
  int[] instead(int work) {
    int hole = holeOf[work];
    return hole < 0
        ? new int[] {work}
        : Arrays.stream(net.methods[hole])
            .mapToInt(m -> teller(hole, m))
            .filter(w -> w >= 0)
            .distinct()
            .toArray();
  }

  static boolean isRoom(Place p) {
    return p.kind().equals(ROOM) || p.kind().equals(OWN_ROOM);
  }

  /**
   * The room that a hole has when it is made so. A hole with no teller, such as one that is there
   * already, has it as a row of its own; any hole has a row for each class of cables of which fewer
   * fit, by whichever method, for the rent of the class lifts them all.
   *
   * @param method null where there is nothing to be made
   */
  List<Place> rooms(int hole, int[] method) {
    boolean own = method != null && told[hole];
    List<Place> out = new ArrayList<>();
    if (!own && untold(hole)) {
      out.add(new Place(0, ROOM, hole));
    }
    for (int without = 1; without < room.classes(); without++) {
      boolean narrow = hasFlexible(hole) && room.narrower(without, hole, true) >= 0;
      if (narrow || room.narrower(without, hole, false) >= 0) {
        out.add(
            own
                ? new Place(without, OWN_ROOM, teller(hole, method))
                : new Place(without, ROOM, hole));
      }
    }
    return out;
  }

  private boolean hasFlexible(int hole) {
    for (boolean f : net.flexible[hole]) {
      if (f) {
        return true;
      }
    }
    return false;
  }

  /** What more cables cost, or that not all fit, is told by no work of the hole. */
  private boolean untold(int hole) {
    long[] extra = least.of(hole);
    boolean tight =
        extra.length < least.cables() || extra.length > 0 && extra[extra.length - 1] > 0;
    return tight && Arrays.stream(net.methods[hole]).allMatch(m -> teller(hole, m) < 0);
  }

  /** The hole that a row tells of, or a negative number. */
  int holeOf(Place p) {
    return p.kind().equals(ROOM) ? p.at() : holeOf[p.kind().equals(OWN_ROOM) ? p.at() : p.work()];
  }

  /**
   * For the own work of a hole its price with 1, 2, … cables, for the room of a hole what it costs
   * with so many, which only the room of all tells; null for a row that all share in full.
   */
  long[] limit(Place p) {
    int hole = holeOf(p);
    if (hole < 0) {
      return null;
    }
    boolean flexible =
        !p.kind().equals(ROOM) && byFlexible(hole, p.kind().equals(OWN_ROOM) ? p.at() : p.work());
    if (isRoom(p) && p.work() > 0) {
      return new long[room.fit(p.work(), hole, flexible)];
    }
    long[] out = least.of(hole, flexible).clone();
    for (int n = 0; n < out.length; n++) {
      out[n] = Math.addExact(out[n], isRoom(p) ? 0 : net.workPrice[p.work()]);
    }
    return out;
  }

  /** All methods of the hole that need the work bore with flexible bits alone. */
  private boolean byFlexible(int hole, int work) {
    for (int m = 0; m < net.methods[hole].length; m++) {
      if (!net.flexible[hole][m] && Places.has(net.methods[hole][m], work)) {
        return false;
      }
    }
    return true;
  }

  /** Not all cables of the order fit by the methods that charge at the row. */
  boolean isNarrow(long[] limit) {
    return limit.length < least.cables();
  }

  /** The number of the rent of a row's hole and class of cables: by class, then by hole. */
  int rentOf(Place p) {
    return holeOf(p) + (isRoom(p) ? p.work() * net.methods.length : 0);
  }
}
