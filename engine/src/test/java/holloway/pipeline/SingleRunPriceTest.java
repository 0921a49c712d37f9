package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.routing.RouteGraph;
import holloway.solve.Order;
import holloway.support.Chain;
import holloway.support.EdgeNames;
import holloway.support.ExactSingleRun;
import holloway.support.InTheWay;
import holloway.support.TriedHouses;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * The proven best price of a single run on graphs of whole houses: it never grows when something in
 * the way is taken out or a hole made cheaper, and never falls when something is banned. Messages
 * name the house; a random one by its seed. {@code -Dholloway.seeds=N} tries all samples and the
 * random houses 1 to N.
 */
class SingleRunPriceTest {
  private static Map<String, String> texts;
  private static Map<String, Chain> houses;

  /** By identity: comparing two houses is slower than planning one. */
  private static final Map<Chain, Map<Order.Wanted, ExactSingleRun.Best>> KNOWN =
      new IdentityHashMap<>();

  private static ExactSingleRun.Best best(Chain c, Order.Wanted w) {
    return KNOWN
        .computeIfAbsent(c, k -> new HashMap<>())
        .computeIfAbsent(w, k -> SingleRuns.exact(c.routed().graph(), w, Set.of()));
  }

  @BeforeAll
  static void build() {
    texts = TriedHouses.texts(1, 8, 9);
    houses =
        texts.entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, e -> Chain.of(e.getValue())));
  }

  private interface Look {
    void at(String house, Chain chain, Order.Wanted run);
  }

  private static void everyRun(Look look) {
    for (String name : texts.keySet()) {
      Chain c = houses.get(name);
      SingleRuns.of(c.request()).forEach(w -> look.at(name + ", " + w.id(), c, w));
    }
  }

  /** The planner promises a plan not cheaper than possible; for one run it should find the best. */
  @Test
  void thePlannerIsNeverBelowAndNearlyAlwaysAtTheBestPrice(TestReporter reporter) {
    int[] count = new int[2];
    everyRun(
        (what, c, w) -> {
          RouteGraph g = c.routed().graph();
          long exact = best(c, w).price();
          long planned = SingleRuns.planned(g, w, Set.of());
          assertTrue(planned >= exact, what + ": planned for " + planned + ", best " + exact);
          assertEquals(exact == ExactSingleRun.NO_ROUTE, planned == ExactSingleRun.NO_ROUTE, what);
          count[0] += planned == exact ? 1 : 0;
          count[1]++;
        });
    reporter.publishEntry("planner at the best price", count[0] + " of " + count[1]);
    assertTrue(count[0] >= 0.95 * count[1], count[0] + " of " + count[1] + " at the best price");
  }

  /** Same graph, one hole of the best route or any hole at all half as dear, then open. */
  @Test
  void aCheaperHoleOrAnOpenOneNeverCostsMore() {
    Random random = new Random(71);
    int[] fell = new int[1];
    everyRun(
        (what, c, w) -> {
          RouteGraph g = c.routed().graph();
          ExactSingleRun.Best best = best(c, w);
          List<Integer> own = holes(best.edges());
          int hole =
              own.isEmpty() || random.nextInt(3) == 0
                  ? random.nextInt(g.holes().size())
                  : own.get(random.nextInt(own.size()));
          String where = what + ", hole " + g.holes().get(hole).site();
          long half = SingleRuns.exact(Eased.half(g, hole), w, Set.of()).price();
          long open = SingleRuns.exact(Eased.open(g, hole), w, Set.of()).price();
          assertTrue(half <= best.price(), where + " at half: " + half + " over " + best.price());
          assertTrue(open <= half, where + " open: " + open + " over " + half);
          fell[0] += open < best.price() ? 1 : 0;
        });
    assertTrue(fell[0] >= 4, "hardly any of the holes mattered: " + fell[0]);
  }

  private static List<Integer> holes(List<RouteGraph.Edge> edges) {
    Set<Integer> out = new TreeSet<>();
    for (RouteGraph.Edge e : edges) {
      for (int h : e.holes()) {
        out.add(h);
      }
    }
    return List.copyOf(out);
  }

  /** What was banned is read from the wishes of a file; planner and exact method both obey it. */
  @Test
  void aBanNeverMakesItCheaper() {
    Random random = new Random(72);
    int[] rose = new int[1];
    everyRun(
        (what, c, w) -> {
          RouteGraph g = c.routed().graph();
          ExactSingleRun.Best best = best(c, w);
          List<String> words = Bannable.of(g, best.edges());
          if (!words.isEmpty()) {
            Set<String> bans = wished(words.get(random.nextInt(words.size())));
            long after = SingleRuns.exact(g, w, bans).price();
            long planned = SingleRuns.planned(g, w, bans);
            assertTrue(after >= best.price(), what + " without " + bans + ": " + after);
            assertTrue(planned >= after, what + " without " + bans + ": planned " + planned);
            rose[0] += after > best.price() ? 1 : 0;
          }
        });
    assertTrue(rose[0] >= 5, "hardly any of the bans mattered: " + rose[0]);
  }

  private static Set<String> wished(String ban) {
    String text = texts.values().iterator().next();
    String wishes = "wishes: { bans: [\"" + ban + "\"],";
    Set<String> bans = SingleRuns.bans(Chain.read(text.replace("wishes: {", wishes), "").request());
    assertEquals(Set.of(ban), bans);
    return bans;
  }

  /** The house is read and built again without the thing that stood in the way. */
  @Test
  void aHouseWithLessInTheWayNeverCostsMore(TestReporter reporter) {
    Tally tally = new Tally();
    texts.forEach(
        (name, text) -> {
          Chain chain = houses.get(name);
          for (String o : InTheWay.stated(text)) {
            String fewer = InTheWay.without(text, o);
            tally.compare(name + " without" + o, chain, Chain.of(fewer));
          }
          List<String> blocks = new ArrayList<>(InTheWay.blocks(text, 3));
          for (String b : blocks.subList(0, Math.min(3, blocks.size()))) {
            tally.compare(name + " without " + b, Chain.of(text, b), chain);
          }
        });
    reporter.publishEntry("less in the way", tally.toString());
    tally.assertEnough();
  }

  /** Compares houses with and without something, run by run, where the graphs allow it. */
  private static final class Tally {
    int whole;
    int route;
    int other;
    int fell;

    private final Map<Chain, Set<String>> known = new IdentityHashMap<>();

    private Set<String> names(Chain c) {
      return known.computeIfAbsent(c, k -> new EdgeNames(c.routed().graph()).all());
    }

    void compare(String what, Chain with, Chain without) {
      EdgeNames names = new EdgeNames(with.routed().graph());
      Set<String> free = names(without);
      boolean all = free.containsAll(names(with));
      for (Order.Wanted w : SingleRuns.of(with.request())) {
        ExactSingleRun.Best before = best(with, w);
        long after = best(without, w).price();
        boolean kept = before.edges().stream().map(names::of).allMatch(free::contains);
        whole += all ? 1 : 0;
        route += !all && kept ? 1 : 0;
        other += kept ? 0 : 1;
        fell += after < before.price() ? 1 : 0;
        assertTrue(
            after <= before.price(), w.id() + ": " + before.price() + ", " + after + " " + what);
      }
    }

    void assertEnough() {
      assertTrue(whole >= 20 && route >= 10 && fell >= 1, toString());
    }

    @Override
    public String toString() {
      return "%d runs on graphs that only lost edges, %d more whose best route is still there, %d others; %d fell"
          .formatted(whole, route, other, fell);
    }
  }
}
