package holloway.solve;

/** What is open where some works are shut: places, edges, methods of holes. */
final class Passable {
  final boolean[] nodes;
  final boolean[] edges;

  /** By hole and method; of a hole that is there already the first, though it has none. */
  final boolean[][] methods;

  /** By hole: there already, or made by a method that is open. */
  final boolean[] holes;

  /**
   * @param shutWorks besides what the order bans
   */
  Passable(Network net, boolean[] shutWorks) {
    holes = new boolean[net.methods.length];
    methods = new boolean[holes.length][];
    for (int h = 0; h < holes.length; h++) {
      methods[h] = new boolean[Math.max(1, net.methods[h].length)];
      // There already: no method, though its room may be charged for as if by one.
      holes[h] = net.methods[h].length == 0;
      methods[h][0] = holes[h];
      for (int m = 0; m < net.methods[h].length; m++) {
        methods[h][m] = open(net, net.methods[h][m], shutWorks);
        holes[h] |= methods[h][m];
      }
    }
    nodes = new boolean[net.nodes];
    for (int v = 0; v < net.nodes; v++) {
      nodes[v] = open(net, net.nodeWorks[v], shutWorks);
    }
    edges = new boolean[net.edges];
    for (int e = 0; e < net.edges; e++) {
      edges[e] = !net.edgeShut[e] && open(net, net.edgeWorks[e], shutWorks);
    }
  }

  private static boolean open(Network net, int[] works, boolean[] shutWorks) {
    for (int w : works) {
      if (shutWorks[w] || net.workShut[w]) {
        return false;
      }
    }
    return true;
  }
}
