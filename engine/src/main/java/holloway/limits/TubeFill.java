package holloway.limits;

import java.util.Collection;

/** How full a tube is (A6), by areas: practice for data cable, A6-3. */
public final class TubeFill {
  private TubeFill() {}

  /** The share of a tube's section that so many cables may take. */
  public static double limit(int cables, boolean nipple) {
    if (nipple) {
      return SignalFigures.FILL_NIPPLE.value();
    }
    return switch (cables) {
      case 1 -> SignalFigures.FILL_ONE.value();
      case 2 -> SignalFigures.FILL_TWO.value();
      default -> SignalFigures.FILL_MORE.value();
    };
  }

  /** The share that cables of those diameters take of a tube of that inside diameter, one unit. */
  public static double share(Collection<Double> diameters, double inside) {
    return diameters.stream().mapToDouble(d -> d * d).sum() / (inside * inside);
  }

  /** How many alike cables go into a tube by the limits for one, two, and three or more. */
  public static int most(double diameter, double inside) {
    double one = diameter * diameter / (inside * inside);
    int many = (int) Math.floor(SignalFigures.FILL_MORE.value() / one + 1e-9);
    if (many >= 3) {
      return many;
    }
    if (2 * one <= SignalFigures.FILL_TWO.value()) {
      return 2;
    }
    return one <= SignalFigures.FILL_ONE.value() ? 1 : 0;
  }
}
