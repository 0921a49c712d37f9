package holloway.check;

import holloway.geometry.Box;
import holloway.house.Cavity;
import holloway.house.Fact;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.List;

/**
 * The gap of a cavity wall is no way: no leg lies in it, and a crossing passes it straight. Where
 * it lies is taken from the leaves that were stated, or from what brick and block leave, with
 * figures of the referee's own.
 */
final class CavityRule implements Rule {
  /** Brick and block where nobody measured them; common practice, from memory. */
  private static final double OUTER_MM = 102.5;

  private static final double INNER_MM = 100;

  /** Less than this of a gap or of an inner leaf, and the wall is taken as solid. */
  private static final double GAP_MM = 25;

  private static final double LEAF_MM = 50;

  /** How far aside a bit may come out over the gap. */
  private static final double ASIDE_MM = 40;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Wall w : evidence.house().framed().placed().walls()) {
      if (!w.isFramed() && w.traits().cavity().filter(Cavity::there).isPresent()) {
        double[] gap = gap(w, w.traits().cavity().get().leaves());
        if (gap[1] - gap[0] >= GAP_MM) {
          evidence.steps().forEach(at -> judge(at, w, gap, charge));
        }
      }
    }
  }

  private static void judge(Walk.At at, Wall w, double[] gap, Charge charge) {
    for (Span s : at.spans()) {
      double[] a = local(w, s.a());
      double[] b = local(w, s.b());
      double[] in = within(a[1], b[1], gap);
      boolean beside =
          Math.max(a[0], b[0]) < 0
              || Math.min(a[0], b[0]) > w.length() / 1e6
              || Math.max(a[2], b[2]) < 0
              || Math.min(a[2], b[2]) > w.height() / 1e6;
      if (in[0] >= in[1] || beside) {
        continue;
      }
      double share = in[1] - in[0];
      double aside = share * Math.hypot(b[0] - a[0], b[2] - a[2]);
      if (at.isLeg() || aside > ASIDE_MM) {
        charge.step(at, "lies in the cavity of %s, which keeps the damp out", w.id());
        return;
      }
    }
  }

  /** From which to which share of the way from one depth to another lies in the gap. */
  private static double[] within(double from, double to, double[] gap) {
    if (Math.abs(to - from) < 1e-9) {
      return from > gap[0] && from < gap[1] ? new double[] {0, 1} : new double[] {1, 0};
    }
    double p = (gap[0] - from) / (to - from);
    double q = (gap[1] - from) / (to - from);
    return new double[] {Math.max(0, Math.min(p, q)), Math.min(1, Math.max(p, q))};
  }

  private static double[] local(Wall w, Mm p) {
    return new Solid(w.frame(), new Box(0, 1, 0, 1, 0, 1)).local(p);
  }

  private static double[] gap(Wall w, List<Fact<Length>> leaves) {
    double lo = w.core().lo() / 1e6;
    double hi = w.core().hi() / 1e6;
    double outer = leaves.isEmpty() ? OUTER_MM : leaves.get(0).value().toMm();
    double wide = leaves.isEmpty() ? hi - lo - OUTER_MM - INNER_MM : leaves.get(1).value().toMm();
    if (hi - lo - outer - wide < LEAF_MM) {
      return new double[] {0, 0};
    }
    return switch (w.outside()) {
      case 0 -> new double[] {lo + outer, lo + outer + wide};
      case 1 -> new double[] {hi - outer - wide, hi - outer};
      default -> new double[] {(lo + hi - wide) / 2, (lo + hi + wide) / 2};
    };
  }
}
