package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Profile;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Short paths against the search for the shortest one; a failure names its seed. */
class NearPathsTest {
  private static final long SLACK = 400_000;
  private static final int MANY = 1000;

  private record Case(String seed, Network net, long[] lengths, int from, int to) {
    static Case of(long seed, int least) {
      RandomGraph r = new RandomGraph(seed, 40, 90, 1, Profile.LEAST_WORK);
      Network net = new Network(r.graph, Profile.LEAST_WORK, Set.of(), List.of());
      Random random = new Random(seed);
      long[] lengths = new long[2 * net.edges];
      Arrays.setAll(
          lengths, a -> random.nextInt(9) == 0 ? Network.SHUT : least + random.nextInt(1_000_000));
      int from = random.nextInt(net.nodes);
      int to = (from + 1 + random.nextInt(net.nodes - 1)) % net.nodes;
      return new Case("seed " + seed, net, lengths, from, to);
    }

    long distance(int a, int b) {
      Path p =
          new ShortestPaths(net)
              .find(
                  new int[] {a},
                  new long[net.nodes],
                  new int[] {b},
                  new ShortestPaths.Lengths(lengths, null),
                  null);
      return p == null ? Network.SHUT : p.price();
    }

    List<Path> near(int most) {
      return new NearPaths(net)
          .find(new int[] {from}, new long[net.nodes], new int[] {to}, lengths, SLACK, most);
    }
  }

  @Test
  void theFirstIsTheShortestAndNoneIsLongerThanAllowed() {
    for (long seed = 1; seed <= 60; seed++) {
      Case c = Case.of(seed, seed % 2 == 0 ? 0 : 1);
      List<Path> found = c.near(MANY);
      long least = c.distance(c.from, c.to);
      assertEquals(least >= Network.SHUT, found.isEmpty(), c.seed);
      if (!found.isEmpty()) {
        assertEquals(least, found.get(0).price(), c.seed);
        Set<List<Integer>> seen = new HashSet<>();
        for (Path p : found) {
          assertTrue(p.price() <= least + SLACK, c.seed);
          assertTrue(seen.add(Arrays.stream(p.arcs()).boxed().toList()), c.seed + " twice");
          assertWalk(c, p);
        }
      }
    }
  }

  private static void assertWalk(Case c, Path p) {
    Set<Integer> nodes = new HashSet<>(Set.of(p.start()));
    int at = c.from;
    long sum = 0;
    assertEquals(at, p.start(), c.seed);
    for (int arc : p.arcs()) {
      assertEquals(at, c.net.tail(arc), c.seed);
      at = c.net.head[arc];
      sum += c.lengths[arc];
      assertTrue(nodes.add(at), c.seed + " meets a node twice");
    }
    assertEquals(c.to, at, c.seed);
    assertEquals(sum, p.price(), c.seed);
  }

  @Test
  void everyArcOfSomeShortestPathIsWalked() {
    int arcs = 0;
    for (long seed = 1; seed <= 20; seed++) {
      Case c = Case.of(seed, 1);
      List<Path> found = c.near(MANY);
      Set<Integer> walked = new HashSet<>();
      found.forEach(p -> Arrays.stream(p.arcs()).forEach(walked::add));
      long least = found.isEmpty() ? 0 : found.get(0).price();
      for (int arc = 0; arc < c.lengths.length && !found.isEmpty(); arc++) {
        long before = c.distance(c.from, c.net.tail(arc));
        if (before + c.lengths[arc] + c.distance(c.net.head[arc], c.to) == least) {
          assertTrue(walked.contains(arc), c.seed + ", arc " + arc);
          arcs++;
        }
      }
    }
    assertTrue(arcs > 20, "too few arcs to prove anything: " + arcs);
  }

  @Test
  void noMorePathsThanWanted() {
    Case c = Case.of(3, 1);
    assertTrue(c.near(MANY).size() > 3);
    assertEquals(3, c.near(2).size());
    assertEquals(1, c.near(0).size());
  }
}
