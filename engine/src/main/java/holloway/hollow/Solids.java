package holloway.hollow;

import holloway.framing.Member;
import holloway.geometry.Box;
import holloway.geometry.Point3;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** All members in a spatial index: what a bit or a cable on a straight axis would meet. */
public final class Solids {
  /** A member met, with where the axis enters and leaves it in nanometres from its start. */
  public record Hit(Member member, long from, long to) {}

  /** A member with the heights in the world between which it stands, nanometres. */
  private record Standing(Member member, long low, long high) {
    /**
     * Sideways the box grows by the radius in each of its own axes, which together reach less than
     * twice as far up; the millimetre is for what is rounded.
     */
    boolean mayReach(Point3 a, Point3 b, long radius) {
      long more = 2 * radius + 1_000_000;
      return Math.max(a.z(), b.z()) > low - more && Math.min(a.z(), b.z()) < high + more;
    }
  }

  private final STRtree tree = new STRtree();

  public Solids(Collection<Member> members) {
    for (Member m : members) {
      Envelope e = new Envelope();
      tree.insert(e, standing(m, e));
    }
    tree.build();
  }

  /**
   * @param e grows round the member in plan, millimetres
   */
  private static Standing standing(Member m, Envelope e) {
    long low = Long.MAX_VALUE;
    long high = Long.MIN_VALUE;
    Box b = m.box();
    for (int i = 0; i < 8; i++) {
      Point3 p =
          m.frame()
              .toWorld(
                  (i & 1) == 0 ? b.x0() : b.x1(),
                  (i & 2) == 0 ? b.y0() : b.y1(),
                  (i & 4) == 0 ? b.z0() : b.z1());
      e.expandToInclude(p.x() / 1e6, p.y() / 1e6);
      low = Math.min(low, p.z());
      high = Math.max(high, p.z());
    }
    return new Standing(m, low, high);
  }

  /** Members within {@code radius} of the axis a→b, by where it enters them, then by id. */
  public List<Hit> hits(Point3 a, Point3 b, long radius) {
    List<Hit> out = new ArrayList<>();
    long length = a.distanceTo(b);
    near(
        a,
        b,
        radius,
        (m, range) ->
            out.add(new Hit(m, Math.round(range[0] * length), Math.round(range[1] * length))));
    if (out.size() > 1) {
      out.sort(Comparator.comparingLong(Hit::from).thenComparing(h -> h.member().id()));
    }
    return out;
  }

  public boolean free(Point3 a, Point3 b, long radius) {
    boolean[] met = {false};
    near(a, b, radius, (m, range) -> met[0] = true);
    return !met[0];
  }

  /** Tells of each member within the radius, with the parts of the axis that lie in it. */
  private void near(Point3 a, Point3 b, long radius, BiConsumer<Member, double[]> told) {
    Envelope e = new Envelope(a.x() / 1e6, b.x() / 1e6, a.y() / 1e6, b.y() / 1e6);
    e.expandBy(radius / 1e6);
    tree.query(
        e,
        o -> {
          Standing s = (Standing) o;
          double[] range = s.mayReach(a, b, radius) ? clip(s.member(), a, b, radius) : null;
          if (range != null) {
            told.accept(s.member(), range);
          }
        });
  }

  /**
   * Slab method in the member's own frame; sideways the box grows by the radius, along the axis it
   * keeps its size.
   */
  private static double[] clip(Member m, Point3 a, Point3 b, long radius) {
    Point3 p = m.frame().toLocal(a);
    Point3 q = m.frame().toLocal(b);
    Box box = m.box();
    double[] range = {0, 1};
    boolean meets =
        slab(p.x(), q.x(), box.x0(), box.x1(), radius, range)
            && slab(p.y(), q.y(), box.y0(), box.y1(), radius, range)
            && slab(p.z(), q.z(), box.z0(), box.z1(), radius, range);
    return meets && range[1] - range[0] > 1e-9 ? range : null;
  }

  private static boolean slab(long p, long q, long lo, long hi, long radius, double[] range) {
    double d = q - p;
    if (Math.abs(d) < 1000) {
      return p > lo - radius && p < hi + radius;
    }
    double t0 = (lo - p) / d;
    double t1 = (hi - p) / d;
    range[0] = Math.max(range[0], Math.min(t0, t1));
    range[1] = Math.min(range[1], Math.max(t0, t1));
    return range[0] < range[1];
  }
}
