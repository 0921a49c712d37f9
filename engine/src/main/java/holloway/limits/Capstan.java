package holloway.limits;

/**
 * The pull on a cable along a fish, newtons (E16 to E20): friction and weight along each straight
 * stretch, and the capstan equation at each turn.
 *
 * @param friction between cable and what it lies on
 * @param newtonsPerMetre weight of the cable
 */
public record Capstan(double friction, double newtonsPerMetre) {
  /** A pound-force in newtons, exact. */
  public static final double POUND = 4.4482216152605;

  /** Newtons a metre of a cable of that many pounds a thousand feet. */
  public static double poundsPerThousandFeet(double pounds) {
    return pounds * POUND / 304.8;
  }

  /** After a straight stretch that rises by {@code rise} metres along {@code metres}; never < 0. */
  public double straight(double before, double metres, double rise) {
    double run = Math.sqrt(Math.max(0, metres * metres - rise * rise));
    return Math.max(0, before + newtonsPerMetre * (rise + friction * run));
  }

  /** After a turn of that many radians. */
  public double turn(double before, double radians) {
    return before * Math.exp(friction * radians);
  }
}
