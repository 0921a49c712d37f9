package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Polygon2;
import holloway.house.Chase;
import holloway.house.FaceRef;
import java.util.List;
import java.util.Optional;

/**
 * Space that nothing accounts for, through all the levels it passes. It is never planned through
 * until the person says what it is.
 *
 * @param name after the face it lies behind on its lowest level
 * @param levels it passes, bottom up
 * @param underRoof an attic lies over it
 * @param outline what is free on every one of these levels, and its area
 * @param touches the faces it lies behind
 * @param likely what it probably is
 * @param serves how it might serve, for a person
 * @param chase what to state if a look shows an open shaft; empty where no box stands for it
 */
public record UnaccountedSpace(
    String name,
    List<String> levels,
    boolean underRoof,
    Polygon2 outline,
    double areaM2,
    List<Touch> touches,
    String likely,
    String serves,
    Optional<Chase> chase) {
  /**
   * A face that hides it.
   *
   * @param along the stretch of the face, from its west or south end
   */
  public record Touch(String level, FaceRef face, Interval along) {}

  public UnaccountedSpace {
    levels = List.copyOf(levels);
    touches = List.copyOf(touches);
  }

  /** Would an open shaft lead from one storey to another place? */
  public boolean mayServe() {
    return chase.isPresent();
  }
}
