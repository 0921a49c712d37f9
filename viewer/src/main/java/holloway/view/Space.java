package holloway.view;

import holloway.hollow.HollowKind;
import java.util.List;
import org.joml.Vector3fc;

/**
 * A hollow that runs pass, as a box in metres like a {@link Piece}.
 *
 * @param runs that pass it
 * @param open room or outside air, or a whole attic: too large to be lit
 */
public record Space(
    String id,
    HollowKind kind,
    Vector3fc centre,
    Vector3fc u,
    Vector3fc v,
    Vector3fc w,
    List<String> runs,
    boolean open) {
  public Space {
    runs = List.copyOf(runs);
  }
}
