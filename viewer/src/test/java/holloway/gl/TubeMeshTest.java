package holloway.gl;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.look.Dash;
import holloway.look.Tube;
import java.util.ArrayList;
import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.junit.jupiter.api.Test;

/** A ball closes a tube where it turns; on a straight way it would only cost time. */
class TubeMeshTest {
  private static int numbers(boolean lanes, Vector3fc... points) {
    List<Vector3fc> fan = new ArrayList<>();
    for (int i = 0; i < points.length; i++) {
      fan.add(new Vector3f(lanes ? i : 0, 0, 0));
    }
    return TubeMesh.of(List.of(new Tube(List.of(points), fan, 0.003f, 0, Dash.WHOLE, 1))).length;
  }

  @Test
  void aStraightWayHasNoBallWithin() {
    Vector3f a = new Vector3f(0, 0, 0);
    Vector3f b = new Vector3f(1, 0, 0);
    Vector3f c = new Vector3f(2, 0, 0);
    Vector3f d = new Vector3f(1, 1, 0);
    int one = numbers(false, a, b);
    int straight = numbers(false, a, b, c);
    int bent = numbers(false, a, b, d);
    int otherLane = numbers(true, a, b, c);
    int sleeve = straight - one;
    int ball = (one - sleeve) / 2;
    assertEquals(one, sleeve + 2 * ball);
    assertEquals(straight + ball, bent, "one more where it turns");
    assertEquals(bent, otherLane, "and where it changes its lane");
  }
}
