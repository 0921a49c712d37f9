package holloway.view;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Area;
import holloway.look.Bodies;
import holloway.look.Dash;
import holloway.look.Pane;
import holloway.look.Tube;
import java.util.List;
import org.joml.Matrix4f;
import org.joml.Vector3f;
import org.joml.Vector4f;
import org.junit.jupiter.api.Test;

/** Names keep off cables that are seen, and not off those that a picture cuts away. */
class LinesTest {
  /** From above, 10 m each way on 100 pixels, cables from 0 to 3 m up. */
  private static Lines of(Vector3f... way) {
    Bodies bodies = new Bodies();
    List<Vector3f> fan = java.util.Collections.nCopies(way.length, new Vector3f());
    bodies.tubes.add(new Tube(List.of(way), List.copyOf(fan), 0.003f, 0, Dash.WHOLE, 1));
    Matrix4f view = new Matrix4f().lookAt(5, 5, 20, 5, 5, 0, 0, 1, 0);
    Matrix4f eye = new Matrix4f().ortho(-5, 5, -5, 5, 1, 50);
    List<Vector4f> storey = List.of(new Vector4f(0, 0, 1, 0), new Vector4f(0, 0, -1, 3));
    return new Lines(
        new Pane(0, 0, 100, 100, view, eye, List.of(), List.copyOf(storey), bodies, 1));
  }

  private static boolean crosses(Lines l, float x, float y) {
    return l.crosses(new Area(x - 5, y - 5, 10, 10), 0);
  }

  @Test
  void aCableOfTheLevelIsInTheWay() {
    Lines l = of(new Vector3f(0, 5, 2), new Vector3f(10, 5, 2));
    assertTrue(crosses(l, 50, 50));
    assertFalse(crosses(l, 50, 20));
  }

  @Test
  void oneOfAnotherLevelIsNot() {
    assertFalse(crosses(of(new Vector3f(0, 5, -1), new Vector3f(10, 5, -1)), 50, 50));
    assertFalse(crosses(of(new Vector3f(0, 5, 4), new Vector3f(10, 5, 4)), 50, 50));
  }

  /** Rises from 0 to 6 m on 10 m: over 3 m, the upper half, it is not seen. */
  @Test
  void ofOneThatLeavesTheLevelThePartThatIsInIt() {
    Lines l = of(new Vector3f(0, 5, 0), new Vector3f(10, 5, 6));
    assertTrue(crosses(l, 40, 50));
    assertFalse(crosses(l, 60, 50));
    Lines back = of(new Vector3f(10, 5, 6), new Vector3f(0, 5, 0));
    assertTrue(crosses(back, 40, 50));
    assertFalse(crosses(back, 60, 50));
  }
}
