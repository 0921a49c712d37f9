package holloway.routing;

import holloway.hollow.HollowKind;
import holloway.house.Fill;

/**
 * How far cable can be fished blind in one hollow, from experience (design, settled points; conduit
 * by A6-11, A6-12).
 */
final class FishLimits {
  private FishLimits() {}

  /** Nanometres; 0 where nothing passes. */
  static long most(HollowKind kind, Fill fill) {
    return switch (kind) {
      case STUD_BAY ->
          switch (fill) {
            case EMPTY -> 5_500_000_000L;
            case FACED_BATT -> 3_000_000_000L;
            case UNFACED_BATT, LOOSE, UNKNOWN -> 2_500_000_000L;
            case DENSE_PACKED, FOAM -> 0;
          };
      case JOIST_BAY, SOFFIT, BATTEN_VOID, SERVICE_VOID, PORCH_VOID ->
          fill == Fill.EMPTY
              ? 7_500_000_000L
              : fill == Fill.FOAM || fill == Fill.DENSE_PACKED ? 0 : 3_000_000_000L;
      case CHASE -> 12_000_000_000L;
      case CONDUIT -> 30_000_000_000L;
      case FURRED_BAY -> 2_500_000_000L;
      case DAB_VOID -> 1_000_000_000L;
      case OLD_CABLE -> 15_000_000_000L;
      default -> 0;
    };
  }
}
