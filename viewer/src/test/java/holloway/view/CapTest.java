package holloway.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.joml.Quaternionf;
import org.joml.Vector3f;
import org.junit.jupiter.api.Test;

class CapTest {
  private static float area(List<Vector3f> lid) {
    Vector3f sum = new Vector3f();
    for (int i = 1; i + 1 < lid.size(); i++) {
      Vector3f a = new Vector3f(lid.get(i)).sub(lid.get(0));
      sum.add(a.cross(new Vector3f(lid.get(i + 1)).sub(lid.get(0))));
    }
    return sum.length() / 2;
  }

  private static Vector3f[] turned(Quaternionf q, float... halves) {
    return new Vector3f[] {
      new Vector3f(halves[0], 0, 0).rotate(q),
      new Vector3f(0, halves[1], 0).rotate(q),
      new Vector3f(0, 0, halves[2]).rotate(q)
    };
  }

  /** A cube of one metre that stands on its corner is cut half-way up in a regular hexagon. */
  @Test
  void aCubeOnItsCornerIsCutInAHexagon() {
    Quaternionf q = new Quaternionf().rotationTo(new Vector3f(1, 1, 1), new Vector3f(0, 0, 1));
    List<Vector3f> lid = Cap.of(new Vector3f(5, 6, 7), turned(q, 0.5f, 0.5f, 0.5f), 2, 7);
    assertEquals(6, lid.size());
    assertEquals(3 * Math.sqrt(3) / 4, area(lid), 1e-4);
  }

  @Test
  void aPlaneBesideTheBoxCutsNothing() {
    assertEquals(List.of(), Cap.of(new Vector3f(), turned(new Quaternionf(), 1, 1, 1), 0, 1.01f));
  }

  /** The areas of all cuts along an axis add up to the box. */
  @Test
  void lidsAddUpToTheBox() {
    Random r = new Random(5);
    for (int i = 0; i < 40; i++) {
      Quaternionf q = new Quaternionf().rotateXYZ(r.nextFloat(), r.nextFloat(), r.nextFloat());
      Vector3f[] halves = turned(q, 0.2f + r.nextFloat(), 0.2f + r.nextFloat(), 0.2f);
      float whole = 8 * halves[0].length() * halves[1].length() * halves[2].length();
      int axis = i % 3;
      double sum = 0;
      for (float at = -3; at < 3; at += 0.005f) {
        List<Vector3f> lid = Cap.of(new Vector3f(), halves, axis, at);
        assertTrue(lid.size() <= 6, lid::toString);
        sum += area(lid) * 0.005;
      }
      assertEquals(whole, sum, whole * 0.01, "box " + i);
    }
  }
}
