package holloway.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class TurnTest {
  /** The angle of a triangle of 3, 4 and 5: cosine 0.8, sine 0.6. */
  private static final Turn OF_345 = Turn.degrees(36.869897646);

  @Test
  void counterClockwise() {
    // (10 m, 5 m): 8 - 3 east, 6 + 4 north.
    Point2 p = OF_345.of(new Point2(10_000_000_000L, 5_000_000_000L));
    assertEquals(5e9, p.x(), 1);
    assertEquals(10e9, p.y(), 1);
    assertEquals(new Point2(10_000_000_000L, 5_000_000_000L), OF_345.back(p));
  }

  @Test
  void quartersAreExact() {
    Point2 p = new Point2(3, 1);
    assertEquals(new Point2(-1, 3), Turn.degrees(90).of(p));
    assertEquals(new Point2(-3, -1), Turn.degrees(180).of(p));
    assertEquals(new Point2(1, -3), Turn.degrees(270).of(p));
    assertEquals(Turn.degrees(-90), Turn.degrees(270));
    assertEquals(Turn.degrees(180), Turn.degrees(-180));
  }

  @Test
  void words() {
    assertEquals("23.5 deg clockwise", Turn.degrees(-23.5).words());
    assertEquals("100 deg counter-clockwise", Turn.degrees(100).words());
    assertEquals("0.000000001 deg counter-clockwise", new Turn(1).words());
  }

  @Test
  void aFrameIsTurnedFirstThenShifted() {
    SiteFrame f = new SiteFrame(Turn.degrees(90), 100, 10);
    assertEquals(new Point3(99, 13, 7), f.toSite(new Point3(3, 1, 7)));
    assertEquals(new Point3(3, 1, 7), f.fromSite(new Point3(99, 13, 7)));
  }

  @Test
  void mostWallsSayWhichWay() {
    // 5 and 5 along 3-4 and square to it, 2 along the axes.
    var main =
        MainDirection.of(
            List.of(
                new MainDirection.Edge(2, 0),
                new MainDirection.Edge(4, 3),
                new MainDirection.Edge(-3, 4)));
    assertEquals(Math.toRadians(36.869897646), main.radians(), 1e-11);
    assertEquals(10.0 / 12, main.share(), 1e-12);
    // 53.13 degrees is 36.87 the other way of square.
    assertEquals(
        -Math.toRadians(36.869897646),
        MainDirection.of(List.of(new MainDirection.Edge(3, 4))).radians(),
        1e-11);
  }
}
