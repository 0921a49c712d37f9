package holloway.hollow;

import holloway.geometry.Point2;
import holloway.survey.OnWall;
import java.util.Optional;

/**
 * A spot near which crossings of room surfaces and outside faces are worth looking for (cabinet,
 * outlets): ids of what is found there come from wall and position, so the spots only choose, they
 * do not name.
 *
 * @param under the place under a porch's roof that the spot on the wall stands behind
 */
public record Interest(
    Optional<OnWall> onWall,
    boolean outside,
    Optional<Point2> ceiling,
    Optional<Point2> under,
    String room) {}
