package holloway.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sheets that lie, cut into boxes. */
class SheetsTest {
  private static Point2 mm(long x, long y) {
    return new Point2(x * 1_000_000, y * 1_000_000);
  }

  /** 4 m by 3 m with 1.2 m by 0.9 m cut off its north-east corner: a slope of 3 in 4. */
  private static final List<Point2> CUT =
      List.of(mm(0, 0), mm(4000, 0), mm(4000, 2100), mm(2800, 3000), mm(0, 3000));

  /** The same in the mirror south-west to north-east. */
  private static final List<Point2> TURNED =
      CUT.stream().map(p -> new Point2(p.y(), p.x())).toList();

  private static boolean covers(List<Polygon2> boxes, Point2 p) {
    return boxes.stream().anyMatch(b -> b.contains(p));
  }

  @Test
  void anOutlineWithSquareCornersIsCutAtThemAlone() {
    Polygon2 ell =
        new Polygon2(
            List.of(
                mm(0, 0),
                mm(4000, 0),
                mm(4000, 2000),
                mm(1000, 2000),
                mm(1000, 3000),
                mm(0, 3000)));
    assertEquals(
        List.of(
            Polygon2.rectangle(0, 0, 4_000_000_000L, 2_000_000_000L),
            Polygon2.rectangle(0, 2_000_000_000L, 1_000_000_000L, 3_000_000_000L)),
        Sheets.rectangles(ell));
  }

  /** 25 mm within the middle of the angled edge, which runs 4 east for 3 south: 15 mm and 20 mm. */
  @Test
  void alongAnAngledEdgeTheSheetReachesToIt() {
    List<Polygon2> boxes = Sheets.rectangles(new Polygon2(CUT));
    assertTrue(covers(boxes, mm(3400 - 15, 2550 - 20)));
    assertFalse(covers(boxes, mm(3400 + 3, 2550 + 4)));
    List<Polygon2> turned = Sheets.rectangles(new Polygon2(TURNED).counterClockwise());
    assertTrue(covers(turned, mm(2550 - 20, 3400 - 15)));
    assertFalse(covers(turned, mm(2550 + 4, 3400 + 3)));
  }

  /**
   * 12 m² less a triangle of 0.54 m²; steps of less than 20 mm along 1.5 m lose 0.03 m² at most.
   */
  @Test
  void nothingIsCoveredTwice() {
    for (List<Point2> outline : List.of(CUT, TURNED)) {
      double area =
          Sheets.rectangles(new Polygon2(outline).counterClockwise()).stream()
              .mapToDouble(b -> b.signedAreaMm2() / 1e6)
              .sum();
      assertTrue(area > 11.43 && area <= 11.46, "m²: " + area);
    }
  }
}
