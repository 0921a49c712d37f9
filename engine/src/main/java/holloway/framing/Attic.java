package holloway.framing;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Roof;
import holloway.units.Length;
import java.util.List;

/**
 * The space under one roof, or behind its knee walls. Heights follow trade-facts D20 to D24: at a
 * distance x from the outer bearing face the sheathing's underside is heel + x·pitch above the
 * plate, and the top chord takes chord / cos θ of that.
 *
 * @param outline world outline to the outer bearing faces
 * @param roofline outline of everything under this roof's slopes, attic or vaulted ceiling: its
 *     sides are the eaves
 * @param plateZ world z of the top of the plates, where chords or ceiling joists sit
 * @param chordTopZ world z of the top of chords or ceiling joists: cable is laid across them
 * @param chords plan range of each chord across its run (world x for chords that run north-south,
 *     world y for east-west)
 * @param chordRun direction in which chords run
 */
public record Attic(
    String id,
    Roof roof,
    Polygon2 outline,
    long plateZ,
    long chordTopZ,
    List<Interval> chords,
    Direction chordRun,
    double heelMm,
    Polygon2 roofline,
    List<Door> doors,
    List<PlacedDormer> dormers) {
  /**
   * A way in through a knee wall, which makes this a side attic.
   *
   * @param at just behind the wall
   */
  public record Door(String room, Point2 at, Length wide, Length high) {}

  /** A part of it under the same slopes. */
  Attic part(String partId, Polygon2 partOutline) {
    return new Attic(
        partId,
        roof,
        partOutline,
        plateZ,
        chordTopZ,
        chords,
        chordRun,
        heelMm,
        roofline,
        doors,
        dormers);
  }

  /** The same with dormers in its slopes. */
  Attic with(List<PlacedDormer> placed) {
    return new Attic(
        id, roof, outline, plateZ, chordTopZ, chords, chordRun, heelMm, roofline, doors, placed);
  }

  /**
   * World z of the underside of the top chord or rafter over a plan point, in a dormer of the level
   * of its front; points outside the roofline count from its nearest eave as zero distance.
   */
  public long roofUnderside(Point2 p) {
    long top = slopeUnderside(p);
    for (PlacedDormer d : dormers) {
      top = d.holds(p) ? Math.max(top, d.clear().z1()) : top;
    }
    return top;
  }

  /** The same without dormers: where the rafters lie that go on beside them. */
  public long slopeUnderside(Point2 p) {
    double slope = roof.pitchRise() / (double) roof.pitchRun();
    double cos = 1 / Math.sqrt(1 + slope * slope);
    double rise = heelMm + eaveDistanceMm(p) * slope - roof.chord().value().depth().toMm() / cos;
    if (roof.shape() == Roof.Shape.ARCHED) {
      // one that cannot be is taken as low as its eaves
      double in = eaveDistanceMm(p);
      rise =
          Arch.of(this).map(a -> a.under(in)).orElse(heelMm - roof.chord().value().depth().toMm());
    }
    if (roof.shape() == Roof.Shape.FLAT) {
      rise = heelMm - roof.chord().value().depth().toMm();
    }
    return plateZ + Math.round(rise * 1e6);
  }

  /** Clear height above the chords at a plan point, nanometres; may be negative at a low eave. */
  public long headroom(Point2 p) {
    return roofUnderside(p) - chordTopZ;
  }

  /** Distance in millimetres from the eave that the roof over this point rises from. */
  private double eaveDistanceMm(Point2 p) {
    Interval x = roofline.xRange();
    Interval y = roofline.yRange();
    double west = (p.x() - x.lo()) / 1e6;
    double east = (x.hi() - p.x()) / 1e6;
    double south = (p.y() - y.lo()) / 1e6;
    double north = (y.hi() - p.y()) / 1e6;
    double d =
        switch (roof.shape()) {
          case GABLE, ARCHED ->
              roof.ridge() == Direction.EAST_WEST ? Math.min(south, north) : Math.min(west, east);
          case HIP -> Math.min(Math.min(south, north), Math.min(west, east));
          case SHED ->
              switch (roof.lowSide().orElse(holloway.house.Side.SOUTH)) {
                case SOUTH -> south;
                case NORTH -> north;
                case WEST -> west;
                case EAST -> east;
              };
          case FLAT -> 0;
        };
    return Math.max(0, d);
  }
}
