package holloway.house;

import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * A floor's make-up. For JOISTS: section, spacing, run, and what lies under the lowest joisted
 * floor (a crawlspace with its clear height from ground to joist underside, or nothing said because
 * a level lies below). {@code origin} is the distance of the first joist centre from the floor's
 * south or west outer edge, if found; negative: from its north or east edge. {@code boards}:
 * floorboards that lift, not sheets. {@code blocksAt}: rows of solid blocks between the joists, by
 * distance of their centre along them from the floor's west or south outer edge; negative: from its
 * east or north edge. {@code clearOverWalls}: somebody looked, and no blocks stand between the
 * joists over the bearing and outer walls below.
 */
public record FloorSpec(
    Kind kind,
    Optional<Fact<Timber>> joists,
    Fact<Length> every,
    Direction run,
    Optional<Fact<Length>> origin,
    Optional<Crawlspace> crawlspace,
    boolean boards,
    Fill fill,
    List<Fact<Length>> blocksAt,
    boolean clearOverWalls,
    Where where) {
  /** Of a floor that is taken to be blocked over the walls that carry it. */
  public FloorSpec(
      Kind kind,
      Optional<Fact<Timber>> joists,
      Fact<Length> every,
      Direction run,
      Optional<Fact<Length>> origin,
      Optional<Crawlspace> crawlspace,
      boolean boards,
      Fill fill,
      List<Fact<Length>> blocksAt,
      Where where) {
    this(kind, joists, every, run, origin, crawlspace, boards, fill, blocksAt, false, where);
  }

  /** Of a floor without rows of blocks. */
  public FloorSpec(
      Kind kind,
      Optional<Fact<Timber>> joists,
      Fact<Length> every,
      Direction run,
      Optional<Fact<Length>> origin,
      Optional<Crawlspace> crawlspace,
      boolean boards,
      Fill fill,
      Where where) {
    this(kind, joists, every, run, origin, crawlspace, boards, fill, List.of(), where);
  }

  public FloorSpec {
    blocksAt = List.copyOf(blocksAt);
  }

  /** What carries the floor. */
  public enum Kind {
    SLAB,
    JOISTS
  }

  /** A crawlspace: clear height from ground to the underside of the joists, and the way in. */
  public record Crawlspace(Fact<Length> clearance, Optional<WayIn> access, Where where) {}

  /** A hatch in a room's floor, or a door in an outside wall. */
  public record WayIn(
      Optional<CeilingSpot> floorHatch,
      Optional<WallSpot> outsideDoor,
      Length width,
      Length height,
      Where where) {}
}
