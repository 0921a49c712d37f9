package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.Side;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A stretch in which two rooms meet without a wall. Only sides that run east-west or north-south
 * are open to each other.
 *
 * @param side of the first room
 * @param along world x (of a north or south side) or y that both sides share
 * @param one where the first room's face lies across it, {@code other} the second room's
 * @param headZ world z of what hangs lowest over it: a header, or the lower ceiling
 * @param header whether a header hangs there
 */
public record OpenSide(
    PlacedRoom first,
    PlacedRoom second,
    Side side,
    Interval along,
    long one,
    long other,
    long headZ,
    boolean header) {
  /** Less than this in common is a corner. */
  private static final long LEAST = 300_000_000;

  /** Faces of an open side coincide but for rounding. */
  private static final long TOUCH = 1_000_000;

  /** No house has a thicker header. */
  private static final long THICKEST = 450_000_000;

  /** All of a house, in the order of its file. */
  public static List<OpenSide> of(Placed placed) {
    List<OpenSide> out = new ArrayList<>();
    placed.house().walls().forEach(w -> out.addAll(of(placed.rooms(), w)));
    return out;
  }

  /** Says that nothing at all is between two rooms. */
  static boolean isThrough(WallSpec spec) {
    return isOpen(spec) && spec.traits().header().isEmpty();
  }

  private static boolean isOpen(WallSpec spec) {
    return spec.kind().filter(k -> k == WallSpec.Kind.OPEN).isPresent();
  }

  static List<OpenSide> of(List<PlacedRoom> rooms, WallSpec spec) {
    Optional<WallRef.Between> pair = spec.ref().flatMap(WallRef::between);
    List<OpenSide> out = new ArrayList<>();
    if (!isOpen(spec) || pair.isEmpty()) {
      return out;
    }
    PlacedRoom a = find(rooms, pair.get().one());
    PlacedRoom b = find(rooms, pair.get().other());
    if (!a.room().level().equals(b.room().level())) {
      return out;
    }
    Optional<Long> drop = spec.traits().header().map(h -> h.value().nm());
    for (Side side : Side.values()) {
      for (Placed.Segment f : Faces.of(a.outline(), side)) {
        for (Placed.Segment g : Faces.of(b.outline(), side.opposite())) {
          between(a, b, side, f, g, drop).ifPresent(out::add);
        }
      }
    }
    return out;
  }

  private static PlacedRoom find(List<PlacedRoom> rooms, String name) {
    return rooms.stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
  }

  private static Optional<OpenSide> between(
      PlacedRoom a,
      PlacedRoom b,
      Side side,
      Placed.Segment f,
      Placed.Segment g,
      Optional<Long> drop) {
    if (!isSquare(f, side) || !isSquare(g, side)) {
      return Optional.empty();
    }
    long one = across(f.start(), side);
    long other = across(g.start(), side);
    boolean onward = side == Side.EAST || side == Side.NORTH;
    long gap = onward ? other - one : one - other;
    boolean near = drop.isPresent() ? gap >= 0 && gap <= THICKEST : Math.abs(gap) <= TOUCH;
    long head = Math.min(a.ceilingZ(), b.ceilingZ()) - drop.orElse(0L);
    return along(f, side)
        .cut(along(g, side))
        .filter(i -> near && i.length() >= LEAST)
        .map(i -> new OpenSide(a, b, side, i, one, other, head, drop.isPresent()));
  }

  private static boolean isSquare(Placed.Segment f, Side side) {
    return across(f.start(), side) == across(f.end(), side);
  }

  private static long across(Point2 p, Side side) {
    return side.runsEastWest() ? p.y() : p.x();
  }

  private static Interval along(Placed.Segment f, Side side) {
    long p = side.runsEastWest() ? f.start().x() : f.start().y();
    long q = side.runsEastWest() ? f.end().x() : f.end().y();
    return new Interval(Math.min(p, q), Math.max(p, q));
  }

  /** A point of the line at a place along it, off the face of either room and into it. */
  public Point2 inside(boolean ofFirst, long at, long off) {
    boolean onward = side == Side.EAST || side == Side.NORTH;
    long across = ofFirst ? one + (onward ? -off : off) : other + (onward ? off : -off);
    return side.runsEastWest() ? new Point2(at, across) : new Point2(across, at);
  }

  public boolean shows(String room) {
    return first.name().equals(room) || second.name().equals(room);
  }
}
