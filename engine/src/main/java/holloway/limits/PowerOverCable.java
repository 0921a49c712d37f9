package holloway.limits;

import java.util.Optional;

/**
 * Power over four-pair cable (A5): what the source gives, what a length of cable loses. The loop of
 * a pairset is two conductors in parallel each way, so 9.38 ohm a 100 m, half of a pair's loop.
 *
 * @param number class 1 to 8
 * @param source watts at the source
 * @param device least watts that the class promises at the far end
 * @param volts least volts at the source
 * @param farVolts least volts at the far end
 * @param pairsets 1, or 2 from class 5 on
 */
public record PowerOverCable(
    int number, double source, double device, double volts, double farVolts, int pairsets) {
  private static final double[] SOURCE = {4, 7, 15.4, 30, 45, 60, 75, 90};
  private static final double[] DEVICE = {3.84, 6.49, 12.95, 25.5, 40, 51, 62, 71.3};

  /** The class of that number, 1 to 8; empty for any other. */
  public static Optional<PowerOverCable> ofClass(int number) {
    if (number < 1 || number > 8) {
      return Optional.empty();
    }
    double volts = number <= 3 ? 44 : number <= 6 ? 50 : 52;
    double far =
        number <= 3
            ? 37
            : number <= 6 ? SignalFigures.FAR_VOLTS.value() : SignalFigures.FAR_VOLTS_8.value();
    return Optional.of(
        new PowerOverCable(
            number, SOURCE[number - 1], DEVICE[number - 1], volts, far, number <= 4 ? 1 : 2));
  }

  /** Ohms there and back over all pairsets, for a length in metres. */
  public double loopOhms(double metres) {
    return pairsetOhms(metres) / pairsets;
  }

  /** Ohms there and back of one pairset. */
  public static double pairsetOhms(double metres) {
    return SignalFigures.PAIR_OHMS.value() * metres / 100;
  }

  /** Amperes through all pairsets when the source gives its full watts at its least volts. */
  public double amperes() {
    return source / volts;
  }

  /** Volts at the far end at full load. */
  public double voltsAtFar(double metres) {
    return volts - amperes() * loopOhms(metres);
  }

  /** Watts left at the far end at full load. */
  public double wattsAtFar(double metres) {
    return source - lossIn(loopOhms(metres));
  }

  /** Watts turned into heat in a loop of that many ohms at full load. */
  public double lossIn(double ohms) {
    return amperes() * amperes() * ohms;
  }

  /** Watts of heat in each metre of cable at full load. */
  public double heatPerMetre() {
    return lossIn(loopOhms(1));
  }
}
