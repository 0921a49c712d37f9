package holloway.finding;

import holloway.geometry.Point3;
import java.util.Optional;

/** Where a finding is: the id of the thing and, if it has one, a world point. */
public record Place(String id, Optional<Point3> at) {
  public static Place of(String id) {
    return new Place(id, Optional.empty());
  }

  public static Place of(String id, Point3 at) {
    return new Place(id, Optional.of(at));
  }
}
