package holloway.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A patch or another work that several holes need is opened whole by whoever makes one of them, and
 * no more cables pass than fit that hole. So part of its price may be lent to the hole: what any
 * set of cables that fits there pays together may be so much more, and the part is shared out as
 * often as the hole would have to be made. (The linking constraint of capacitated network design,
 * flow at most capacity times opening, for the opening of what the hole needs besides.)
 */
final class Lifts {
  /**
   * @param work lends, as a common row
   * @param teller own work of a hole that no method has without it
   * @param without class of cables that pay more for the room by the methods with the teller; 0 for
   *     what the teller itself tells
   */
  record Lift(int work, int teller, int without, int commonRow, int liftedRow) {}

  private static final int[] NONE = {};

  final List<Lift> list;
  private final int[][] lentBy;
  private final int[][] lentTo;

  Lifts(Places places, Network net, HoleRows rows) {
    Set<Lift> found = new LinkedHashSet<>();
    for (int h = 0; h < net.methods.length && !places.directed; h++) {
      for (int[] method : net.methods[h]) {
        add(found, places, h, net.methods[h], method, rows);
      }
    }
    list = new ArrayList<>(found);
    int count = places.rowPrice.size();
    IntList[] by = new IntList[count];
    IntList[] to = new IntList[count];
    for (int i = 0; i < list.size(); i++) {
      put(by, list.get(i).commonRow(), i);
      put(to, list.get(i).liftedRow(), i);
    }
    lentBy = Arrays.stream(by).map(l -> l == null ? NONE : l.toArray()).toArray(int[][]::new);
    lentTo = Arrays.stream(to).map(l -> l == null ? NONE : l.toArray()).toArray(int[][]::new);
  }

  private static void add(
      Set<Lift> to, Places places, int hole, int[][] methods, int[] method, HoleRows rows) {
    int teller = rows.teller(hole, method);
    for (int without = 0; without < rows.classes() && teller >= 0; without++) {
      int told =
          places.indexOf(
              without == 0
                  ? new Places.Place(teller, "hole", hole)
                  : new Places.Place(without, HoleRows.OWN_ROOM, teller));
      if (told < 0 || places.rentOf(places.rowOf.get(told)) < 0) {
        continue;
      }
      for (int w : method) {
        int lent = places.indexOf(new Places.Place(w, "hole", hole));
        if (w != teller
            && always(methods, teller, w)
            && lent >= 0
            && places.limit(places.rowOf.get(lent)) == null) {
          to.add(new Lift(w, teller, without, places.rowOf.get(lent), places.rowOf.get(told)));
        }
      }
    }
  }

  /** No method has the teller without the other work. */
  private static boolean always(int[][] methods, int teller, int work) {
    return Arrays.stream(methods)
        .filter(m -> Places.has(m, teller))
        .allMatch(m -> Places.has(m, work));
  }

  private static void put(IntList[] lists, int row, int lift) {
    lists[row] = lists[row] == null ? new IntList() : lists[row];
    lists[row].add(lift);
  }

  /** Lifts that a common row lends. */
  int[] lentBy(int row) {
    return lentBy[row];
  }

  /** Lifts of what a row of a hole may be. */
  int[] lentTo(int row) {
    return lentTo[row];
  }
}
