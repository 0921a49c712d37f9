package holloway.house;

import java.util.Locale;

/**
 * The corner of the house that the carpenters laid studs, joists, trusses and rafters out from, one
 * layout over all storeys. It decides the assumed layouts alone: whatever was found is as it was
 * found.
 */
public enum LayoutCorner {
  SOUTH_WEST,
  SOUTH_EAST,
  NORTH_WEST,
  NORTH_EAST;

  /** The corner between two sides, in either order. */
  public static LayoutCorner between(Side a, Side b) {
    Side northSouth = a.runsEastWest() ? a : b;
    Side eastWest = a.runsEastWest() ? b : a;
    if (northSouth.runsEastWest() == eastWest.runsEastWest()) {
      throw new IllegalArgumentException("no corner between " + a + " and " + b);
    }
    return valueOf(northSouth.name() + "_" + eastWest.name());
  }

  /** The side that is counted from along a wall or across joists. */
  public Side from(boolean eastWest) {
    boolean north = this == NORTH_WEST || this == NORTH_EAST;
    boolean east = this == SOUTH_EAST || this == NORTH_EAST;
    return eastWest ? (east ? Side.EAST : Side.WEST) : north ? Side.NORTH : Side.SOUTH;
  }

  /** Is it counted down from the upper end: from the east where it runs east-west, or the north? */
  public boolean isFromHigh(boolean eastWest) {
    Side from = from(eastWest);
    return from == Side.EAST || from == Side.NORTH;
  }

  /** As in the house file. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
