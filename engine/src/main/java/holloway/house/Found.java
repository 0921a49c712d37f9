package holloway.house;

import holloway.units.Length;

/** What the work uncovered; it wins over what was stated or assumed. */
public sealed interface Found {
  Where where();

  /** A stud centre behind a face. */
  record Stud(FaceRef face, Along along, Where where) implements Found {}

  /**
   * A block across one bay behind a face: near the along position, at a centre height above that
   * room's floor.
   */
  record Block(FaceRef face, Along along, Fact<Length> height, Where where) implements Found {}

  /** A bay probed and found clear of blocks. */
  record ClearBay(FaceRef face, Along along, Where where) implements Found {}

  /**
   * A hole of an earlier plan that is now made, by its id, with its diameter and how many cables
   * lie in it.
   */
  record HoleMade(String id, Length diameter, int cables, Where where) implements Found {}

  /**
   * A notch that somebody cut before: in a joist, seen when boards or a ceiling were open, or in
   * the face of a stud.
   *
   * @param deep into the wood; {@code run} along it
   */
  record Notch(Cut cut, Fact<Length> deep, Fact<Length> run, Where where) implements Found {}

  /** Where a notch is. */
  sealed interface Cut {}

  /**
   * In the joist nearest to the spot.
   *
   * @param overhead it is over the room, else under its floor
   * @param top cut into the upper edge, else the lower
   */
  record InJoist(CeilingSpot at, boolean overhead, boolean top) implements Cut {}

  /** In the stud nearest to the spot, on the face one sees in that room. */
  record InStud(WallSpot at) implements Cut {}
}
