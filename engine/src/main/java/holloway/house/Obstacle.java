package holloway.house;

import holloway.units.Length;
import java.util.Optional;

/**
 * Something solid or dangerous that is stated. In a wall it takes the stretch along x height; in a
 * ceiling void, attic or crawlspace, or hung under a ceiling, the plan rectangle centred on the
 * spot.
 */
public record Obstacle(Kind kind, Optional<InWall> inWall, Optional<InVoid> inVoid, Where where) {
  /**
   * What it is; a PIER stands in a crawlspace from the ground to the joists; POWER is to be kept
   * away from rather than gone round.
   */
  public enum Kind {
    DUCT,
    DRAIN,
    PIPE,
    HEADER,
    FIRE_BLOCK,
    POWER,
    /** A motor or a transformer. */
    MOTOR,
    FLUORESCENT_LIGHT,
    TANK,
    CHIMNEY,
    BEAM,
    PIER,
    OTHER
  }

  /**
   * Within a wall, seen from a face: near end along it, width, bottom and top above that room's
   * floor.
   */
  public record InWall(
      FaceRef face, Along along, Fact<Length> width, Fact<Length> bottom, Fact<Length> top) {}

  /**
   * In the void above a room (attic or joists) or below its floor, or hung in the room itself,
   * under its ceiling.
   */
  public record InVoid(
      CeilingSpot at, Place place, Length eastWest, Length northSouth, Length height) {
    /** In the house file a key: above-ceiling-of, below-ceiling-of, below-floor-of. */
    public enum Place {
      ABOVE_CEILING,
      BELOW_CEILING,
      BELOW_FLOOR
    }

    public boolean above() {
      return place == Place.ABOVE_CEILING;
    }

    /** A light or a fan that one sees when one looks up. */
    public boolean hung() {
      return place == Place.BELOW_CEILING;
    }
  }
}
