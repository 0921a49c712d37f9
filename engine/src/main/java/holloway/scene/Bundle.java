package holloway.scene;

/**
 * How cables of one width lie in a round bundle: one in the middle and rings about it, none on
 * another. Up to nine take less room than a hole that is filled by two fifths has, and so do more.
 */
final class Bundle {
  private Bundle() {}

  /**
   * Where the k-th of n lies, in widths from the middle of the bundle.
   *
   * @param k from 0
   */
  static double[] place(int k, int n) {
    // From seven on a ring about nothing would waste its middle.
    boolean middle = n == 1 || n >= 7;
    if (middle && k == 0) {
      return new double[] {0, 0};
    }
    int left = k - (middle ? 1 : 0);
    int of = n - (middle ? 1 : 0);
    if (of <= 8) {
      return ring(left, of, 0);
    }
    double radius = 1;
    int holds = 6;
    while (left >= holds) {
      left -= holds;
      of -= holds;
      radius++;
      // Six more fit a ring that is one width farther out.
      holds += 6;
    }
    return ring(left, Math.min(of, holds), radius);
  }

  /** The k-th of n on a ring that is as narrow as they fit on, and no narrower than asked for. */
  private static double[] ring(int k, int n, double radius) {
    double least = n == 1 ? 0 : 0.5 / Math.sin(Math.PI / n);
    double r = Math.max(least, radius);
    double turn = 2 * Math.PI * k / n;
    return new double[] {r * Math.cos(turn), r * Math.sin(turn)};
  }
}
