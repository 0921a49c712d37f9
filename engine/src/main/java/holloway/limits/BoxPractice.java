package holloway.limits;

import holloway.units.Length;

/**
 * How deep a box or bracket for an outlet is, from the face of the lining to its back. All figures
 * are from experience.
 */
public final class BoxPractice {
  /** What a bracket with its jack, plug and the bend of the cable takes where nobody said. */
  public static final Length USUAL = Length.mm(64);

  /** A shallow box or ring with the jack turned sideways; in less no box goes. */
  public static final Length LEAST = Length.mm(35);

  private BoxPractice() {}
}
