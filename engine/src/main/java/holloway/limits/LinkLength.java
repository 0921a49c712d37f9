package holloway.limits;

/**
 * How long copper may be, in metres (A1). Heat: H = 90 - 75 x the added loss, which gives the two
 * published cells, 84.0 m at 40 C and 79.5 m at 50 C; 90 / (1 + loss) would not.
 */
public final class LinkLength {
  private LinkLength() {}

  /** Added insertion loss at a temperature, as a fraction; none at 20 C and below. */
  public static double addedLoss(double celsius, boolean screened) {
    double over = Math.max(0, celsius - CablingFigures.HEAT_FROM.value());
    if (screened) {
      return over * CablingFigures.HEAT_SCREENED.value();
    }
    return Math.min(over, 20) * CablingFigures.HEAT_UTP.value()
        + Math.max(0, over - 20) * CablingFigures.HEAT_UTP_HOT.value();
  }

  /** The longest permanent link at that temperature all along. */
  public static double linkAt(double celsius, boolean screened) {
    return linkPartHot(celsius, screened, 1);
  }

  /**
   * The same where only a share of it, 0 to 1, lies in the heat: the loss is added in proportion,
   * which is our own reading of the rule.
   */
  public static double linkPartHot(double celsius, boolean screened, double share) {
    return CablingFigures.LINK_MOST.value()
        - CablingFigures.HEAT_RULE.value() * addedLoss(celsius, screened) * share;
  }

  /** All cords together beside a link, from the cord formula; D is 0.2 (24 AWG) or 0.5 (26). */
  public static double cords(double link, double d) {
    return (CablingFigures.CORD_SUM.value() - link) / (1 + d);
  }

  /** What is left of them at the outlet. */
  public static double cordAtOutlet(double link, double d, double cordsAtRack) {
    return Math.min(CablingFigures.CORD_OUTLET.value(), cords(link, d) - cordsAtRack);
  }
}
