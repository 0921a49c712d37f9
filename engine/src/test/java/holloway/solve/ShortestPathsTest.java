package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.request.Profile;
import holloway.routing.RouteGraphView;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.junit.jupiter.api.Test;

/** Our search over arrays against JGraphT's; a failure names its seed. */
class ShortestPathsTest {
  @Test
  void distancesAreThoseOfJGraphT() {
    for (long seed = 1; seed <= 40; seed++) {
      RandomGraph r = new RandomGraph(seed, 60, 150, 1, Profile.LEAST_WORK);
      Network net = new Network(r.graph, Profile.LEAST_WORK, Set.of(), List.of());
      Random random = new Random(seed);
      long[] weight = random.longs(net.edges, 0, 1_000_000).toArray();
      Graph<Integer, Integer> view = RouteGraphView.of(r.graph, weight, e -> !net.edgeShut[e]);
      DijkstraShortestPath<Integer, Integer> reference = new DijkstraShortestPath<>(view);
      ShortestPaths ours = new ShortestPaths(net);
      for (int i = 0; i < 10; i++) {
        int s = random.nextInt(net.nodes);
        int t = random.nextInt(net.nodes);
        Path p =
            ours.find(
                new int[] {s},
                new long[net.nodes],
                new int[] {t},
                new ShortestPaths.Lengths(new long[2 * net.edges], weight),
                null);
        String where = "seed " + seed + ", " + s + " to " + t;
        assertEquals((long) reference.getPathWeight(s, t), p.price(), where);
        long sum = 0;
        int at = s;
        for (int arc : p.arcs()) {
          assertEquals(at, net.tail(arc), where);
          at = net.head[arc];
          sum += weight[arc >> 1];
        }
        assertEquals(t, at, where);
        assertEquals(sum, p.price(), where);
      }
    }
  }
}
