package holloway.view;

import holloway.framing.MemberKind;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * One solid piece of the house in metres: centre and three half axes.
 *
 * @param level number of the level it belongs to, from 0; the roof counts with the highest under it
 * @param flat part of a floor, ceiling or roof
 * @param owner wall, deck, room or roof it belongs to
 * @param assumed its place hangs on an assumed layout
 */
public record Piece(
    String id,
    MemberKind kind,
    Vector3fc centre,
    Vector3fc u,
    Vector3fc v,
    Vector3fc w,
    int level,
    boolean flat,
    String owner,
    boolean assumed) {

  /** What peels: linings and cladding. */
  public boolean isSkin() {
    return kind == MemberKind.LINING || kind == MemberKind.CLADDING;
  }

  /** Half of the box's extent along each world axis. */
  public Vector3f reach() {
    return new Vector3f(
        Math.abs(u.x()) + Math.abs(v.x()) + Math.abs(w.x()),
        Math.abs(u.y()) + Math.abs(v.y()) + Math.abs(w.y()),
        Math.abs(u.z()) + Math.abs(v.z()) + Math.abs(w.z()));
  }
}
