package holloway.check;

import holloway.framing.Attic;
import holloway.hollow.Site;
import holloway.house.Along;
import holloway.house.Roof;
import holloway.house.Side;
import java.util.List;
import java.util.Optional;

/** A cable passes from one attic into another only through an opening that was stated there. */
final class JoinRule implements Rule {
  private static final double SLACK_MM = 1;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Walk.At at : evidence.steps()) {
      Optional<Site> site = at.isCrossing() ? evidence.site(at) : Optional.empty();
      if (site.isEmpty()) {
        continue;
      }
      Optional<Attic> a = attic(site.get().hollowA(), evidence);
      Optional<Attic> b = attic(site.get().hollowB(), evidence);
      boolean two = a.isPresent() && b.isPresent();
      if (two && !stated(a.get(), b.get(), site.get()) && !stated(b.get(), a.get(), site.get())) {
        charge.step(
            at,
            "goes from the attic %s into %s, where no opening is stated",
            a.get().id(),
            b.get().id());
      } else if (two) {
        Mm middle = Mm.of(site.get().middle());
        heights(middle, a.get(), at, charge);
        heights(middle, b.get(), at, charge);
      }
    }
  }

  /** What passes into an attic does so over its ceiling joists and below its slope. */
  private static void heights(Mm middle, Attic attic, Walk.At at, Charge charge) {
    double low = mm(attic.chordTopZ()) - middle.z();
    if (low > SLACK_MM) {
      charge.step(at, "passes %.0f mm below the ceiling joists of %s", low, attic.id());
    }
    double high = middle.z() - new Slopes(attic).underside(middle);
    if (high > SLACK_MM) {
      charge.step(at, "passes %.0f mm above the slope of %s", high, attic.id());
    }
  }

  private static Optional<Attic> attic(String hollow, Evidence evidence) {
    return evidence.house().framed().attics().stream()
        .filter(a -> hollow.equals("attic/" + a.id()))
        .findFirst();
  }

  private static boolean stated(Attic from, Attic to, Site site) {
    List<Roof.Join> joins = from.roof().joins();
    return joins.stream()
        .anyMatch(j -> j.to().equals(to.roof().name()) && within(from, to, j, site));
  }

  /** The crossing's middle lies in the stretch of the common wall that the opening takes. */
  private static boolean within(Attic a, Attic b, Roof.Join join, Site site) {
    double[] x = common(mm(a.outline().xRange().lo()), mm(a.outline().xRange().hi()), b, true);
    double[] y = common(mm(a.outline().yRange().lo()), mm(a.outline().yRange().hi()), b, false);
    boolean northSouth = y[1] - y[0] > x[1] - x[0];
    double[] wall = northSouth ? y : x;
    double wide = join.wide().toMm();
    double near = (wall[0] + wall[1] - wide) / 2;
    if (join.from().isPresent()) {
      Along from = join.from().get();
      boolean low = from.from() == Side.SOUTH || from.from() == Side.WEST;
      double taped = from.distance().value().toMm();
      near = low ? wall[0] + taped : wall[1] - taped - wide;
    }
    Mm middle = Mm.of(site.middle());
    double along = northSouth ? middle.y() : middle.x();
    double across = northSouth ? middle.x() : middle.y();
    double[] thick = northSouth ? x : y;
    double sill = Math.max(mm(a.chordTopZ()), mm(b.chordTopZ()));
    return middle.z() <= sill + join.high().toMm() + SLACK_MM
        && along >= near - SLACK_MM
        && along <= near + wide + SLACK_MM
        && across >= thick[0] - SLACK_MM
        && across <= thick[1] + SLACK_MM;
  }

  private static double[] common(double lo, double hi, Attic b, boolean x) {
    var range = x ? b.outline().xRange() : b.outline().yRange();
    return new double[] {Math.max(lo, mm(range.lo())), Math.min(hi, mm(range.hi()))};
  }

  private static double mm(long nm) {
    return nm / 1e6;
  }
}
