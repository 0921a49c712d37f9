package holloway.schedule;

import holloway.framing.MemberKind;
import holloway.geometry.Frame;
import holloway.geometry.Point3;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.survey.Wall;
import java.util.Comparator;
import java.util.Optional;

/**
 * What covers a rim joist outside. Sheathing and cladding come down over it from the wall that
 * stands on it; the model's skin ends with the wall.
 */
final class RimSkin {
  /** A rim lies no further than this under its wall's foot; from experience. */
  private static final long UNDER = 450_000_000;

  /** The mouth of the bore lies within the wall's thickness, or this near to it. */
  private static final long BESIDE = 60_000_000;

  private RimSkin() {}

  /** Thickness in nanometres; empty for a hole that does not leave the house through a bare rim. */
  static Optional<Long> of(Site site, HollowHouse house) {
    boolean outA = isOutside(site.hollowA(), house);
    boolean bare =
        site.layers().stream().noneMatch(l -> l.what().equals(MemberKind.CLADDING.word()));
    if (site.kind() != SiteKind.RIM || !bare || outA == isOutside(site.hollowB(), house)) {
      return Optional.empty();
    }
    Point3 mouth = outA ? site.a() : site.b();
    return house.framed().placed().walls().stream()
        .filter(w -> w.isOuter() && standsOver(w, mouth))
        .min(Comparator.comparing(Wall::id))
        .map(w -> w.outside() == 0 ? w.core().lo() : w.thickness() - w.core().hi())
        .filter(nm -> nm > 0);
  }

  private static boolean isOutside(String hollow, HollowHouse house) {
    return house.findHollow(hollow).filter(h -> h.kind() == HollowKind.OUTSIDE_FACE).isPresent();
  }

  private static boolean standsOver(Wall w, Point3 mouth) {
    Frame f = w.frame();
    Point3 p = f.toLocal(mouth);
    return p.z() < 0
        && p.z() > -UNDER
        && p.x() >= 0
        && p.x() <= w.length()
        && p.y() >= -BESIDE
        && p.y() <= w.thickness() + BESIDE;
  }
}
