package holloway.routing;

import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.Known;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * What was found of the spaces in one house where cable is laid over a floor: where it is open, and
 * how a place is led onto the plane. An end that stands elsewhere changes a few of the lines there
 * and leaves the others. May be used on several threads.
 */
final class LayMemory {
  private static final int MOST = 50_000;

  /**
   * The plane that cable lies in, and the height between the members under it, world nanometres.
   */
  record Plane(Hollow hollow, long layZ, long betweenZ) {}

  /** The point of the laying plane that a place is reached from, and the path from there to it. */
  record Approach(Point2 anchor, List<Point3> path) {}

  private record Stretch(Point2 from, Point2 to) {}

  /** One plane of one house. */
  static final class Floor {
    private final Known<Point3, Optional<Approach>> approaches = new Known<>(MOST);
    private final Known<Stretch, Boolean> open = new Known<>(MOST);
    private final Known<Point2, Boolean> within = new Known<>(MOST);

    /** How a place is led onto the plane. */
    Optional<Approach> approach(Point3 at, Supplier<Optional<Approach>> look) {
      return approaches.of(at, look);
    }

    /** Whether cable lies from one point to another. */
    boolean isOpen(Point2 from, Point2 to, BooleanSupplier look) {
      return open.of(new Stretch(from, to), look::getAsBoolean);
    }

    /** Whether a point lies in the space. */
    boolean covers(Point2 p, BooleanSupplier look) {
      return within.of(p, look::getAsBoolean);
    }
  }

  private final Map<Plane, Floor> floors = new ConcurrentHashMap<>();

  Floor of(Plane plane) {
    return floors.computeIfAbsent(plane, k -> new Floor());
  }
}
