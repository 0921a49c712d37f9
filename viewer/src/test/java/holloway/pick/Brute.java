package holloway.pick;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.joml.Quaternionf;
import org.joml.Vector3d;
import org.joml.Vector3f;

/** The same questions answered by looking at every shape, and random shapes to ask about. */
final class Brute {
  private Brute() {}

  static List<Tree.Hit> all(Shapes shapes, Ray ray) {
    List<Tree.Hit> out = new ArrayList<>();
    for (int i = 0; i < shapes.count(); i++) {
      double at = shapes.enters(ray, i);
      if (!Double.isNaN(at)) {
        out.add(new Tree.Hit(i, at));
      }
    }
    out.sort(Tree.Hit.NEAREST);
    return out;
  }

  /** Timbers in a house's room, some turned any way, some sheets without thickness. */
  static Shapes timbers(int count, long seed) {
    return timbers(count, seed, 1);
  }

  /** As above, in a house so much smaller each way. */
  static Shapes timbers(int count, long seed, float smaller) {
    Random r = new Random(seed);
    Shapes out = new Shapes();
    for (int i = 0; i < count; i++) {
      float thin = i % 17 == 0 ? 0 : 0.019f;
      Vector3f[] half = {
        new Vector3f(thin, 0, 0),
        new Vector3f(0, 0.045f, 0),
        new Vector3f(0, 0, 0.3f + r.nextFloat())
      };
      if (i % 3 == 0) {
        Quaternionf turn =
            new Quaternionf().rotateXYZ(r.nextFloat() * 6, r.nextFloat() * 6, r.nextFloat() * 6);
        for (Vector3f h : half) {
          h.rotate(turn);
        }
      }
      Vector3f at = new Vector3f(r.nextFloat() * 30, r.nextFloat() * 20, r.nextFloat() * 8);
      at.div(smaller);
      out.add(at, half[0], half[1], half[2]);
    }
    return out;
  }

  /**
   * A ray from outside to somewhere in the house; some are cut by slices, some run along an axis.
   */
  static Ray ray(Random r, int i) {
    return ray(r, i, 1);
  }

  static Ray ray(Random r, int i, float smaller) {
    Vector3d from = new Vector3d(-20 + r.nextDouble() * 70, -30 + r.nextDouble() * 20, 15);
    Vector3d to = new Vector3d(r.nextDouble() * 30, r.nextDouble() * 20, r.nextDouble() * 8);
    to.div(smaller);
    if (i % 5 == 0) {
      from = new Vector3d(to.x, to.y, 20);
    }
    Vector3d way = to.sub(from, new Vector3d()).normalize();
    double cut = i % 4 == 0 ? from.distance(to) : 0;
    return new Ray(from, way, cut, i % 8 == 0 ? cut + 0.6 : 1e4, 1e-3, 1e-4);
  }
}
