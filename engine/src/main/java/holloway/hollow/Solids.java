package holloway.hollow;

import holloway.framing.Member;
import holloway.geometry.Box;
import holloway.geometry.Point3;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** All members in a spatial index: what a bit or a cable on a straight axis would meet. */
public final class Solids {
  /** A member met, with where the axis enters and leaves it in nanometres from its start. */
  public record Hit(Member member, long from, long to) {}

  private final STRtree tree = new STRtree();

  public Solids(Collection<Member> members) {
    for (Member m : members) {
      tree.insert(envelope(m), m);
    }
    tree.build();
  }

  private static Envelope envelope(Member m) {
    Envelope e = new Envelope();
    Box b = m.box();
    for (int i = 0; i < 8; i++) {
      Point3 p =
          m.frame()
              .toWorld(
                  (i & 1) == 0 ? b.x0() : b.x1(),
                  (i & 2) == 0 ? b.y0() : b.y1(),
                  (i & 4) == 0 ? b.z0() : b.z1());
      e.expandToInclude(p.x() / 1e6, p.y() / 1e6);
    }
    return e;
  }

  /** Members within {@code radius} of the axis a→b, by where it enters them, then by id. */
  public List<Hit> hits(Point3 a, Point3 b, long radius) {
    double r = radius / 1e6;
    Envelope e = new Envelope(a.x() / 1e6, b.x() / 1e6, a.y() / 1e6, b.y() / 1e6);
    e.expandBy(r);
    List<Hit> out = new ArrayList<>();
    long length = a.distanceTo(b);
    for (Object o : tree.query(e)) {
      Member m = (Member) o;
      double[] range = clip(m, a, b, radius);
      if (range != null) {
        out.add(new Hit(m, Math.round(range[0] * length), Math.round(range[1] * length)));
      }
    }
    out.sort(Comparator.comparingLong(Hit::from).thenComparing(h -> h.member().id()));
    return out;
  }

  public boolean free(Point3 a, Point3 b, long radius) {
    return hits(a, b, radius).isEmpty();
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
