package holloway.view;

import java.util.List;
import org.joml.Vector3fc;

/** A room's name and outline on its floor, metres; {@code middle} is well inside. */
public record RoomMark(String name, int level, List<Vector3fc> outline, Vector3fc middle) {
  public RoomMark {
    outline = List.copyOf(outline);
  }
}
