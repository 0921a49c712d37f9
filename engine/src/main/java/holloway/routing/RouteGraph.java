package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import holloway.hollow.WorkKind;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * A plain multigraph, undirected in every house, whose nodes are places where a hand has the cable,
 * and whose edges are either laid by hand or one fish between two hands. Ids of nodes, edges, holes
 * and works are indices into the lists. Prices are objective units (1/10 000 minute); lengths
 * nanometres.
 *
 * <p>A plan pays, for each run, the price of each edge it uses and its cable's fare; and once,
 * however many runs use them: every work of a node some run passes or ends at, every work of an
 * edge in use, and for every hole in use the works of one of its methods (the same method for all
 * runs), plus the extra of the bit its cables need. A run visits no node and no hole twice.
 *
 * @param terminals node alternatives by end name ({@code cabinet} or outlet): all runs of one end
 *     share the alternative chosen
 * @param fares what an edge costs a kind of cable besides its price, and which it may not use
 */
public record RouteGraph(
    List<Node> nodes,
    List<Edge> edges,
    List<Hole> holes,
    List<Work> works,
    Map<String, List<Integer>> terminals,
    Fares fares) {

  /**
   * @param works node works: an access that must be opened (a patch), a cut-out, a zone's set-up
   */
  public record Node(int id, String name, Point3 at, int[] works) {}

  /**
   * @param price units per cable, travel and fishing
   * @param visible nanometres in sight per cable (their dislike is part of the price)
   * @param holes holes passed, in order from a to b
   * @param works works needed besides those of nodes and holes (a zone's set-up)
   * @param ways bit set of {@link holloway.hollow.Way}s this edge uses
   * @param pieces steps from a to b, ends joined; reversed when walked from b to a
   * @param oneWay walked from a to b only; never so in a house, but in networks of other kinds
   */
  public record Edge(
      int id,
      int a,
      int b,
      long price,
      long length,
      long visible,
      int[] holes,
      int[] works,
      int ways,
      List<Piece> pieces,
      boolean oneWay) {
    /** An edge that is walked both ways. */
    public Edge(
        int id,
        int a,
        int b,
        long price,
        long length,
        long visible,
        int[] holes,
        int[] works,
        int ways,
        List<Piece> pieces) {
      this(id, a, b, price, length, visible, holes, works, ways, pieces, false);
    }

    public int other(int node) {
      return node == a ? b : a;
    }
  }

  /** A leg in a hollow or a passage through a crossing. */
  public sealed interface Piece {
    List<Point3> path();

    /**
     * {@code blind}: part of a fish; else laid by hand. Price in units; the edge's price is the sum
     * over its legs.
     */
    record Leg(String hollow, HollowKind kind, List<Point3> path, boolean blind, long price)
        implements Piece {}

    record Pass(String site, List<Point3> path) implements Piece {}
  }

  /**
   * @param site id of the crossing, stable from day to day
   * @param kind word for the plan (top plate, stud, …)
   * @param a one end of the axis, in {@code hollowA}; {@code b} the other
   * @param methods alternatives, none empty of works unless the hole is already made
   * @param steps bit diameters allowed here in millimetres with their extra price over the first,
   *     ascending
   * @param second price of a second bore that shares the access of the first (same steps again),
   *     empty where there is no room for one
   * @param made already there: no works, its cables take up room
   * @param pierced what the axis goes through, in order from a to b, in words
   */
  public record Hole(
      int id,
      String site,
      String kind,
      Point3 a,
      Point3 b,
      String hollowA,
      String hollowB,
      List<Method> methods,
      List<Step> steps,
      OptionalLong second,
      boolean made,
      boolean assumed,
      int ways,
      List<String> pierced) {
    public Point3 at() {
      return new Point3((a.x() + b.x()) / 2, (a.y() + b.y()) / 2, (a.z() + b.z()) / 2);
    }
  }

  /**
   * How a hole can be made: words for a person, the stand, and the works it needs.
   *
   * @param flexible only a flexible-shaft bit gets there, which is not made in every size
   */
  public record Method(String words, String stand, int[] works, boolean flexible) {
    public Method(String words, String stand, int[] works) {
      this(words, stand, works, false);
    }
  }

  public record Step(int diameterMm, long extra) {}

  /**
   * @param holes how many holes it counts for (a bore or a patch 1, a cut-out, pilot or set-up 0)
   * @param patches 1 for a patch
   * @param zone empty or the zone it sets up ({@code attic}, {@code crawlspace}, {@code ladder}, …)
   */
  public record Work(
      int id, String name, WorkKind kind, long price, int holes, int patches, String zone) {}

  /** Where every cable is alike. */
  public RouteGraph(
      List<Node> nodes,
      List<Edge> edges,
      List<Hole> holes,
      List<Work> works,
      Map<String, List<Integer>> terminals) {
    this(nodes, edges, holes, works, terminals, Fares.NONE);
  }

  public RouteGraph {
    nodes = List.copyOf(nodes);
    edges = List.copyOf(edges);
    holes = List.copyOf(holes);
    works = List.copyOf(works);
    terminals = Map.copyOf(terminals);
  }
}
