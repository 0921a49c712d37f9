package holloway.limits;

/**
 * Loss of a fibre against what a link at 10 Gbit/s bears, decibels (A4).
 *
 * @param perKm loss of the glass
 * @param budget what the optics bear, connectors and all
 * @param optics by name
 */
public record FibreLoss(Figure perKm, Figure budget, String optics) {
  public static final FibreLoss OM4 =
      new FibreLoss(SignalFigures.PER_KM, SignalFigures.BUDGET_OM4, "10GBASE-SR");
  public static final FibreLoss SINGLE =
      new FibreLoss(SignalFigures.PER_KM_SINGLE, SignalFigures.BUDGET_SINGLE, "10GBASE-LR");
  public static final FibreLoss SINGLE_OUTSIDE =
      new FibreLoss(SignalFigures.PER_KM_SINGLE_OUTSIDE, SignalFigures.BUDGET_SINGLE, "10GBASE-LR");

  /** A4-9: km x loss a km, and each mated pair of connectors, and each splice. */
  public double of(double metres, int connectors, int splices) {
    return metres / 1000 * perKm.value()
        + connectors * SignalFigures.CONNECTOR.value()
        + splices * SignalFigures.SPLICE.value();
  }
}
