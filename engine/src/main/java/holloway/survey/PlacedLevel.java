package holloway.survey;

import holloway.geometry.Polygon2;
import holloway.house.Level;
import java.util.List;

/**
 * A level in the world.
 *
 * @param order 0 for the lowest
 * @param floorZ finished floor of the level (rooms may differ), nanometres
 * @param ceilingZ underside of the nominal ceiling board
 * @param footprint outlines to the outer face of the outer framing (board and cladding left out),
 *     one per separate part
 */
public record PlacedLevel(
    Level level, int order, long floorZ, long ceilingZ, List<Polygon2> footprint) {
  public String name() {
    return level.name();
  }
}
