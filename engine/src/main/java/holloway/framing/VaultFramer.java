package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.survey.PlacedRoom;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/** The board of a vaulted ceiling: under the rafters, one sheet on each slope over the room. */
final class VaultFramer {
  private final Attic shell;
  private final PlacedRoom room;
  private final long board;
  private final boolean northSouth;
  private final double slope;
  private final double cos;

  VaultFramer(Attic shell, PlacedRoom room, long board) {
    this.shell = shell;
    this.room = room;
    this.board = board;
    northSouth = shell.chordRun() == Direction.NORTH_SOUTH;
    slope = shell.roof().pitchRise() / (double) shell.roof().pitchRun();
    cos = 1 / Math.sqrt(1 + slope * slope);
  }

  void frame(List<Member> members) {
    if (board == 0) {
      return;
    }
    Interval whole = northSouth ? shell.roofline().yRange() : shell.roofline().xRange();
    boolean shed = shell.roof().shape() == Roof.Shape.SHED;
    Side low = shell.roof().lowSide().orElse(Side.SOUTH);
    long rise = shed ? whole.hi() : whole.mid();
    for (Polygon2 p : under()) {
      if (!shed || low == Side.SOUTH || low == Side.WEST) {
        sheet(p, new Interval(whole.lo(), rise), whole.lo(), 1, members);
      }
      if (!shed || low == Side.NORTH || low == Side.EAST) {
        sheet(p, new Interval(shed ? whole.lo() : rise, whole.hi()), whole.hi(), -1, members);
      }
    }
  }

  /** Rectangles of the room, less where it goes up into a dormer. */
  private List<Polygon2> under() {
    Geometry left = room.outline().toJts();
    boolean cut = false;
    for (PlacedDormer d : shell.dormers()) {
      if (d.dormer().room().filter(room.name()::equals).isPresent()) {
        Box b = d.clear();
        left = Overlay.difference(left, Polygon2.rectangle(b.x0(), b.y0(), b.x1(), b.y1()).toJts());
        cut = true;
      }
    }
    return (cut ? Outlines.parts(left) : List.of(room.outline()))
        .stream().flatMap(o -> Sheets.rectangles(o).stream()).toList();
  }

  /** What of a rectangle of the room lies under the slope that rises from this eave. */
  private void sheet(Polygon2 p, Interval slopeRange, long eave, int sign, List<Member> members) {
    Interval run = northSouth ? p.yRange() : p.xRange();
    Interval across = northSouth ? p.xRange() : p.yRange();
    if (!run.overlaps(slopeRange)) {
      return;
    }
    Interval under = run.cut(slopeRange).orElseThrow();
    long near = sign > 0 ? under.lo() - eave : eave - under.hi();
    long far = near + under.length();
    double depth = shell.roof().chord().value().depth().toMm();
    long z = shell.plateZ() + Math.round((shell.heelMm() - depth / cos) * 1e6);
    Point3 origin =
        northSouth ? new Point3(across.mid(), eave, z) : new Point3(eave, across.mid(), z);
    Box box =
        new Box(
            Math.round(near / cos),
            Math.round(far / cos),
            -across.length() / 2,
            across.length() / 2,
            -board,
            0);
    String id =
        room.name()
            + "/vault-"
            + WallFramer.tag(p.xRange().lo())
            + "-"
            + WallFramer.tag(p.yRange().lo())
            + (sign > 0 ? "-a" : "-b");
    members.add(new Member(id, MemberKind.LINING, frame(origin, sign), box, room.name(), false));
  }

  private Frame frame(Point3 origin, int sign) {
    double sin = slope * cos;
    Frame.Axis u =
        northSouth ? new Frame.Axis(0, sign * cos, sin) : new Frame.Axis(sign * cos, 0, sin);
    Frame.Axis v = northSouth ? new Frame.Axis(-sign, 0, 0) : new Frame.Axis(0, sign, 0);
    Frame.Axis w =
        northSouth ? new Frame.Axis(0, -sign * sin, cos) : new Frame.Axis(-sign * sin, 0, cos);
    return new Frame(origin, u, v, w);
  }
}
