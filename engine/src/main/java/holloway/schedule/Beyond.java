package holloway.schedule;

import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.UnderJoists;
import holloway.house.Fill;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.Optional;

/** What lies where a bit comes out: the space, what fills it, and what stands near in it. */
final class Beyond {
  /** Nearer than this a stated pipe, duct or the like is named; from experience. */
  private static final long NEAR = 300_000_000;

  private final HollowHouse house;
  private final UnitSystem units;

  Beyond(HollowHouse house, UnitSystem units) {
    this.house = house;
    this.units = units;
  }

  /** Empty where the space is not known. */
  String words(String hollowId, Point3 out) {
    Optional<Hollow> hollow = house.findHollow(hollowId);
    return hollow.map(h -> space(h) + near(out)).orElse("");
  }

  private static String space(Hollow h) {
    if (h.kind() == HollowKind.ROOM_SURFACE) {
      return (UnderJoists.is(h.id()) ? "under the joists in the " : "in the ") + room(h);
    }
    return h.kind() == HollowKind.OUTSIDE_FACE ? "outside" : h.kind().word() + fill(h);
  }

  /** The owner of what is open under joists is the floor; a person is in the room below it. */
  static String room(Hollow surface) {
    return UnderJoists.is(surface.id()) ? UnderJoists.room(surface.id()) : surface.owner();
  }

  private static String fill(Hollow h) {
    return switch (h.kind()) {
      case STUD_BAY, JOIST_BAY, ATTIC, FURRED_BAY, DAB_VOID, SERVICE_VOID -> ", " + fill(h.fill());
      default -> "";
    };
  }

  private static String fill(Fill fill) {
    return switch (fill) {
      case EMPTY -> "empty as far as is known";
      case LOOSE -> "loose fill";
      case UNKNOWN -> "fill unknown";
      default -> fill.word();
    };
  }

  private String near(Point3 out) {
    long best = NEAR;
    String word = "";
    for (Member m : house.framed().members()) {
      long far = m.kind() == MemberKind.OBSTACLE ? distance(m, out) : NEAR;
      if (far < best) {
        best = far;
        word = m.id().replaceAll("-\\d+$", "").replaceAll(".*[-/]", "");
      }
    }
    return best == NEAR ? "" : "; " + units.format(new Length(best)) + " to the " + word;
  }

  private static long distance(Member m, Point3 out) {
    Point3 p = m.frame().toLocal(out);
    Box b = m.box();
    double x = Math.max(0, Math.max(b.x0() - p.x(), p.x() - b.x1()));
    double y = Math.max(0, Math.max(b.y0() - p.y(), p.y() - b.y1()));
    double z = Math.max(0, Math.max(b.z0() - p.z(), p.z() - b.z1()));
    return Math.round(Math.sqrt(x * x + y * y + z * z));
  }
}
