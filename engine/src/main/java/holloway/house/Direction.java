package holloway.house;

/** The direction in which joists, a ridge or boards run. */
public enum Direction {
  EAST_WEST,
  NORTH_SOUTH;

  public Direction across() {
    return this == EAST_WEST ? NORTH_SOUTH : EAST_WEST;
  }
}
