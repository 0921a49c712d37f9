package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Polygon2;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import java.util.List;

/** The board or tiles that close lowered ceilings and boxes under ceilings. */
final class LoweredFramer {
  private LoweredFramer() {}

  static void frame(Placed placed, List<Member> members) {
    for (Lowered l : Lowered.of(placed)) {
      if (l.area().isPresent()) {
        under(l, members);
      } else {
        box(l, l.wall().orElseThrow(), members);
      }
    }
  }

  private static void under(Lowered l, List<Member> members) {
    int n = 1;
    for (Polygon2 p : Sheets.rectangles(l.area().orElseThrow())) {
      Box b = l.shell();
      Box sheet =
          new Box(
              p.xRange().lo(),
              p.xRange().hi(),
              p.yRange().lo(),
              p.yRange().hi(),
              b.z0(),
              l.clear().z0());
      members.add(sheet(l, "under-" + n++, Frame.WORLD, sheet));
    }
  }

  /** Underside, front, and an end wherever it stops short of the room's corner. */
  private static void box(Lowered l, OnWall w, List<Member> members) {
    Box b = l.shell();
    Box c = l.clear();
    long front = w.side() == 0 ? b.y0() : b.y1() - Lowered.BOARD;
    members.add(
        sheet(l, "under", l.frame(), new Box(b.x0(), b.x1(), b.y0(), b.y1(), b.z0(), c.z0())));
    members.add(
        sheet(
            l,
            "front",
            l.frame(),
            new Box(b.x0(), b.x1(), front, front + Lowered.BOARD, c.z0(), b.z1())));
    if (c.x0() > b.x0()) {
      members.add(
          sheet(l, "end-1", l.frame(), new Box(b.x0(), c.x0(), c.y0(), c.y1(), c.z0(), c.z1())));
    }
    if (c.x1() < b.x1()) {
      members.add(
          sheet(l, "end-2", l.frame(), new Box(c.x1(), b.x1(), c.y0(), c.y1(), c.z0(), c.z1())));
    }
  }

  private static Member sheet(Lowered l, String part, Frame frame, Box box) {
    return new Member(l.id() + "/" + part, MemberKind.LINING, frame, box, l.soffit().room(), false);
  }
}
