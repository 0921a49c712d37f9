package holloway.survey;

import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Battens;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.Lining;
import holloway.house.Opening;
import holloway.house.Side;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * One framed (or masonry) strip with one stud layout.
 *
 * <p>Local frame: u from the wall's west end eastward, or from its south end northward (an angled
 * wall runs from its west end); v to the left of u (north, or west); w up. Origin: s = 0 at the
 * framing's west or south end, t = 0 at the visible face on the −v side (or the outside of the
 * cladding), z = 0 at the underside of the bottom plate. All lengths in nanometres.
 *
 * @param id given by the person, or level/room-room/ordinal
 * @param length framing end to framing end
 * @param core t range of studs or masonry; what lies below core.lo is the lining or cladding on
 *     side 0, above core.hi that of side 1
 * @param height underside of bottom plate to top of top plate
 * @param outside 0 or 1 when that side is the outside of the house, else −1
 * @param studOrigin s of one stud centre; origin ASSUMED when nobody found it
 * @param traits what only some walls are; party is resolved, knockouts are from the plate's
 *     underside
 * @param blocksAt stated heights (above the plate's underside) of blocks across every bay
 */
public record Wall(
    String id,
    String level,
    WallSpec.Kind kind,
    Frame frame,
    long length,
    long thickness,
    Interval core,
    long height,
    int outside,
    Fact<Timber> studs,
    Fact<Length> every,
    Fact<Long> studOrigin,
    Fact<Boolean> bearing,
    Fact<Fill> fill,
    Lining lining0,
    Lining lining1,
    boolean garageSeparation,
    boolean balloon,
    boolean singleTopPlate,
    List<Fact<Long>> blocksAt,
    List<WallFace> faces,
    List<WallOpening> openings,
    List<Junction> junctions,
    Length spread,
    WallTraits traits) {

  /**
   * A stretch of one side that shows to a room; ordinal as in {@link holloway.house.FaceRef}; z of
   * floor and ceiling in this wall's frame.
   */
  public record WallFace(
      String room, Side roomSide, int ordinal, int side, Interval s, long floorZ, long ceilingZ) {}

  /**
   * Rough opening: stud to stud and header underside, in the wall's frame. One that reaches over
   * the wall's top is a gap in it: there a room goes out into a dormer.
   */
  public record WallOpening(Opening opening, Interval s, Interval z) {}

  /**
   * Where another wall's framing butts into this one on a side; {@code s} is the butting wall's
   * core.
   */
  public record Junction(String other, int side, Interval s) {}

  /** A wall with no traits. */
  public Wall(
      String id,
      String level,
      WallSpec.Kind kind,
      Frame frame,
      long length,
      long thickness,
      Interval core,
      long height,
      int outside,
      Fact<Timber> studs,
      Fact<Length> every,
      Fact<Long> studOrigin,
      Fact<Boolean> bearing,
      Fact<Fill> fill,
      Lining lining0,
      Lining lining1,
      boolean garageSeparation,
      boolean balloon,
      boolean singleTopPlate,
      List<Fact<Long>> blocksAt,
      List<WallFace> faces,
      List<WallOpening> openings,
      List<Junction> junctions,
      Length spread) {
    this(
        id,
        level,
        kind,
        frame,
        length,
        thickness,
        core,
        height,
        outside,
        studs,
        every,
        studOrigin,
        bearing,
        fill,
        lining0,
        lining1,
        garageSeparation,
        balloon,
        singleTopPlate,
        blocksAt,
        faces,
        openings,
        junctions,
        spread,
        WallTraits.NONE);
  }

  /** True where it stops at a dormer's cheeks, plates and all. */
  public boolean isGap(WallOpening o) {
    return o.z().hi() > height;
  }

  public boolean isFramed() {
    return kind == WallSpec.Kind.FRAMED;
  }

  /** Shared with somebody else: nothing is bored, cut into or fixed in it. */
  public boolean isParty() {
    return traits.isParty();
  }

  public boolean isOuter() {
    return outside >= 0;
  }

  /**
   * The depths that studs stand in: the whole core, or the row behind each face of a double wall.
   */
  public List<Interval> rows() {
    long depth = studs.value().depth().nm();
    if (!isFramed() || !traits.isDouble() || core.length() < 2 * depth) {
      return List.of(core);
    }
    return List.of(
        new Interval(core.lo(), core.lo() + depth), new Interval(core.hi() - depth, core.hi()));
  }

  /** Ends below the ceiling: nothing leads up out of it. */
  public boolean isLow() {
    return traits.height().isPresent();
  }

  /** No wall at all, only a header over an open side. */
  public boolean isOpen() {
    return kind == WallSpec.Kind.OPEN;
  }

  /** The layers stated for the lining of a side; empty where its room's finish says it. */
  public Optional<WallTraits.Layers> findLayers(int side) {
    return faces.stream()
        .filter(f -> f.side() == side && outside != side)
        .findFirst()
        .flatMap(f -> traits.findLayers(f.roomSide()));
  }

  /** The service layer stated before a side of a framed wall; outside and bare walls have none. */
  public Optional<Battens> findBattens(int side) {
    return faces.stream()
        .filter(f -> isFramed() && f.side() == side && outside != side)
        .filter(f -> lining(side) != Lining.OPEN)
        .findFirst()
        .flatMap(f -> traits.findBattens(f.roomSide()));
  }

  public Lining lining(int side) {
    return side == 0 ? lining0 : lining1;
  }

  public Point3 world(long s, long t, long z) {
    return frame.toWorld(s, t, z);
  }

  public Optional<WallFace> findFace(int side, long s) {
    return faces.stream().filter(f -> f.side() == side && f.s().contains(s)).findFirst();
  }
}
