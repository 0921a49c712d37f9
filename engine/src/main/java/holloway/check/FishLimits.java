package holloway.check;

import holloway.hollow.Hollow;
import java.util.OptionalDouble;

/**
 * How far one can fish, in metres, by hollow and fill: the design's settled points, from
 * experience. Conduit: 30 m and two quarter turns between pull points (trade-facts A6-12, A6-11).
 */
final class FishLimits {
  /** Between two places where a hand has the cable. */
  static final int CONDUIT_DEGREES = 180;

  static final double CONDUIT_M = 30;

  /** How far an arm with a tool goes in through an opening; from experience. */
  static final double ARM_MM = 450;

  private FishLimits() {}

  /** Empty when the hollow cannot be fished at all. */
  static OptionalDouble metres(Hollow hollow) {
    return switch (hollow.kind()) {
      case CHASE -> shut(hollow, 12);
      case CONDUIT -> OptionalDouble.of(CONDUIT_M);
      case FURRED_BAY -> OptionalDouble.of(2.5);
      case DAB_VOID -> OptionalDouble.of(1);
      case OLD_CABLE -> OptionalDouble.of(15);
      case JOIST_BAY, SOFFIT, BATTEN_VOID, SERVICE_VOID, PORCH_VOID -> flat(hollow);
      case STUD_BAY, RETURN_AIR -> upright(hollow);
      default -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble upright(Hollow hollow) {
    return switch (hollow.fill()) {
      case EMPTY -> OptionalDouble.of(5.5);
      case FACED_BATT -> OptionalDouble.of(3);
      case UNFACED_BATT, LOOSE, UNKNOWN -> OptionalDouble.of(2.5);
      case DENSE_PACKED, FOAM -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble flat(Hollow hollow) {
    return switch (hollow.fill()) {
      case EMPTY -> OptionalDouble.of(7.5);
      case FACED_BATT, UNFACED_BATT, LOOSE, UNKNOWN -> OptionalDouble.of(3);
      case DENSE_PACKED, FOAM -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble shut(Hollow hollow, double metres) {
    return switch (hollow.fill()) {
      case DENSE_PACKED, FOAM -> OptionalDouble.empty();
      default -> OptionalDouble.of(metres);
    };
  }
}
