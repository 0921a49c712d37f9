package holloway.look;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What of a line lies in a rectangle 100 wide and 50 high. */
class AreaTest {
  private static final Area BOX = new Area(0, 0, 100, 50);

  private static float[] part(float x0, float y0, float x1, float y1) {
    return BOX.part(x0, y0, x1, y1).orElseThrow();
  }

  @Test
  void whatStandsOutIsCutOff() {
    assertArrayEquals(new float[] {10, 10, 90, 40}, part(10, 10, 90, 40));
    assertArrayEquals(new float[] {50, 20, 100, 20}, part(50, 20, 300, 20), 1e-4f);
    assertArrayEquals(new float[] {100, 20, 50, 20}, part(300, 20, 50, 20), 1e-4f);
  }

  /** Both ends outside: from 100 before the left edge to 100 behind the right one, half-way up. */
  @Test
  void aLineThatGoesRightThroughIsSeen() {
    assertArrayEquals(new float[] {0, 25, 100, 25}, part(-100, 25, 200, 25), 1e-4f);
    assertArrayEquals(new float[] {25, 0, 75, 50}, part(0, -25, 100, 75), 1e-4f);
  }

  @Test
  void aLineBesideItIsNot() {
    assertTrue(BOX.part(0, 60, 100, 60).isEmpty());
    assertTrue(BOX.part(150, -10, 150, 60).isEmpty());
    assertTrue(BOX.part(90, -40, 160, 30).isEmpty());
  }
}
