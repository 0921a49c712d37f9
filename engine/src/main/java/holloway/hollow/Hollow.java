package holloway.hollow;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Polygon2;
import holloway.house.Fill;
import java.util.Optional;

/**
 * A space a cable can lie in: a clear box in a local frame; for spaces spread over a floor, roof or
 * room also a world outline that narrows the box. A room surface or outside face is the air within
 * reach of the wall.
 *
 * @param owner wall, deck, roof, room or chase it belongs to
 * @param stand the stand that hands work it from, empty for blind hollows
 */
public record Hollow(
    String id,
    HollowKind kind,
    Frame frame,
    Box clear,
    Optional<Polygon2> area,
    Fill fill,
    String owner,
    Optional<String> stand) {
  public boolean blind() {
    return stand.isEmpty();
  }
}
