package holloway.survey;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Along;
import holloway.house.Side;
import holloway.house.Stair;
import java.util.Optional;

/**
 * A flight in the world.
 *
 * @param upper the level it leads to
 * @param box plan of flight and well; from the lower room's floor to the upper level's
 */
public record PlacedStair(Stair stair, PlacedRoom room, PlacedLevel upper, Box box) {
  static Optional<PlacedStair> of(Placed placed, Stair stair) {
    PlacedRoom room = placed.getRoom(stair.near().room());
    PlacedLevel foot = placed.getLevel(room.room().level());
    return placed.levels().stream()
        .filter(l -> l.isNextOver(foot))
        .findFirst()
        .map(l -> new PlacedStair(stair, room, l, box(room, l.floorZ(), stair)));
  }

  /** The box of a flight that ends at a height. */
  static Box box(PlacedRoom room, long topZ, Stair stair) {
    Interval x =
        stretch(
            room.outline().xRange(), stair.near().eastWest(), stair.size().eastWest().value().nm());
    Interval y =
        stretch(
            room.outline().yRange(),
            stair.near().northSouth(),
            stair.size().northSouth().value().nm());
    return new Box(
        x.lo(), x.hi(), y.lo(), y.hi(), room.floorZ(), Math.max(room.floorZ() + 1, topZ));
  }

  private static Interval stretch(Interval room, Along near, long size) {
    long d = near.distance().value().nm();
    boolean low = near.from() == Side.WEST || near.from() == Side.SOUTH;
    return low
        ? new Interval(room.lo() + d, room.lo() + d + size)
        : new Interval(room.hi() - d - size, room.hi() - d);
  }

  /** True when it climbs north or south. */
  public boolean northSouth() {
    return stair.climbs().runsEastWest();
  }

  /** True when its upper end is the east or north one. */
  public boolean onward() {
    return stair.climbs() == Side.EAST || stair.climbs() == Side.NORTH;
  }

  /** A level frame at its south-west corner (south-east if it climbs north-south), u along it. */
  public Frame frame() {
    return northSouth()
        ? Frame.northSouth(new Point3(box.x1(), box.y0(), box.z0()))
        : Frame.eastWest(new Point3(box.x0(), box.y0(), box.z0()));
  }

  public long length() {
    return northSouth() ? box.y().length() : box.x().length();
  }

  public long width() {
    return northSouth() ? box.x().length() : box.y().length();
  }

  public long rise() {
    return box.z().length();
  }
}
