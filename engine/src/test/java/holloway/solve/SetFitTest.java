package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Counted sets fit where the same sets of cables, one by one, fit. */
class SetFitTest {
  private static final List<Cable> KINDS =
      Stream.of("cat6", "om4", "cat6a", "coax", "os2")
          .flatMap(k -> Cable.find(k).stream())
          .toList();

  @Test
  void asCableByCable() {
    assertTrue(KINDS.size() >= 3, "kinds of the catalogue: " + KINDS);
    SetFit fit = new SetFit(KINDS);
    Random r = new Random(20261126);
    int fitting = 0;
    int tries = 20_000;
    for (int i = 0; i < tries; i++) {
      int[] counts = new int[KINDS.size()];
      List<Cable> cables = new ArrayList<>();
      for (int k = 0; k < counts.length; k++) {
        counts[k] = Math.max(0, r.nextInt(6) - 2);
        cables.addAll(Collections.nCopies(counts[k], KINDS.get(k)));
      }
      int bit = Fit.BITS_MM.get(r.nextInt(Fit.BITS_MM.size()));
      boolean fits = Fit.fits(cables, bit);
      fitting += fits ? 1 : 0;
      assertEquals(fits, fit.fits(counts, bit), cables + " in " + bit + " mm");
    }
    // Both answers are common, or the comparison would prove little.
    assertTrue(fitting > tries / 20 && fitting < tries * 19 / 20, "fitting " + fitting);
  }
}
