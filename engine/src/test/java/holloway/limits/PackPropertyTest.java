package holloway.limits;

import static holloway.limits.Inches.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Fit;
import holloway.finding.Severity;
import holloway.units.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds of every pack for any section and bit. */
class PackPropertyTest {
  /** What no pack allows must be refused by US or UK, and the other way round. */
  @Property(seed = "7", tries = 500)
  void withoutAPackTheStricterOfTwo(
      @ForAll @IntRange(min = 60, max = 320) int depth,
      @ForAll @IntRange(min = 6, max = 80) int bit,
      @ForAll @IntRange(min = 0, max = 4000) int along) {
    Length d = mm(bit);
    Length edge = RulePack.centredEdge(mm(depth), d);
    boolean[] ok = new boolean[3];
    String[] places = {"us", "uk", "none"};
    for (int i = 0; i < 3; i++) {
      ok[i] =
          RulePack.of(places[i])
              .joistBore(mm(depth), d, edge, edge, mm(along), mm(4000), MemberMake.SOLID)
              .allowed();
    }
    assertEquals(ok[0] && ok[1], ok[2]);
  }

  /** A refusal always says why and on whose word. */
  @Property(seed = "11", tries = 500)
  void everyRefusalIsExplained(
      @ForAll @IntRange(min = 30, max = 300) int width,
      @ForAll @IntRange(min = 1, max = 120) int bit,
      @ForAll boolean bearing,
      @ForAll boolean doubled) {
    Length edge = RulePack.centredEdge(mm(width), mm(bit));
    for (String place : new String[] {"us", "uk", "none"}) {
      RulePack pack = RulePack.of(place);
      for (Verdict v :
          new Verdict[] {
            pack.studBore(mm(width), mm(bit), edge, bearing, doubled),
            pack.plateBore(mm(width), mm(bit), bearing)
          }) {
        assertNotEquals("", v.source());
        assertTrue(v.allowed() || !v.text().isEmpty());
        assertTrue(v.allowed() || v.severity() != Severity.NOTE);
      }
    }
  }

  /** With nail plates never less than without, and a wider member never takes less. */
  @Property(seed = "13", tries = 300)
  void theWidestBitGrows(
      @ForAll @IntRange(min = 30, max = 200) int width,
      @ForAll @IntRange(min = 0, max = 100) int more,
      @ForAll boolean bearing) {
    for (String place : new String[] {"us", "uk", "none"}) {
      RulePack pack = RulePack.of(place);
      int bare = pack.largestPlateBore(mm(width), bearing, false, Fit.BITS_MM).orElse(0);
      int plated = pack.largestPlateBore(mm(width), bearing, true, Fit.BITS_MM).orElse(0);
      int wider = pack.largestPlateBore(mm(width + more), bearing, true, Fit.BITS_MM).orElse(0);
      assertTrue(bare <= plated && plated <= wider, place + " " + width + " " + more);
    }
  }
}
