package holloway.survey;

import holloway.geometry.Polygon2;
import holloway.house.Level;
import java.util.List;

/**
 * A level in the world.
 *
 * @param order in the list of all levels: part by part, each bottom up
 * @param part of a split-level house; parts stand beside each other and never over one another
 * @param storey within its part, 0 for the lowest
 * @param floorZ finished floor of the level (rooms may differ), nanometres
 * @param ceilingZ underside of the nominal ceiling board
 * @param footprint outlines to the outer face of the outer framing (board and cladding left out),
 *     one per separate part
 */
public record PlacedLevel(
    Level level,
    int order,
    int part,
    int storey,
    long floorZ,
    long ceilingZ,
    List<Polygon2> footprint) {
  /** A level of a house without split levels. */
  public PlacedLevel(Level level, int order, long floorZ, long ceilingZ, List<Polygon2> footprint) {
    this(level, order, 0, order, floorZ, ceilingZ, footprint);
  }

  /** Somewhere over that level: of the same part of the house, and higher. */
  public boolean isOver(PlacedLevel other) {
    return part == other.part && storey > other.storey;
  }

  /** The next one over that level. */
  public boolean isNextOver(PlacedLevel other) {
    return part == other.part && storey == other.storey + 1;
  }

  public String name() {
    return level.name();
  }
}
