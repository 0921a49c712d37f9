package holloway.house;

import holloway.units.Length;
import java.util.Optional;

/**
 * What already joins two boxes that a hand can get at (an empty tube, or an old cable that might
 * draw a new one in after it), or what joins two buildings outside.
 *
 * @param insideDiameter of the tube, or of the narrowest hole that the old cable is seen to pass;
 *     nothing where cable lies in the earth or hangs in the air
 * @param way of a tube: its turns, its pull boxes, and what lies in it
 * @param length along the tube or the old cable, or of the trench or the span
 * @param outdoor of a link between buildings, whose ends are on outer faces
 */
public record Conduit(
    String name,
    WallSpot from,
    WallSpot to,
    Length insideDiameter,
    TubeWay way,
    Fact<Length> length,
    Kind kind,
    Optional<Outdoor> outdoor,
    Where where) {
  /** Of a tube or an old cable inside the house. */
  public Conduit(
      String name,
      WallSpot from,
      WallSpot to,
      Length insideDiameter,
      int bends,
      Fact<Length> length,
      Kind kind,
      Where where) {
    this(name, from, to, insideDiameter, bends, length, kind, Optional.empty(), where);
  }

  /** A link between buildings. */
  public Conduit(
      String name,
      WallSpot from,
      WallSpot to,
      Length insideDiameter,
      int bends,
      Fact<Length> length,
      Kind kind,
      Optional<Outdoor> outdoor,
      Where where) {
    this(
        name,
        from,
        to,
        insideDiameter,
        TubeWay.of(length.value(), bends),
        length,
        kind,
        outdoor,
        where);
  }

  /** The same with its way told more closely. */
  public Conduit with(TubeWay told) {
    return new Conduit(name, from, to, insideDiameter, told, length, kind, outdoor, where);
  }

  /**
   * LOOSE_CABLE: known not to be stapled. FAST_CABLE: stapled, or nobody knows. BURIED: cable laid
   * in the earth. SPAN: cable hung from wall to wall.
   */
  public enum Kind {
    TUBE,
    LOOSE_CABLE,
    FAST_CABLE,
    BURIED,
    SPAN;

    /** True where cable is laid by hand, not drawn in. */
    public boolean laid() {
      return this == BURIED || this == SPAN;
    }
  }

  /**
   * What only a link between buildings has.
   *
   * @param there the duct lies there already; else a trench has to be dug
   * @param depth of its cover with earth
   */
  public record Outdoor(boolean there, Optional<Fact<Length>> depth) {}

  /** Quarter turns of a tube from end to end, begun ones whole. */
  public int bends() {
    return way.quarters();
  }

  /** True where somebody has to dig first. */
  public boolean dug() {
    return kind != Kind.SPAN && outdoor.map(o -> !o.there()).orElse(false);
  }
}
