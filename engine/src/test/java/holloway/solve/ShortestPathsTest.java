package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

  /**
   * Arcs of what was found are closed one after the other, as a walk is mended, and opened again: a
   * search that is led by what is left to go finds the very path that a new one finds, of equally
   * cheap ones too. Prices of 0 to 3 make many equal; pins are a tenth of the edges.
   */
  @Test
  void theSameIsFoundAgainAndAgainWithAPin() {
    int found = 0;
    int none = 0;
    for (long seed = 1; seed <= 60; seed++) {
      RandomGraph r = new RandomGraph(seed, 40, 110, 1, Profile.LEAST_WORK);
      Network net = new Network(r.graph, Profile.LEAST_WORK, Set.of(), List.of());
      Random random = new Random(seed);
      boolean[] pin = new boolean[net.edges];
      for (int e = 0; e < net.edges; e++) {
        pin[e] = random.nextInt(10 + (int) seed) == 0;
      }
      long[] byArc = random.longs(2L * net.edges, 0, 4).toArray();
      ShortestPaths.Lengths lengths =
          new ShortestPaths.Lengths(byArc, random.longs(net.edges, 0, 2).toArray());
      int[] from = {random.nextInt(net.nodes), random.nextInt(net.nodes)};
      int[] to = {random.nextInt(net.nodes), random.nextInt(net.nodes)};
      long[] start = random.longs(net.nodes, 0, 3).toArray();
      ShortestPaths ours = new ShortestPaths(net);
      byArc[random.nextInt(byArc.length)] = Network.SHUT;
      for (int i = 0; i < 60; i++) {
        Path p = ours.find(from, start, to, lengths, pin);
        Path anew = new ShortestPaths(net).find(from, start, to, lengths, pin);
        String where = "seed " + seed + ", search " + i;
        assertEquals(anew == null, p == null, where);
        if (p == null) {
          none++;
          break;
        }
        found++;
        assertEquals(anew.price(), p.price(), where);
        assertEquals(anew.start(), p.start(), where);
        assertArrayEquals(anew.arcs(), p.arcs(), where);
        if (p.arcs().length == 0) {
          break;
        }
        int arc = p.arcs()[random.nextInt(p.arcs().length)];
        long kept = byArc[arc];
        byArc[arc] = Network.SHUT;
        if (i % 3 == 2) {
          // and open again, as where a branch has been looked at
          assertSame(ours, new ShortestPaths(net), from, start, to, lengths, pin);
          byArc[arc] = kept;
        }
      }
    }
    assertTrue(found > 500 && none > 5, found + " found, " + none + " times none");
  }

  private static void assertSame(
      ShortestPaths a,
      ShortestPaths b,
      int[] from,
      long[] start,
      int[] to,
      ShortestPaths.Lengths lengths,
      boolean[] pin) {
    Path p = a.find(from, start, to, lengths, pin);
    Path q = b.find(from, start, to, lengths, pin);
    assertEquals(p == null, q == null);
    if (p != null) {
      assertArrayEquals(q.arcs(), p.arcs());
    }
  }
}
