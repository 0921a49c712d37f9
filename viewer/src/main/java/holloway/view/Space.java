package holloway.view;

import holloway.hollow.HollowKind;
import java.util.List;
import org.joml.Vector3fc;

/**
 * A hollow, as a box in metres like a {@link Piece}.
 *
 * @param runs that pass it, none where none do
 * @param open room or outside air, or a whole attic: too large to be lit
 * @param owner wall, deck, roof, room or chase it belongs to
 * @param fill what it is filled with, in words
 */
public record Space(
    String id,
    HollowKind kind,
    Vector3fc centre,
    Vector3fc u,
    Vector3fc v,
    Vector3fc w,
    List<String> runs,
    boolean open,
    String owner,
    String fill) {
  public Space {
    runs = List.copyOf(runs);
  }

  /** Whether it is a box that a run lies in. */
  public boolean isLit() {
    return !runs.isEmpty() && !open;
  }
}
