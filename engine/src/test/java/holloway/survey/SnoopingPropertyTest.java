package holloway.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.units.UnitSystem;
import java.util.List;
import java.util.TreeMap;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** What holds of the test on residuals in any net. */
class SnoopingPropertyTest {
  private static final Texts TEXTS = new Texts(UnitSystem.METRIC);

  private static Residual find(Network network, String text) {
    return Residual.of(network, 0).stream()
        .filter(r -> r.observation().text().equals(text))
        .findFirst()
        .orElseThrow();
  }

  /**
   * An error of ten spreads shows with w = 10 root(r), so it is found wherever r is over (3.29 /
   * 10)^2 = 0.108; and without other errors no w can be larger than its (Cauchy-Schwarz).
   */
  @Property(seed = "1968", tries = 400)
  void aPlantedErrorOfTenSpreadsIsNamedOrTied(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 0, max = 7) int which) {
    RandomNet net = RandomNet.of(seed, 0);
    int k = which % net.observations().size();
    long ten = 10 * net.observations().get(k).spread();
    Network network = net.planted(k, ten).network();
    Residual planted = find(network, "line " + k);
    Assume.that(planted.redundancy() > 0.11);
    List<Snooping.Group> groups = Snooping.of(network, 0);
    assertEquals(1, groups.size(), "seed " + seed);
    assertTrue(groups.get(0).suspects().stream().anyMatch(s -> s.equals(planted)), "seed " + seed);
    assertEquals(ten / 1e6, planted.error(), 1e-5, "seed " + seed);
    assertFalse(
        Loops.of(network, 0, TEXTS).misclosures().isEmpty()
            && Loops.of(network, 0, TEXTS).lone().isEmpty(),
        "seed " + seed);
  }

  /**
   * At most 8 observations at 0.1 % each: at most 0.8 % of the nets may be accused wrongly (the sum
   * of the levels bounds the chance of any).
   */
  @Test
  void withoutAGrossErrorHardlyANetIsAccused() {
    int accused = 0;
    for (long seed = 0; seed < 5000; seed++) {
      accused += Snooping.of(RandomNet.of(seed, 1).network(), 0).isEmpty() ? 0 : 1;
    }
    assertTrue(accused <= 50, accused + " of 5000");
    assertTrue(accused > 0, "5000 nets at 0.1 % without one alarm: the test is asleep");
  }

  /** A single loop is reported beyond three spreads: 0.27 % of the sound ones. */
  @Test
  void withoutAGrossErrorHardlyALoopIsReported() {
    int loops = 0;
    int reported = 0;
    for (long seed = 0; seed < 12000; seed++) {
      RandomNet net = RandomNet.of(seed, 1);
      if (net.observations().size() == net.points()) {
        loops++;
        reported += Loops.of(net.network(), 0, TEXTS).misclosures().size();
      }
    }
    assertTrue(loops > 1000, loops + " nets of one loop");
    assertTrue(reported * 100 <= loops, reported + " of " + loops);
  }

  @Property(seed = "1805", tries = 200)
  void neitherShiftNorOrderMatters(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    RandomNet net = RandomNet.of(seed, 3);
    Network straight = net.network();
    Network mixed = net.shuffled(seed);
    TreeMap<String, Residual> other = new TreeMap<>();
    Residual.of(mixed, net.points() - 1).forEach(r -> other.put(r.observation().text(), r));
    for (Residual r : Residual.of(straight, 0)) {
      Residual o = other.get(r.observation().text());
      assertEquals(r.v(), o.v(), 1e-6, "seed " + seed);
      assertEquals(r.redundancy(), o.redundancy(), 1e-9, "seed " + seed);
    }
    assertEquals(named(straight), named(mixed), "seed " + seed);
    assertEquals(
        Loops.of(straight, 0, TEXTS).misclosures().stream().map(Misclosure::size).toList(),
        Loops.of(mixed, 0, TEXTS).misclosures().stream().map(Misclosure::size).toList(),
        "seed " + seed);
  }

  private static List<List<String>> named(Network network) {
    return Snooping.of(network, 0).stream()
        .map(g -> g.suspects().stream().map(s -> s.observation().text()).toList())
        .toList();
  }

  /** The last running sum of a walk is its miss, and each sum is the one before plus its step. */
  @Property(seed = "1623", tries = 200)
  void theWalkAddsUp(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    for (Misclosure m : Loops.of(RandomNet.of(seed, 8).network(), 0, TEXTS).misclosures()) {
      long sum = 0;
      for (Step s : m.steps()) {
        sum += s.value().nm();
        assertEquals(sum, s.sum().nm(), "seed " + seed);
      }
      assertEquals(m.size().nm(), Math.abs(sum), "seed " + seed);
      assertEquals(m.measurements().size(), m.steps().size(), "seed " + seed);
    }
  }
}
