package holloway.pick;

import java.util.Random;

/** How long a ray takes by tree and by brute force, in one run: printed, for DEVELOPERS.md. */
public final class PickTimes {
  private PickTimes() {}

  public static void main(String[] args) {
    Shapes shapes = Brute.timbers(20_000, 7);
    Tree tree = new Tree(shapes);
    double a = Double.MAX_VALUE;
    double b = Double.MAX_VALUE;
    // The least of many rounds: other work on the machine only ever makes one longer.
    for (int round = 0; round < 20; round++) {
      a = Math.min(a, micros(5_000, ray -> tree.nearest(ray, n -> true).hashCode()));
      b = Math.min(b, micros(100, ray -> Brute.all(shapes, ray).size()));
    }
    System.out.printf("tree %.2f us, brute force %.0f us, ratio %.0f%n", a, b, b / a);
    System.out.printf("%.0f of 20000 boxes a ray%n", tree.looked() / 100_000.0);
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
