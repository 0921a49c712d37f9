package holloway.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Gross errors planted into published nets and into nets whose answer is arithmetic. */
class SnoopingTest {
  private static List<List<String>> names(LevelNet net) {
    return Snooping.of(net.network, LevelNet.DATUM).stream()
        .map(g -> g.suspects().stream().map(s -> s.observation().text()).toList())
        .toList();
  }

  /** The largest w of Siki's published net is 2.6, under Baarda's 3.29 at 0.1 %. */
  @Test
  void thePublishedNetsHaveNoGrossError() {
    assertEquals(List.of(), names(PublishedNetsTest.siki()));
    assertEquals(List.of(), names(PublishedNetsTest.ghilani()));
    assertEquals(List.of(), names(PublishedNetsTest.forwardAndBack()));
  }

  /**
   * Ghilani's net with A to B read 50 mm too high: w grows by 50 x root(r) / 6 = 50 x 0.8093 / 6 =
   * 6.74 from -0.76... (r 0.6549 by exact fractions), and the error is found again as 50 mm plus
   * what the published residual already said, -3.712 / 0.6549 = -5.668 mm.
   */
  @Test
  void aPlantedErrorIsNamedWithItsSize() {
    LevelNet net =
        new LevelNet()
            .benchmark("A", 437.596)
            .line("A", "B", 10.559, 6)
            .line("B", "C", 5.360, 4)
            .line("C", "D", -8.523, 5)
            .line("D", "A", -7.348, 3)
            .line("B", "D", -3.167, 4)
            .line("A", "C", 15.881, 12);
    assertEquals(List.of(List.of("A to B")), names(net));
    Residual found = Snooping.of(net.network, LevelNet.DATUM).get(0).suspects().get(0);
    double before = PublishedNetsTest.ghilani().residual("A to B").error();
    assertEquals(-5.668, before, 0.001);
    assertEquals(50 + before, found.error(), 1e-6);
    double r = found.redundancy();
    assertEquals(0.6549, r, 0.00005);
    double w = PublishedNetsTest.ghilani().residual("A to B").w();
    assertEquals(w - 50 * Math.sqrt(r) / 6, found.w(), 1e-6);
    assertEquals(6 / Math.sqrt(r), found.errorSpread(), 1e-9);
  }

  /** Two readings of one line: each is half checked by the other, and neither can be blamed. */
  @Test
  void twoReadingsOfOneLineCannotBeToldApart() {
    LevelNet net = new LevelNet().benchmark("A", 0).line("A", "B", 3, 5).line("A", "B", 3.050, 5);
    List<Snooping.Group> groups = Snooping.of(net.network, LevelNet.DATUM);
    assertEquals(1, groups.size());
    assertEquals(2, groups.get(0).suspects().size());
    for (Residual s : groups.get(0).suspects()) {
      assertEquals(0.5, s.redundancy(), 1e-12);
      assertEquals(50 / Math.sqrt(50), Math.abs(s.w()), 1e-9);
      assertEquals(50, Math.abs(s.error()), 1e-9);
    }
  }

  /** A third reading tells which: its fellow agrees with it. */
  @Test
  void aThirdReadingTells() {
    LevelNet net =
        new LevelNet()
            .benchmark("A", 0)
            .line("A", "B", 3, 5)
            .line("A", "B", 3.050, 5)
            .line("A", "B", 3.001, 5);
    List<Snooping.Group> groups = Snooping.of(net.network, LevelNet.DATUM);
    assertEquals(1, groups.size());
    assertEquals(1, groups.get(0).suspects().size());
    // against the mean of the other two: 50 - 0.5 mm
    assertEquals(49.5, groups.get(0).suspects().get(0).error(), 1e-9);
  }

  /** In one loop all measurements have the same w, whatever their spreads: miss over spread. */
  @Test
  void inOneLoopAllAreTied() {
    LevelNet net =
        new LevelNet()
            .benchmark("A", 0)
            .line("A", "B", 3, 5)
            .line("B", "C", 4, 12)
            .line("A", "C", 7.100, 1);
    List<Snooping.Group> groups = Snooping.of(net.network, LevelNet.DATUM);
    assertEquals(3, groups.get(0).suspects().size());
    for (Residual s : groups.get(0).suspects()) {
      assertEquals(100 / Math.sqrt(25 + 144 + 1), Math.abs(s.w()), 1e-9);
    }
  }

  /** A line that leads to a point nothing else reaches is never blamed. */
  @Test
  void whatNothingChecksIsNotBlamed() {
    LevelNet net =
        new LevelNet()
            .benchmark("A", 0)
            .line("A", "B", 3, 5)
            .line("A", "B", 3.100, 5)
            .line("B", "spur", 99, 5);
    assertEquals(0, net.residual("B to spur").redundancy(), 1e-9);
    assertTrue(names(net).stream().noneMatch(g -> g.contains("B to spur")));
  }

  /** Just under and just over Baarda's critical value. */
  @Test
  void atTheCriticalValue() {
    double limit = Snooping.CRITICAL * Math.sqrt(50);
    for (double off : new double[] {limit - 0.001, limit + 0.001}) {
      LevelNet net =
          new LevelNet().benchmark("A", 0).line("A", "B", 3, 5).line("A", "B", 3 + off / 1000, 5);
      assertEquals(off > limit ? 1 : 0, names(net).size());
    }
  }

  /** Two errors in different parts are both named, the larger first. */
  @Test
  void twoErrorsAreFoundOneAfterTheOther() {
    LevelNet net = new LevelNet().benchmark("A", 0);
    for (String[] pair : new String[][] {{"A", "B"}, {"B", "C"}}) {
      net.line(pair[0], pair[1], 3, 5).line(pair[0], pair[1], 3.002, 5);
    }
    net.line("A", "B", 3.090, 5).line("B", "C", 2.850, 5);
    List<Snooping.Group> groups = Snooping.of(net.network, LevelNet.DATUM);
    assertEquals(2, groups.size());
    assertEquals(-151, groups.get(0).suspects().get(0).error(), 1e-6);
    assertEquals(89, groups.get(1).suspects().get(0).error(), 1e-6);
  }
}
