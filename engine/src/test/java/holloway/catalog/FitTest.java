package holloway.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.units.Length;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * Which bore takes which cables, the arithmetic beside it. Areas are compared as squares of
 * diameters. The shares 53, 31 and 40 % are the conduit fill of NEC chapter 9, table 1, used as
 * practice; the share of a pull head is common practice, no published source.
 */
class FitTest {
  private static final Cable LEAD = Cable.get("om4");

  private static Cable cable(double jacketMm, double headMm) {
    return new Cable(
        "test", Length.mm(jacketMm), Length.mm(headMm), Length.mm(50), true, true, false, "");
  }

  private static List<Cable> copies(int n, double jacketMm) {
    return Collections.nCopies(n, cable(jacketMm, jacketMm));
  }

  private static OptionalInt bit(List<Cable> cables) {
    return Fit.smallestBit(cables, 51);
  }

  @Test
  void nothingFitsEverywhere() {
    assertEquals(OptionalInt.of(13), bit(List.of()));
  }

  @Test
  void oneLeadWantsRoomRoundItsHead() {
    // Head 13.0 mm: 169 of 0.80 x 13 x 13 = 135.2 does not pass; 0.80 x 16 x 16 = 204.8 does,
    // though the jacket of 4.8 mm, 23.04, would fill 13 % of the smaller bore.
    assertFalse(Fit.fits(List.of(LEAD), 13));
    assertTrue(Fit.fits(List.of(LEAD), 16));
    assertEquals(OptionalInt.of(16), bit(List.of(LEAD)));
  }

  @Test
  void twoLeadsPassOneAfterTheOther() {
    List<Cable> two = List.of(LEAD, LEAD);
    // Side by side the second head and the first jacket are 13.0 + 4.8 = 17.8 mm wide: 16 mm is
    // too small although 169 + 23.04 = 192.04 is less than 0.80 x 16 x 16 = 204.8.
    assertFalse(Fit.fits(two, 16));
    assertEquals(OptionalInt.of(19), bit(two));
    // Two heads at once would be 26 mm wide and take the bit of 32 mm.
    assertTrue(Fit.fits(two, 17.8));
    assertFalse(Fit.fits(two, 17.8 - 1e-6));
  }

  @Test
  void theWidestHeadIsPulledFirst() {
    // Head 13 first, then 10 beside the jacket of 6 left by it: 16. The other way round the head
    // of 13 would pass the jacket of 9: 22. 19 mm: two jackets fill 36 + 81 = 117 > 0.31 x 361.
    Cable wide = cable(6, 13);
    Cable slim = cable(9, 10);
    assertEquals(OptionalInt.of(22), bit(List.of(slim, wide)));
    // 0.80 x 20 x 20 = 320 takes 169 + 81 = 250, 0.31 x 400 = 124 takes 117: the order decides.
    assertTrue(Fit.fits(List.of(slim, wide), 20));
    assertTrue(Fit.fits(List.of(wide, slim), 20));
  }

  @Test
  void oneCableFillsFiftyThreePercent() {
    // 13 mm: 0.53 x 169 = 89.57. 9.464^2 = 89.567, 9.465^2 = 89.586.
    assertEquals(OptionalInt.of(13), bit(copies(1, 9.464)));
    assertEquals(OptionalInt.of(16), bit(copies(1, 9.465)));
  }

  @Test
  void twoCablesFillThirtyOnePercent() {
    // 13 mm: 0.31 x 169 = 52.39. 2 x 5.118^2 = 52.388, 2 x 5.119^2 = 52.408.
    assertEquals(OptionalInt.of(13), bit(copies(2, 5.118)));
    assertEquals(OptionalInt.of(16), bit(copies(2, 5.119)));
  }

  @Test
  void threeCablesFillFortyPercent() {
    // 13 mm: 0.40 x 169 = 67.6. 3 x 4.746^2 = 67.574, 3 x 4.747^2 = 67.602.
    assertEquals(OptionalInt.of(13), bit(copies(3, 4.746)));
    assertEquals(OptionalInt.of(16), bit(copies(3, 4.747)));
  }

  @Test
  void aThirdThinCableDoesNotHelpTwoThickOnes() {
    // 2 x 5.119^2 = 52.408 is over 31 % of 169, while with 1 mm more 53.408 is under 40 %, 67.6.
    List<Cable> two = copies(2, 5.119);
    List<Cable> three = List.of(two.get(0), two.get(1), cable(1, 1));
    assertFalse(Fit.fits(two, 13));
    assertFalse(Fit.fits(three, 13));
  }

  @Test
  void aHeadTakesFourFifthsOfTheBore() {
    // 13 mm: 0.80 x 169 = 135.2. 11.627^2 = 135.187, 11.628^2 = 135.210.
    assertEquals(OptionalInt.of(13), bit(List.of(cable(3, 11.627))));
    assertEquals(OptionalInt.of(16), bit(List.of(cable(3, 11.628))));
  }

  @Test
  void aHeadAndAJacketPassSideBySide() {
    // 15 + 4 = 19 mm exactly; 225 + 16 = 241 of 0.80 x 361 = 288.8.
    Cable in = cable(4, 15);
    assertEquals(OptionalInt.of(19), bit(List.of(in, in)));
    // one nanometre more of the head
    Cable past =
        new Cable(
            "test", Length.mm(4), new Length(15_000_001), Length.mm(50), true, true, false, "");
    assertEquals(OptionalInt.of(22), bit(List.of(past, past)));
  }

  @Test
  void theLadderEndsWhereTheLawDoes() {
    // Two leads want 19 mm: a limit of 19 allows it, one just below does not.
    assertEquals(OptionalInt.of(19), Fit.smallestBit(List.of(LEAD, LEAD), 19));
    assertEquals(OptionalInt.empty(), Fit.smallestBit(List.of(LEAD, LEAD), 18.999));
    // 51 mm: 0.53 x 2601 = 1378.53. 37.128^2 = 1378.49, 37.129^2 = 1378.56.
    assertEquals(OptionalInt.of(51), bit(copies(1, 37.128)));
    assertEquals(OptionalInt.empty(), bit(copies(1, 37.129)));
  }
}
