package holloway.limits;

/** Loss of a fibre against what a link of that speed bears, decibels (A4). */
public final class FibreLoss {
  private FibreLoss() {}

  /** A4-9: km x loss a km, and each mated pair of connectors, and each splice. */
  public static double of(double metres, int connectors, int splices) {
    return metres / 1000 * SignalFigures.PER_KM.value()
        + connectors * SignalFigures.CONNECTOR.value()
        + splices * SignalFigures.SPLICE.value();
  }
}
