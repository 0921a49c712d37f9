package holloway.house;

/**
 * One visible segment of a room's side; ordinal from 1 counts faces of that side from west or
 * south.
 */
public record FaceRef(String room, Side side, int ordinal, Where where) {
  @Override
  public String toString() {
    return room + " " + side.word() + (ordinal == 1 ? "" : " " + ordinal);
  }
}
