package holloway.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Source;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every figure has a pedigree, and the unit of its source turns into an exact length. */
class FiguresTest {
  static List<Figure> all() {
    List<Figure> all = new ArrayList<>(TimberFigures.list());
    all.addAll(NotchFigures.list());
    all.addAll(FireFigures.list());
    all.addAll(WiringFigures.list());
    all.addAll(EntryFigures.list());
    all.addAll(CablingFigures.list());
    all.addAll(SignalFigures.list());
    return all;
  }

  @Test
  void everyFigureHasASourceAndAGrade() {
    for (Figure f : all()) {
      assertFalse(f.source().isBlank(), f.id());
      assertTrue(f.value() > 0, f.id());
      assertTrue(f.id().matches("([A-E]|UK|M)\\d?-?\\d+"), f.id());
      if (f.grade() == Figure.Grade.M) {
        assertTrue(f.cited().words().endsWith("(from memory)"), f.id());
      }
    }
  }

  /** A figure that names a country's code is that country's, and no other one is. */
  @Test
  void everyFigureOfACodeCarriesItsPlace() {
    int us = 0;
    int uk = 0;
    for (Figure f : all()) {
      boolean american = f.source().matches(".*\\b(NEC|IRC|OSHA|CFR)\\b.*");
      boolean british = f.source().matches(".*\\b(BS \\d|NHBC|Approved Document|LABC).*");
      us += american ? 1 : 0;
      uk += british ? 1 : 0;
      assertEquals(american, f.from().parts().get(0).of() == Source.Of.US, f.toString());
      assertEquals(british, f.from().parts().get(0).of() == Source.Of.UK, f.toString());
    }
    assertTrue(us > 25 && uk > 8, us + ", " + uk);
  }

  @Test
  void thePublishedFiguresInTheirOwnUnits() {
    // IRC R302.11(1): 10 ft; NEC 300.4(A)(1): 1-1/4 in and 1/16 in; R602.6.1: 0.054 in
    assertEquals(3_048_000_000L, FireFigures.BLOCK_ALONG.length().nm());
    assertEquals(31_750_000L, TimberFigures.PLATE_EDGE.length().nm());
    assertEquals(1_587_500L, TimberFigures.PLATE_STEEL.length().nm());
    assertEquals(1_371_600L, TimberFigures.US_TIE_THICKNESS.length().nm());
    // IRC Table R302.6: 1/2 in, 5/8 in; R302.5.1: 1-3/8 in; 3 ft to a detached garage
    assertEquals(12_700_000L, FireFigures.GARAGE_BOARD.length().nm());
    assertEquals(15_875_000L, FireFigures.GARAGE_CEILING.length().nm());
    assertEquals(34_925_000L, FireFigures.GARAGE_DOOR.length().nm());
    assertEquals(914_400_000L, FireFigures.GARAGE_NEAR.length().nm());
    // NEC 800.133: 2 in; 800.48: 50 ft
    assertEquals(50_800_000L, WiringFigures.FROM_POWER.length().nm());
    assertEquals(15_240_000_000L, WiringFigures.OUTSIDE_CABLE_INDOORS.length().nm());
  }

  @Test
  void theUnplatedHoleIsTheWidthLessTwoSetbacks() {
    // 3.5 - 2 x 1.25 = 1 in; 5.5 - 2 x 1.25 = 3 in
    long setback = 2 * TimberFigures.PLATE_EDGE.length().nm();
    assertEquals(Inches.STUD_2X4.nm() - setback, TimberFigures.UNPLATED_2X4.length().nm());
    assertEquals(Inches.STUD_2X6.nm() - setback, TimberFigures.UNPLATED_2X6.length().nm());
  }

  @Test
  void aCountIsNoLength() {
    assertThrows(IllegalStateException.class, TimberFigures.US_STUDS_RUNNING::length);
  }
}
