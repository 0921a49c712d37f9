package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.House;
import holloway.house.Porch;
import holloway.survey.Placed;
import holloway.survey.PlacedPorch;
import java.util.List;

/**
 * What frames the roof over a porch, all of it assumed but its outline: a ledger on the wall, a
 * beam at the outer edge on a post at either end, joists between, boards below them where they are
 * stated, rafters and a roof over them.
 */
final class PorchFramer {
  private static final long POST = 89_000_000;
  private static final long ROOF = 18_000_000;

  private final House house;
  private final PorchLayout layout;
  private final PlacedPorch porch;
  private final List<Member> members;

  private PorchFramer(House house, PorchLayout layout, List<Member> members) {
    this.house = house;
    this.layout = layout;
    this.porch = layout.porch();
    this.members = members;
  }

  static void frame(Placed placed, List<Member> members) {
    PorchLayout.of(placed).forEach(l -> new PorchFramer(placed.house(), l, members).frame());
  }

  private void frame() {
    long l = porch.length();
    long d = porch.out();
    long t = porch.thick();
    Interval z = porch.joists();
    boolean outward = porch.porch().run().value() == Porch.Run.OUT;
    own("ledger", MemberKind.LEDGER, new Box(0, l, 0, t, z.lo(), z.hi()));
    own("beam", MemberKind.BEAM, new Box(0, l, d - t, d, z.lo(), z.hi()));
    if (!outward) {
      own("end-a", MemberKind.BEAM, new Box(0, t, t, d - t, z.lo(), z.hi()));
      own("end-b", MemberKind.BEAM, new Box(l - t, l, t, d - t, z.lo(), z.hi()));
    }
    List<Box> rows = layout.joists();
    // along the wall the first and the last of them are ledger and beam
    for (Box b : outward ? rows : rows.subList(1, rows.size() - 1)) {
      String at = WallFramer.tag(b.y0());
      add("joist-" + at, MemberKind.CEILING_JOIST, layout.frame(), b);
    }
    if (porch.porch().boarded()) {
      own("boards", MemberKind.LINING, new Box(0, l, 0, d, 0, z.lo()));
    }
    long foot = -porch.porch().height().value().nm();
    own("post-a", MemberKind.POST, new Box(0, POST, d - POST, d, foot, 0));
    own("post-b", MemberKind.POST, new Box(l - POST, l, d - POST, d, foot, 0));
    roof(z.hi());
  }

  private void roof(long top) {
    long l = porch.length();
    long d = porch.out();
    double slope = porch.porch().pitchRise() / (double) porch.porch().pitchRun();
    Frame f = porch.frame();
    switch (porch.porch().cover()) {
      case FLAT -> own("roof", MemberKind.CLADDING, new Box(0, l, 0, d, top, top + ROOF));
      case SHED -> {
        Frame up = sloped(f.toWorld(0, d, top), f.v(), -1, slope);
        slope("", up, d, l, slope, !porch.leadsAway(house));
      }
      case GABLE -> {
        // v leads away from the wall on one side of the ridge and to it on the other
        slope("a", sloped(f.toWorld(0, 0, top), f.u(), 1, slope), l / 2, d, slope, false);
        slope("b", sloped(f.toWorld(l, d, top), f.u(), -1, slope), l / 2, d, slope, true);
      }
    }
  }

  /**
   * Rafters from a lower edge up, and what lies on them.
   *
   * @param fromFar they are counted from the end that v leads to
   */
  private void slope(
      String tag, Frame frame, long level, long wide, double slope, boolean fromFar) {
    long t = porch.thick();
    long deep = porch.porch().joists().value().depth().nm();
    double cos = 1 / Math.hypot(1, slope);
    long length = Math.round(level / cos);
    long every = porch.porch().every().value().nm();
    for (long from = 0; from + t <= wide; from += every) {
      long at = fromFar ? wide - from - t : from;
      Box box = new Box(0, length, at, at + t, 0, deep);
      add("rafter" + tag + "-" + WallFramer.tag(at), MemberKind.RAFTER, frame, box);
    }
    add("roof" + tag, MemberKind.CLADDING, frame, new Box(0, length, 0, wide, deep, deep + ROOF));
  }

  /** A plane that rises along a level axis, or against it; v to the left of the way up. */
  private static Frame sloped(Point3 foot, Frame.Axis along, int sign, double slope) {
    double cos = 1 / Math.hypot(1, slope);
    double sin = slope * cos;
    double x = sign * along.x();
    double y = sign * along.y();
    return new Frame(
        foot,
        new Frame.Axis(x * cos, y * cos, sin),
        new Frame.Axis(-y, x, 0),
        new Frame.Axis(-x * sin, -y * sin, cos));
  }

  private void own(String tail, MemberKind kind, Box box) {
    add(tail, kind, porch.frame(), box);
  }

  private void add(String tail, MemberKind kind, Frame frame, Box box) {
    String id = porch.id() + "/" + tail;
    members.add(new Member(id, kind, frame, box, porch.id(), true));
  }
}
