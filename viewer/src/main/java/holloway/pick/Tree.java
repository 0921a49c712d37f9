package holloway.pick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import org.joml.Intersectiond;
import org.joml.Vector2d;

/**
 * Bounding boxes in bounding boxes over {@link Shapes}, so that a ray looks at few of them. Halved
 * at the middle shape of the longest side, down to a few shapes; the same shapes give the same
 * tree.
 */
public final class Tree {
  private static final int FEW = 4;

  /** Metres by which bounds are wider than they need be: rounding must not hide a shape. */
  private static final double SLACK = 1e-6;

  private final Shapes shapes;
  private final Integer[] order;

  /** Six numbers a node: its lowest and highest corner. */
  private double[] bounds;

  /** Three numbers a node: its first shape, the one after its last, its right part or -1. */
  private int[] parts;

  private int nodes;
  private long looked;

  /** A shape that a ray meets, and where: metres along it. */
  public record Hit(int number, double at) {
    static final Comparator<Hit> NEAREST =
        Comparator.comparingDouble(Hit::at).thenComparingInt(Hit::number);
  }

  public Tree(Shapes shapes) {
    this.shapes = shapes;
    this.order = new Integer[shapes.count()];
    Arrays.setAll(order, i -> i);
    this.bounds = new double[6 * Math.max(1, 2 * order.length)];
    this.parts = new int[3 * Math.max(1, 2 * order.length)];
    if (order.length > 0) {
      build(0, order.length);
    }
  }

  private int build(int first, int end) {
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int i = first; i < end; i++) {
      for (int a = 0; a < 3; a++) {
        double c = shapes.centre(order[i], a);
        double r = shapes.reach(order[i], a) + SLACK;
        low[a] = Math.min(low[a], c - r);
        high[a] = Math.max(high[a], c + r);
      }
    }
    int me = nodes++;
    System.arraycopy(low, 0, bounds, 6 * me, 3);
    System.arraycopy(high, 0, bounds, 6 * me + 3, 3);
    int right = -1;
    if (end - first > FEW) {
      int axis = longest(low, high);
      Comparator<Integer> along = Comparator.comparingDouble(n -> shapes.centre(n, axis));
      Arrays.sort(order, first, end, along.thenComparing(Comparator.naturalOrder()));
      int middle = (first + end) / 2;
      build(first, middle);
      right = build(middle, end);
    }
    parts[3 * me] = first;
    parts[3 * me + 1] = end;
    parts[3 * me + 2] = right;
    return me;
  }

  private static int longest(double[] low, double[] high) {
    int axis = 0;
    for (int a = 1; a < 3; a++) {
      axis = high[a] - low[a] > high[axis] - low[axis] ? a : axis;
    }
    return axis;
  }

  /** Boxes that rays were tried against so far, bounds and shapes. */
  public long looked() {
    return looked;
  }

  /** The first shape that a ray meets, of those that count; empty when it meets none. */
  public java.util.Optional<Hit> nearest(Ray ray, IntPredicate counts) {
    Search s = new Search(ray, counts, true);
    s.go();
    return s.hits.stream().min(Hit.NEAREST);
  }

  /** All shapes that a ray meets, of those that count, nearest first. */
  public List<Hit> all(Ray ray, IntPredicate counts) {
    Search s = new Search(ray, counts, false);
    s.go();
    s.hits.sort(Hit.NEAREST);
    return s.hits;
  }

  /**
   * Shapes that may come within so many pixels of where the ray points, from below in number; some
   * may be farther, none that is within is left out.
   */
  public List<Integer> near(Ray ray, double pixels) {
    List<Integer> out = new ArrayList<>();
    if (nodes > 0) {
      near(ray, pixels, 0, out);
    }
    out.sort(null);
    return out;
  }

  private void near(Ray ray, double pixels, int number, List<Integer> to) {
    looked++;
    if (!passes(ray, pixels, 6 * number)) {
      return;
    }
    int far = parts[3 * number + 2];
    if (far < 0) {
      to.addAll(Arrays.asList(order).subList(parts[3 * number], parts[3 * number + 1]));
      return;
    }
    near(ray, pixels, number + 1, to);
    near(ray, pixels, far, to);
  }

  /** Whether a ray meets bounds that are wider by as much as the pixels are at their far corner. */
  private boolean passes(Ray ray, double pixels, int n) {
    var o = ray.origin();
    double x = Math.max(Math.abs(bounds[n] - o.x()), Math.abs(bounds[n + 3] - o.x()));
    double y = Math.max(Math.abs(bounds[n + 1] - o.y()), Math.abs(bounds[n + 4] - o.y()));
    double z = Math.max(Math.abs(bounds[n + 2] - o.z()), Math.abs(bounds[n + 5] - o.z()));
    // Twice: a pixel at the picture's side is larger across than along its ray.
    double more = 2 * ray.pixels(pixels, Math.sqrt(x * x + y * y + z * z));
    var d = ray.direction();
    return Intersectiond.testRayAab(
        o.x(),
        o.y(),
        o.z(),
        d.x(),
        d.y(),
        d.z(),
        bounds[n] - more,
        bounds[n + 1] - more,
        bounds[n + 2] - more,
        bounds[n + 3] + more,
        bounds[n + 4] + more,
        bounds[n + 5] + more);
  }

  /** One walk down the tree. */
  private final class Search {
    final Ray ray;
    final IntPredicate counts;
    final boolean one;
    final List<Hit> hits = new ArrayList<>();
    final Vector2d span = new Vector2d();
    double best = Double.MAX_VALUE;

    Search(Ray ray, IntPredicate counts, boolean one) {
      this.ray = ray;
      this.counts = counts;
      this.one = one;
    }

    void go() {
      if (nodes > 0 && ray.from() <= ray.to()) {
        down(0, reached(0));
      }
    }

    private void down(int number, double at) {
      if (Double.isNaN(at) || at > best) {
        return;
      }
      int far = parts[3 * number + 2];
      if (far < 0) {
        for (int i = parts[3 * number]; i < parts[3 * number + 1]; i++) {
          shape(order[i]);
        }
        return;
      }
      // The nearer half first: often the other need not be looked at.
      int left = number + 1;
      double a = reached(left);
      double b = reached(far);
      boolean swap = b < a || Double.isNaN(a);
      down(swap ? far : left, swap ? b : a);
      down(swap ? left : far, swap ? a : b);
    }

    private void shape(int number) {
      if (!counts.test(number)) {
        return;
      }
      looked++;
      double at = shapes.enters(ray, number);
      if (Double.isNaN(at) || one && at > best) {
        return;
      }
      best = one ? at : best;
      hits.add(new Hit(number, at));
    }

    /** Where the ray comes to a node; NaN where it passes it by. */
    private double reached(int number) {
      looked++;
      int n = 6 * number;
      var o = ray.origin();
      var d = ray.direction();
      boolean any =
          Intersectiond.intersectRayAab(
              o.x(),
              o.y(),
              o.z(),
              d.x(),
              d.y(),
              d.z(),
              bounds[n],
              bounds[n + 1],
              bounds[n + 2],
              bounds[n + 3],
              bounds[n + 4],
              bounds[n + 5],
              span);
      double at = Math.max(span.x, ray.from());
      return any && at <= span.y && at <= ray.to() ? at : Double.NaN;
    }
  }
}
