package holloway.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.TopologyException;

/** Outlines cut with each other, in millimetres. */
class OverlayTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  /** A 4 x 3 m room over a 4 x 3 m room, shifted by 1 m both ways: 3 x 2 m are shared. */
  @Test
  void shareAndRest() {
    Geometry a = rectangle(0, 0, 4_000, 3_000);
    Geometry b = rectangle(1_000, 1_000, 5_000, 4_000);
    assertEquals(6e6, Overlay.intersection(a, b).getArea(), 1);
    assertEquals(6e6, Overlay.difference(a, b).getArea(), 1);
    assertEquals(18e6, Overlay.union(a, b).getArea(), 1);
    assertEquals(18e6, Overlay.union(List.of(a, b, a)).getArea(), 1);
  }

  /** Rooms on both sides of one line share no area, and the line itself is not handed out. */
  @Test
  void whatOnlyTouchesSharesNothing() {
    Geometry a = rectangle(0, 0, 4_000, 3_000);
    assertTrue(Overlay.intersection(a, rectangle(4_000, 0, 6_000, 3_000)).isEmpty());
    assertTrue(Overlay.intersection(a, rectangle(4_000, 3_000, 6_000, 5_000)).isEmpty());
    Geometry l =
        Overlay.intersection(
            polygon(0, 0, 4_000, 0, 4_000, 2_000, 2_000, 2_000, 2_000, 4_000, 0, 4_000),
            rectangle(1_000, 2_000, 6_000, 5_000));
    assertEquals("Polygon", l.getGeometryType(), "a piece and the line beside it");
    assertEquals(2e6, l.getArea(), 1);
  }

  @Test
  void nothingWithNothing() {
    Geometry none = Overlay.union(List.of());
    Geometry a = rectangle(0, 0, 4_000, 3_000);
    assertTrue(none.isEmpty());
    assertTrue(Overlay.intersection(a, none).isEmpty());
    assertTrue(Overlay.difference(none, a).isEmpty());
    assertEquals(12e6, Overlay.difference(a, none).getArea(), 1);
    assertEquals(12e6, Overlay.union(a, none).getArea(), 1);
  }

  /**
   * The wall's line crosses a deck whose edge has a step far below an atom's size, as adjusted
   * readings leave it (a random house's floor): the geometry's own method gives up.
   */
  @Test
  void linesThatAllButCoincide() {
    Geometry wall =
        JTS.createLineString(
            new Coordinate[] {new Coordinate(2_895.6, -1e6), new Coordinate(2_895.6, 1e6)});
    double off = 6.7e-15;
    Geometry deck =
        polygon(
            0, off, 0, 8_864.6, 5_791.2, 8_864.6, 5_791.2, 5.68e-14, 5_791.2, 0, 3_009.9, 0,
            3_009.9, 5.18e-14, 2_895.6, 5.01e-14, 2_895.6, 0, 0, 0);
    assertThrows(TopologyException.class, () -> wall.intersection(deck), "else this shows nothing");
    assertEquals(8_864.6, Overlay.intersection(wall, deck).getLength(), 0.001);
  }

  private static Geometry rectangle(double x0, double y0, double x1, double y1) {
    return polygon(x0, y0, x1, y0, x1, y1, x0, y1);
  }

  private static Geometry polygon(double... xy) {
    Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
    for (int i = 0; i < xy.length / 2; i++) {
      ring[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
    }
    ring[xy.length / 2] = ring[0];
    return JTS.createPolygon(ring);
  }
}
