package holloway.plan;

import java.util.List;

/**
 * What proves a plan's lower bound, in ids of the routing graph and integers only, so that anyone
 * can add it up again. Each part is one set of zones; every plan belongs to exactly one part, so
 * the bound is the least of the parts. A part is a proof by itself or is at least the plan's own
 * objective.
 *
 * @param profile word of the profile whose scale is used
 * @param bound the least of the parts, rounded up to a multiple of the grain
 * @param grain greatest common divisor of all prices of the graph on the profile's scale
 * @param paidByAll ids of works every plan opens; they count in full and cost nothing elsewhere
 * @param zones ids of the works whose every set is told apart from the start
 * @param runs ids of the runs it speaks of, grouped: runs of one group share ends, cable and pin
 * @param directed shares are kept for each direction of an edge and each arc into a node; see
 *     {@code holloway.solve}
 */
public record Certificate(
    String profile,
    long bound,
    long grain,
    List<Integer> paidByAll,
    List<Integer> zones,
    List<List<String>> runs,
    boolean directed,
    List<Part> parts) {

  /**
   * @param prepaid ids of works that every plan of the part opens: paid in full, then free
   * @param shut ids of works that no plan of the part opens
   * @param bound units; what the shares prove together with the prepaid works
   * @param impossible some run has no route with these zones
   */
  public record Part(
      List<Integer> prepaid,
      List<Integer> shut,
      long bound,
      boolean impossible,
      List<Share> shares) {}

  /**
   * What one group of runs pays of one work at one place.
   *
   * @param place {@code node}, {@code edge}, {@code hole}; when directed {@code arc} (2·edge, plus
   *     1 from b to a) and {@code into} (the arc by which the work's node is entered)
   * @param at id of the node, edge, hole or arc
   * @param group index into the certificate's runs
   */
  public record Share(int work, String place, int at, int group, long units) {
    /** The place of a rent; its work is the class of cables, its group is 0 and means nothing. */
    public static final String RENT = "rent";

    /** The place of a share of a hole's room; its work is the class of cables. */
    public static final String ROOM = "room";

    /**
     * The place of a share of a hole's room as those methods have it that need an own work of the
     * hole; it is at the own work.
     */
    public static final String OWN_ROOM = "own-room";

    /**
     * The place of a lift; it is at the own work of a hole, its group is the class of cables: 0 for
     * what is told by the own work itself, else whose room by the methods with it is meant.
     */
    public static final String LIFT = "lift";

    /**
     * Part of the price of a work is lent to a hole that no method with the hole's own work makes
     * without it: what those of the class who pass may pay is more by it, and the other shares of
     * the lending work are less by it.
     */
    public static Share lift(int lends, int own, int without, long units) {
      return new Share(lends, LIFT, own, without, units);
    }

    /**
     * What a group pays for passing a hole. Class 0 is all cables: no set that fits pays more than
     * the larger bit it needs and the rent, and no work of the hole tells the same. Class t leaves
     * out the cables of the t thinnest jackets of these runs: no set of the others that fits pays
     * more than its rent.
     */
    public static Share room(int hole, int without, int group, long units) {
      return new Share(without, ROOM, hole, group, units);
    }

    /**
     * The same for whoever passes by a method with the own work, with the sizes that those methods
     * bore; a hole has one or the other for a class, and a class 0 of this kind there is not.
     */
    public static Share ownRoom(int own, int without, int group, long units) {
      return new Share(without, OWN_ROOM, own, group, units);
    }

    /**
     * By so much the shares of those of a class who pass a hole that not all fit may be more than
     * it costs; what the shares prove is less by it, whether the hole is made or not.
     */
    public static Share rent(int hole, int without, long units) {
      return new Share(without, RENT, hole, 0, units);
    }
  }

  public Certificate {
    paidByAll = List.copyOf(paidByAll);
    zones = List.copyOf(zones);
    runs = List.copyOf(runs);
    parts = List.copyOf(parts);
  }
}
