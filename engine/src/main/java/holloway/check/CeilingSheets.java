package holloway.check;

import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Point2;
import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.Side;
import holloway.request.Spot;
import holloway.survey.PlacedRoom;
import java.util.List;

/** The sheets that are cut for an outlet in a ceiling, counted on the members over its spot. */
final class CeilingSheets {
  private CeilingSheets() {}

  /** How many; 0 for a spot on a wall, and where no sheet lies over it. */
  static int over(Spot spot, Evidence evidence) {
    if (!(spot instanceof Spot.OnCeiling on)) {
      return 0;
    }
    CeilingSpot at = on.at();
    PlacedRoom room = evidence.house().framed().placed().getRoom(at.room());
    Point2 p = new Point2(along(at.eastWest(), room, true), along(at.northSouth(), room, false));
    List<Member> sheets =
        evidence.house().framed().membersOf(room.name()).stream()
            .filter(m -> m.kind() == MemberKind.LINING && covers(m, p))
            .toList();
    long hung = sheets.stream().filter(m -> m.id().startsWith("soffit/")).count();
    return hung > 0 ? 1 : sheets.size();
  }

  private static boolean covers(Member m, Point2 p) {
    var q = m.frame().toLocal(p.at(m.frame().origin().z()));
    return m.box().x().contains(q.x()) && m.box().y().contains(q.y());
  }

  private static long along(Along a, PlacedRoom room, boolean eastWest) {
    var range = eastWest ? room.outline().xRange() : room.outline().yRange();
    boolean low = a.from() == Side.WEST || a.from() == Side.SOUTH;
    long d = a.distance().value().nm();
    return low ? range.lo() + d : range.hi() - d;
  }
}
