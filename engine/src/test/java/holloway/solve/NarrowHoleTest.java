package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.plan.Certificate.Share;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraph.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * More cables want to pass a hole than fit. Four outlets lie behind a hole of 100 that takes two
 * cables of 6 mm; each has a way of its own for 1 000. The best plan is 100 + 2 000.
 */
class NarrowHoleTest {
  private static final RouteGraph GRAPH = graph();
  private static final Order ORDER = FourOutlets.order();
  private static final Solved SOLVED =
      JointPlanner.solve(GRAPH, ORDER, Budget.QUICK, Progress.SILENT);

  private static RouteGraph graph() {
    GraphBuilder b = new GraphBuilder();
    int cabinet = b.node(0, 0, 0);
    int behind = b.node(0, 0, 1000);
    int hole = b.hole(List.of(new int[] {b.bore(100)}), List.of(new Step(16, 0)), noSecond());
    b.edge(cabinet, behind, 0, hole);
    FourOutlets.add(b, cabinet, behind, 1000);
    return b.build();
  }

  private static OptionalLong noSecond() {
    return OptionalLong.empty();
  }

  @Test
  void whatPassingIsWorthProvesThePlan() {
    assertEquals(2_100, SOLVED.plan().totals().objective());
    assertEquals(2_100, SOLVED.bound().bound());
    assertTrue(shares().stream().anyMatch(s -> s.place().equals(Share.RENT)), "a rent is used");
    assertEquals(Optional.empty(), Certified.check(GRAPH, ORDER, SOLVED).refusal());
  }

  @Test
  void aRentLeftOutOrOfNoHoleIsSeen() {
    List<Share> none = new ArrayList<>(shares());
    none.removeIf(s -> s.place().equals(Share.RENT));
    assertTrue(refusal(none).contains("shares out"), refusal(none));
    List<Share> more = new ArrayList<>(shares());
    more.add(Share.rent(0, 0, 1));
    assertTrue(refusal(more).contains("claims"), refusal(more));
    List<Share> nowhere = new ArrayList<>(shares());
    nowhere.add(Share.rent(1, 0, 1));
    assertTrue(refusal(nowhere).contains("a rent"), refusal(nowhere));
    List<Share> below = new ArrayList<>(shares());
    below.add(Share.rent(0, 0, -1));
    assertTrue(refusal(below).contains("a rent"), refusal(below));
  }

  private static List<Share> shares() {
    return SOLVED.bound().parts().get(0).shares();
  }

  private static String refusal(List<Share> shares) {
    return Certified.refusal(GRAPH, ORDER, SOLVED, shares);
  }

  /** Whichever cables meet, they cost at least what is reckoned for their number. */
  @Test
  void noSetOfCablesCostsLessThanTheSlimmestOfThem() {
    List<Cable> kinds = List.of(Cable.get("cat6"), Cable.get("om4"), Cable.get("outdoor-cat6"));
    List<Step> steps = List.of(new Step(16, 0), new Step(19, 5), new Step(25, 20));
    Random random = new Random(20_261_126);
    for (int i = 0; i < 40; i++) {
      GraphBuilder b = new GraphBuilder();
      OptionalLong second = i % 2 == 0 ? noSecond() : OptionalLong.of(7);
      b.hole(List.of(new int[] {b.bore(100)}), steps, second);
      Network net = new Network(b.build(), Profile.LEAST_WORK, Set.of(), List.of());
      int[] have = {random.nextInt(8), random.nextInt(3), 1 + random.nextInt(2)};
      holds(net, new Capacity(net, kinds), kinds, have);
    }
  }

  private static void holds(Network net, Capacity capacity, List<Cable> kinds, int[] have) {
    List<Cable> all = new ArrayList<>();
    for (int k = 0; k < have.length; k++) {
      for (int n = 0; n < have[k]; n++) {
        all.add(kinds.get(k));
      }
    }
    long[] least = new LeastExtra(net, all).of(0);
    for (int x = 0; x <= have[0]; x++) {
      for (int y = 0; y <= have[1]; y++) {
        for (int z = 0; z <= have[2]; z++) {
          int n = x + y + z;
          Capacity.Bores bores = capacity.bores(0, new int[] {x, y, z});
          if (n > 0 && bores.fits()) {
            assertTrue(n <= least.length && least[n - 1] <= bores.extra(), x + " " + y + " " + z);
          }
        }
      }
    }
  }

  /** One slim cable among thick ones: eleven of the thick fit, and not seventeen. */
  @Test
  void aFewSlimCablesDoNotMakeAHoleRoomy() {
    GraphBuilder b = new GraphBuilder();
    b.hole(List.of(new int[] {b.bore(100)}), List.of(new Step(32, 0)), noSecond());
    Network net = new Network(b.build(), Profile.LEAST_WORK, Set.of(), List.of());
    List<Cable> all = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      all.add(Cable.get("cat6"));
    }
    // 40 % of 32 mm squared is 409, eleven times 36 mm2 and not twelve.
    assertEquals(11, new LeastExtra(net, all).of(0).length);
    all.add(Cable.get("om4"));
    assertEquals(11, new LeastExtra(net, all).of(0).length);
  }
}
