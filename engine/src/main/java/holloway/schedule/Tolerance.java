package holloway.schedule;

import holloway.framing.Member;
import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.house.Fact;
import holloway.survey.Wall;

/**
 * How far a bit may come out from where it should: errors of position add as the root of the sum of
 * squares. A tape line on each side (behind-the-board L7), the spread of each wall that is bored,
 * and how far out of plumb a stud wall stands over its height (L1, 1/4 in).
 */
final class Tolerance {
  /** 1/4 in in a storey, L1. */
  private static final double PLUMB_MM = 6.35;

  /** Edge found with a stud finder, L10 (from memory). */
  private static final double FINDER_MM = 3;

  /** Above this a wire is left as a locator: 3/4 in, behind-the-board's advice. */
  static final double LOCATOR_MM = 20;

  private Tolerance() {}

  /** Millimetres, one standard deviation. */
  static double of(Site site, HollowHouse house) {
    double tape = Fact.TAPE.toMm();
    double square = 2 * tape * tape + PLUMB_MM * PLUMB_MM;
    for (Wall w : house.framed().placed().walls()) {
      if (bores(site, w, house)) {
        square += w.spread().toMm() * w.spread().toMm();
      }
    }
    return Math.sqrt(square + (site.assumed() ? FINDER_MM * FINDER_MM : 0));
  }

  private static boolean bores(Site site, Wall w, HollowHouse house) {
    return house.framed().members().stream()
        .filter(m -> m.owner().equals(w.id()))
        .map(Member::id)
        .anyMatch(site.pierces()::contains);
  }
}
