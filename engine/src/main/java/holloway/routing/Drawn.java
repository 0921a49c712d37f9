package holloway.routing;

/**
 * An edge between two nodes before it has a number; most of those that are drawn get one.
 *
 * @param seen nanometres in sight
 * @param holes ids; {@code works} those needed besides those of nodes and holes
 * @param ways bits
 */
record Drawn(int a, int b, Laid laid, long seen, int[] holes, int[] works, int ways) {
  RouteGraph.Edge numbered(int id) {
    return new RouteGraph.Edge(
        id, a, b, laid.price(), laid.length(), seen, holes, works, ways, laid.pieces());
  }
}
