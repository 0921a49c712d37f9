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
}
