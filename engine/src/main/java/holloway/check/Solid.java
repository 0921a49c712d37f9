package holloway.check;

import holloway.framing.Member;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import java.util.Optional;

/**
 * A box that stands anywhere, in double millimetres: a member, or a hollow's clear space. Only
 * coordinates are read from the model; every distance is worked out here.
 */
final class Solid {
  private final Mm origin;
  private final Mm[] axes;
  private final double[] lo;
  private final double[] hi;

  Solid(Frame frame, Box box) {
    origin = Mm.of(frame.origin());
    axes = new Mm[] {axis(frame.u()), axis(frame.v()), axis(frame.w())};
    lo = new double[] {box.x0() / 1e6, box.y0() / 1e6, box.z0() / 1e6};
    hi = new double[] {box.x1() / 1e6, box.y1() / 1e6, box.z1() / 1e6};
  }

  static Solid of(Member m) {
    return new Solid(m.frame(), m.box());
  }

  private static Mm axis(Frame.Axis a) {
    return new Mm(a.x(), a.y(), a.z());
  }

  double[] local(Mm world) {
    Mm d = world.minus(origin);
    return new double[] {d.dot(axes[0]), d.dot(axes[1]), d.dot(axes[2])};
  }

  double extent(int axis) {
    return hi[axis] - lo[axis];
  }

  Mm corner(int bits) {
    Mm p = origin;
    for (int i = 0; i < 3; i++) {
      p = p.plus(axes[i].times((bits >> i & 1) == 0 ? lo[i] : hi[i]));
    }
    return p;
  }

  /** World bounds: least x, y, z, then greatest. */
  double[] bounds() {
    double inf = Double.POSITIVE_INFINITY;
    double[] b = {inf, inf, inf, -inf, -inf, -inf};
    for (int i = 0; i < 8; i++) {
      Mm c = corner(i);
      double[] v = {c.x(), c.y(), c.z()};
      for (int k = 0; k < 3; k++) {
        b[k] = Math.min(b[k], v[k]);
        b[k + 3] = Math.max(b[k + 3], v[k]);
      }
    }
    return b;
  }

  boolean holds(Mm p, double slack) {
    double[] q = local(p);
    for (int i = 0; i < 3; i++) {
      if (q[i] < lo[i] - slack || q[i] > hi[i] + slack) {
        return false;
      }
    }
    return true;
  }

  /** The part of a stretch that lies within this box, from one share of it to another. */
  Optional<double[]> within(Span span) {
    double[] a = local(span.a());
    double[] b = local(span.b());
    double from = 0;
    double to = 1;
    for (int i = 0; i < 3; i++) {
      double d = b[i] - a[i];
      if (Math.abs(d) < 1e-9) {
        if (a[i] < lo[i] || a[i] > hi[i]) {
          return Optional.empty();
        }
        continue;
      }
      double t = (lo[i] - a[i]) / d;
      double u = (hi[i] - a[i]) / d;
      from = Math.max(from, Math.min(t, u));
      to = Math.min(to, Math.max(t, u));
    }
    return to > from ? Optional.of(new double[] {from, to}) : Optional.empty();
  }

  /** Least distance from a straight stretch to this box, 0 when it enters. */
  double distance(Span span) {
    return distance(span, 0);
  }

  /** True when the stretch goes deeper than {@code depth} into the box. */
  boolean entered(Span span, double depth) {
    for (int i = 0; i < 3; i++) {
      if (extent(i) <= 2 * depth) {
        return false;
      }
    }
    return distance(span, depth) <= 1e-9;
  }

  /**
   * Distance to the box made smaller by {@code inset} on every side. The squared distance along the
   * stretch is convex, so its slope has one change of sign, found by halving.
   */
  private double distance(Span span, double inset) {
    double[] a = local(span.a());
    double[] b = local(span.b());
    double left = 0;
    double right = 1;
    for (int i = 0; i < 60; i++) {
      double mid = (left + right) / 2;
      if (slope(a, b, mid, inset) > 0) {
        right = mid;
      } else {
        left = mid;
      }
    }
    double square = 0;
    for (int i = 0; i < 3; i++) {
      double e = excess(i, a[i] + (left + right) / 2 * (b[i] - a[i]), inset);
      square += e * e;
    }
    return Math.sqrt(square);
  }

  private double slope(double[] a, double[] b, double t, double inset) {
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double d = b[i] - a[i];
      sum += d * excess(i, a[i] + t * d, inset);
    }
    return sum;
  }

  private double excess(int axis, double v, double inset) {
    double low = lo[axis] + inset;
    double high = hi[axis] - inset;
    return v < low ? v - low : v > high ? v - high : 0;
  }
}
