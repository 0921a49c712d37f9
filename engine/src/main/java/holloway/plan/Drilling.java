package holloway.plan;

import holloway.catalog.Fit;
import holloway.hollow.HollowHouse;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a hole is bored with (trade-facts E1 to E3). The hole's card, what to bring up and what to
 * buy all ask here, so that they name one tool.
 */
public enum Drilling {
  /** A drill and a bit of the usual length. */
  SHORT,
  /** A long bit, or an extension. */
  LONG,
  /** A flexible-shaft bit: fed in through an opening, or too deep for a long one. */
  FLEXIBLE,
  /**
   * Through an opening, in a size that no flexible bit is made in: an arm reaches that far, with a
   * long bit where the hole is deep.
   */
  ANGLED,
  /** A hammer drill and a masonry bit as long as the wall is thick. */
  MASONRY;

  /** A ship auger's length, millimetres. */
  public static final double AUGER_MM = 190;

  /** An electrician's long bit's, millimetres. */
  public static final double LONG_MM = 455;

  /** By hole id. */
  public static Map<String, Drilling> of(Plan plan, HollowHouse house) {
    Map<String, Drilling> out = new TreeMap<>();
    plan.holes().forEach(h -> out.put(h.id(), of(h, house)));
    return out;
  }

  public static Drilling of(Plan.PlannedHole hole, HollowHouse house) {
    return of(hole, isThroughOpening(hole, house));
  }

  /** It is not bored from where a person stands, but through a cut-out, a patch or the like. */
  public static boolean isThroughOpening(Plan.PlannedHole hole, HollowHouse house) {
    return house.stands().stream().noneMatch(s -> s.id().equals(hole.stand()));
  }

  static Drilling of(Plan.PlannedHole hole, boolean throughOpening) {
    if (isStone(hole)) {
      return MASONRY;
    }
    boolean made = Fit.FLEXIBLE_MM.contains(hole.diameterMm());
    if (throughOpening) {
      return made ? FLEXIBLE : ANGLED;
    }
    if (!isDeep(hole)) {
      return SHORT;
    }
    return hole.depthMm() <= LONG_MM || !made ? LONG : FLEXIBLE;
  }

  /** A bit of the usual length does not come through. */
  public static boolean isDeep(Plan.PlannedHole hole) {
    return hole.depthMm() > AUGER_MM;
  }

  /** Through brick, block or stone. */
  public static boolean isStone(Plan.PlannedHole hole) {
    return hole.through().stream().anyMatch(t -> t.startsWith("masonry"));
  }
}
