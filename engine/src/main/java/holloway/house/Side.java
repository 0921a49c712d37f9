package holloway.house;

import java.util.Locale;

/** A compass side of a room; house north need not be true north. */
public enum Side {
  NORTH,
  EAST,
  SOUTH,
  WEST;

  public Side opposite() {
    return values()[(ordinal() + 2) % 4];
  }

  /** True for north and south: a face on that side runs east-west. */
  public boolean runsEastWest() {
    return this == NORTH || this == SOUTH;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
