package holloway.pick;

import java.util.Arrays;
import java.util.Random;

/** How long a ray takes by tree and by brute force, in one run; printed, for DEVELOPERS.md. */
public final class PickTimes {
  private static final int WARM = 4;
  private static final int ROUNDS = 15;

  private PickTimes() {}

  public static void main(String[] args) {
    System.out.println(measured(20_000));
  }

  /** Microseconds a ray, each the median of rounds that took turns. */
  record Ratio(double tree, double brute) {
    double times() {
      return brute / tree;
    }

    @Override
    public String toString() {
      return "tree %.2f us, brute force %.0f us, ratio %.0f".formatted(tree, brute, times());
    }
  }

  static Ratio measured(int members) {
    Shapes shapes = Brute.timbers(members, 7);
    Tree tree = new Tree(shapes);
    double[] a = new double[ROUNDS];
    double[] b = new double[ROUNDS];
    for (int round = -WARM; round < ROUNDS; round++) {
      // Taking turns, so that other work on the machine meets both.
      double x = micros(5_000, ray -> tree.nearest(ray, n -> true).hashCode());
      double y = micros(100, ray -> Brute.all(shapes, ray).size());
      if (round >= 0) {
        a[round] = x;
        b[round] = y;
      }
    }
    Arrays.sort(a);
    Arrays.sort(b);
    return new Ratio(a[ROUNDS / 2], b[ROUNDS / 2]);
  }

  private interface Asked {
    int of(Ray ray);
  }

  private static int kept;

  private static double micros(int rays, Asked asked) {
    Random r = new Random(3);
    Ray[] all = new Ray[rays];
    for (int i = 0; i < rays; i++) {
      all[i] = Brute.ray(r, i);
    }
    long before = System.nanoTime();
    for (Ray ray : all) {
      kept += asked.of(ray);
    }
    return (System.nanoTime() - before) / 1e3 / rays;
  }
}
