package holloway.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Area;
import java.util.List;
import org.joml.Vector3f;
import org.junit.jupiter.api.Test;

/** A picture is not half empty where the house could fill it. */
class EyeTest {
  private static final Area BODY = new Area(0, 0, 500, 800);
  private static final Vector3f NORTH = new Vector3f(0, 1, 0);
  private static final Vector3f UP = new Vector3f(0, 0, 1);

  /** Two points near the floor of a house 10 m wide and 6 m high. */
  private static final List<Vector3f> HOUSE =
      List.of(new Vector3f(0, 0, 0), new Vector3f(10, 0, 6));

  private static Vector3f seen(Eye eye, Vector3f p) {
    return eye.view().transformPosition(p, new Vector3f()).div(eye.perPixel());
  }

  @Test
  void theFloorIsAtTheFootOfThePicture() {
    List<Vector3f> low = List.of(new Vector3f(5, 0, 0.3f), new Vector3f(6, 0, 0.3f));
    Eye still = Eye.on(low, NORTH, UP, BODY, 1, 0.05f);
    assertTrue(seen(still, HOUSE.get(0)).y > -200, "half of it was empty");
    Eye eye = Eye.over(HOUSE, low, NORTH, UP, BODY, 1, 0.05f);
    assertEquals(-400, seen(eye, HOUSE.get(0)).y, 1);
    assertEquals(still.perPixel(), eye.perPixel());
  }

  @Test
  void whatThePictureIsAboutKeepsItsMargin() {
    List<Vector3f> low = List.of(new Vector3f(5, 0, 0.05f), new Vector3f(6, 0, 0.05f));
    Eye eye = Eye.over(HOUSE, low, NORTH, UP, BODY, 1, 0.2f);
    assertEquals(-240, seen(eye, low.get(0)).y, 1);
  }

  @Test
  void aHouseSmallerThanThePictureStandsInItsMiddle() {
    List<Vector3f> shed = List.of(new Vector3f(0, 0, 0), new Vector3f(1, 0, 1));
    List<Vector3f> wide = List.of(new Vector3f(0, 0, 0.2f), new Vector3f(1, 0, 0.2f));
    Eye eye = Eye.over(shed, wide, NORTH, UP, BODY, 1, 0.05f);
    assertEquals(0, seen(eye, new Vector3f(0.5f, 0, 0.5f)).y, 1);
  }
}
