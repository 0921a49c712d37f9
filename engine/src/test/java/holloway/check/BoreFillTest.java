package holloway.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Counts of trade-facts E7 (arithmetic from A6-1 and A8), made monotone. */
class BoreFillTest {
  @Test
  void countsOfE7() {
    assertEquals(3, most("cat6", 19.05), "3/4 in takes 3 Cat 6");
    assertEquals(1, most("cat6", 12.7), "1/2 in takes 1");
    assertEquals(6, most("cat6", 25.4), "1 in takes 6");
    assertEquals(4, most("cat6a", 25.4), "1 in takes 4 Cat 6A");
    assertEquals(1, most("cat6a", 19.05), "3/4 in takes 1: two would fill 35 %, over 31 %");
  }

  @Test
  void twoBoresShareTheCables() {
    List<Cable> four = Collections.nCopies(4, Cable.get("cat6"));
    assertFalse(BoreFill.fits(four, 16, 1));
    assertTrue(BoreFill.fits(four, 19, 2));
    assertFalse(BoreFill.fits(Collections.nCopies(3, Cable.get("cat6a")), 19, 2));
  }

  @Test
  void whatTheCatalogLetsThroughTheRefereeLetsThrough() {
    Random random = new Random(5);
    List<Cable> kinds = new ArrayList<>();
    for (String k : List.of("cat5e", "cat6", "cat6a", "om4", "rg6")) {
      kinds.add(Cable.get(k));
    }
    for (int n = 0; n < 3000; n++) {
      List<Cable> set = new ArrayList<>();
      for (int i = random.nextInt(7); i >= 0; i--) {
        set.add(kinds.get(random.nextInt(kinds.size())));
      }
      int bit = Fit.BITS_MM.get(random.nextInt(Fit.BITS_MM.size()));
      if (Fit.fits(set, bit)) {
        assertTrue(
            BoreFill.fits(set, bit, 1), set.stream().map(Cable::kind).toList() + " in " + bit);
      }
    }
  }

  private static int most(String kind, double diameter) {
    int n = 0;
    while (BoreFill.fits(Collections.nCopies(n + 1, Cable.get(kind)), diameter, 1)) {
      n++;
    }
    return n;
  }
}
