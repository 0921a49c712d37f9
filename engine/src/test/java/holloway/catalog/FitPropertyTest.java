package holloway.catalog;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds of every set of cables from the catalogue. */
class FitPropertyTest {
  @Provide
  Arbitrary<List<Cable>> sets() {
    return Arbitraries.of(Cables.all()).list().ofMinSize(1).ofMaxSize(9);
  }

  /** Take any one away and the rest fits where all did; so does, one by one, every smaller set. */
  @Property(seed = "17", tries = 1000)
  void everySmallerSetFitsToo(
      @ForAll("sets") List<Cable> cables, @ForAll @IntRange(min = 0, max = 8) int which) {
    List<Cable> fewer = new ArrayList<>(cables);
    fewer.remove(which % cables.size());
    for (int bit : Fit.BITS_MM) {
      assertTrue(!Fit.fits(cables, bit) || Fit.fits(fewer, bit), () -> bit + " mm: " + cables);
    }
  }

  @Property(seed = "19", tries = 500)
  void whatFitsFitsInEveryWiderBore(@ForAll("sets") List<Cable> cables) {
    boolean fitted = false;
    for (int bit : Fit.BITS_MM) {
      boolean fits = Fit.fits(cables, bit);
      assertTrue(fits || !fitted, () -> bit + " mm: " + cables);
      fitted = fits;
    }
  }

  @Property(seed = "23", tries = 500)
  void theOrderOfTheCablesDoesNotMatter(@ForAll("sets") List<Cable> cables) {
    List<Cable> turned = new ArrayList<>(cables);
    Collections.reverse(turned);
    for (int bit : Fit.BITS_MM) {
      assertTrue(Fit.fits(cables, bit) == Fit.fits(turned, bit), () -> bit + " mm: " + cables);
    }
  }
}
