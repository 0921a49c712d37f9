package holloway.routing;

import holloway.framing.Framed;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import java.util.List;

/**
 * The drawn path of an existing tube: nobody knows where it runs, so it is drawn as a bow that is
 * as long as the tube.
 */
final class Conduits {
  private Conduits() {}

  /** Quarter turns stated for the tube. */
  static int bends(Framed framed, Hollow h) {
    return framed.placed().house().conduits().stream()
        .filter(c -> h.id().equals("conduit/" + c.name()))
        .mapToInt(c -> c.bends())
        .findFirst()
        .orElse(0);
  }

  /** Places on its way where cable is drawn out and fed in again. */
  static int pullBoxes(Framed framed, Hollow h) {
    return framed.placed().house().conduits().stream()
        .filter(c -> h.id().equals("conduit/" + c.name()))
        .mapToInt(c -> c.way().pullBoxes())
        .findFirst()
        .orElse(0);
  }

  private static boolean isOutdoors(Framed framed, String name) {
    return framed.placed().house().conduits().stream()
        .anyMatch(c -> c.name().equals(name) && c.outdoor().isPresent());
  }

  static List<Point3> path(Framed framed, Hollow h, Point3 from, Point3 to) {
    String name = h.id().substring("conduit/".length());
    long length =
        framed.placed().house().conduits().stream()
            .filter(c -> c.name().equals(name))
            .mapToLong(c -> c.length().value().nm())
            .findFirst()
            .orElse(0);
    long level = from.withZ(0).distanceTo(to.withZ(0));
    long bow = Math.max(0, (length - level - Math.abs(from.z() - to.z())) / 2);
    boolean down = h.kind() == HollowKind.TRENCH || isOutdoors(framed, name) && h.blind();
    long top = down ? Math.min(from.z(), to.z()) - bow : Math.max(from.z(), to.z()) + bow;
    return Paths.tidy(List.of(from, from.withZ(top), to.withZ(top), to));
  }
}
