package holloway.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whether an outline holds a point is what the geometry library says, however it is found. */
final class ContainsTest {
  private static final List<Polygon2> OUTLINES =
      List.of(
          Polygon2.rectangle(0, 0, 40, 30),
          // the same rectangle, begun at another corner
          polygon(40, 0, 40, 30, 0, 30, 0, 0),
          // an L, a square on its corner, a trapezium with three square sides, a bow
          polygon(0, 0, 40, 0, 40, 15, 20, 15, 20, 30, 0, 30),
          polygon(20, 0, 40, 20, 20, 40, 0, 20),
          polygon(0, 0, 40, 0, 40, 30, 0, 20),
          polygon(0, 0, 20, 10, 40, 0, 40, 30, 0, 30));

  private static Polygon2 polygon(long... xy) {
    Point2[] out = new Point2[xy.length / 2];
    for (int i = 0; i < out.length; i++) {
      out[i] = new Point2(xy[2 * i], xy[2 * i + 1]);
    }
    return new Polygon2(List.of(out));
  }

  /** Every grid point in and round each, corners and borders with them: 51 x 51. */
  @Test
  void onAGridAndOnItsBorders() {
    for (Polygon2 p : OUTLINES) {
      int in = 0;
      for (long x = -5; x <= 45; x++) {
        for (long y = -5; y <= 45; y++) {
          Point2 at = new Point2(x, y);
          boolean holds = Polygon2.covers(p.toJts(), at);
          assertEquals(holds, p.contains(at), p + " at " + at);
          in += holds ? 1 : 0;
        }
      }
      assertTrue(in > 500 && in < 51 * 51, "" + in);
    }
  }

  /** A nanometre inside and outside of a side ten metres from the origin. */
  @Test
  void toTheNanometre() {
    long far = 10_000_000_000L;
    Polygon2 room = Polygon2.rectangle(far, far, far + 3_000_000_001L, far + 2_000_000_003L);
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      long x = far + random.nextInt(3) - 1;
      long y = far + 2_000_000_003L + random.nextInt(3) - 1;
      Point2 at = new Point2(x, y);
      assertEquals(x >= far && y <= far + 2_000_000_003L, room.contains(at), "" + at);
      assertEquals(Polygon2.covers(room.toJts(), at), room.contains(at), "" + at);
    }
  }
}
