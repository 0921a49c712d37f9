package holloway.check;

import holloway.framing.Attic;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.hollow.Site;
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
      Optional<AtticWay> way =
          two
              ? stated(a.get(), b.get(), site.get()).or(() -> stated(b.get(), a.get(), site.get()))
              : Optional.empty();
      if (two && way.isEmpty()) {
        charge.step(
            at,
            "goes from the attic %s into %s, where no opening is stated",
            a.get().id(),
            b.get().id());
      } else if (two) {
        Mm middle = Mm.of(site.get().middle());
        joists(middle, a.get(), at, charge);
        joists(middle, b.get(), at, charge);
        slope(middle, way.get().from(), at, charge);
        if (way.get().isValley()) {
          valley(way.get(), site.get(), at, evidence, charge);
        } else {
          slope(middle, way.get().to(), at, charge);
        }
      }
    }
  }

  /** What passes into an attic does so over its ceiling joists. */
  private static void joists(Mm middle, Attic attic, Walk.At at, Charge charge) {
    double low = mm(attic.chordTopZ()) - middle.z();
    if (low > SLACK_MM) {
      charge.step(at, "passes %.0f mm below the ceiling joists of %s", low, attic.id());
    }
  }

  /** And below its slope; in a valley the lower roof's sheathing is out of the way. */
  private static void slope(Mm middle, Attic attic, Walk.At at, Charge charge) {
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

  /**
   * One roof runs onto the other only where it lies higher, and between the rafters of the lower
   * one.
   */
  private static void valley(
      AtticWay way, Site site, Walk.At at, Evidence evidence, Charge charge) {
    Mm end = Mm.of(site.hollowA().equals("attic/" + way.to().id()) ? site.a() : site.b());
    double under = new Slopes(way.to()).underside(end) - new Slopes(way.from()).underside(end);
    if (under > SLACK_MM) {
      charge.step(
          at,
          "is stated to pass a valley, but %s lies %.0f mm above %s there",
          way.to().id(),
          under,
          way.from().id());
    }
    for (Member m : evidence.house().framed().members()) {
      boolean rafter = m.kind() == MemberKind.RAFTER || m.kind() == MemberKind.TOP_CHORD;
      if (rafter && m.owner().startsWith(way.to().roof().name())) {
        Mm foot = Mm.of(m.frame().origin());
        double off = way.northSouth() ? end.y() - foot.y() : end.x() - foot.x();
        if (Math.abs(off) < m.box().y().length() / 2e6 - SLACK_MM) {
          charge.step(at, "passes through the rafter %s", m.id());
        }
      }
    }
  }

  private static Optional<AtticWay> stated(Attic from, Attic to, Site site) {
    return from.roof().joins().stream()
        .filter(j -> !j.shut() && j.to().equals(to.roof().name()))
        .map(j -> new AtticWay(from, to, j))
        .filter(w -> w.holds(Mm.of(site.middle()), SLACK_MM))
        .findFirst();
  }

  private static double mm(long nm) {
    return nm / 1e6;
  }
}
