package holloway.schedule;

import holloway.hollow.HollowHouse;
import holloway.hollow.Site;

/** Holes that a bit may miss: they get a thin pilot and a wire first. */
final class Missed {
  /** 1/8 in. */
  static final int PILOT_MM = 3;

  private Missed() {}

  /** The bit may come out too far off, or one side shows nothing to measure from. */
  static boolean canBe(Site site, HollowHouse house) {
    return Tolerance.of(site, house) > Tolerance.LOCATOR_MM;
  }
}
