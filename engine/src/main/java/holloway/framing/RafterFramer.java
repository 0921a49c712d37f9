package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Direction;
import holloway.house.LayoutCorner;
import holloway.house.Roof;
import holloway.house.Side;
import java.util.List;

/**
 * Sloped members of gable and shed roofs over a whole roofline, those that meet a dormer cut; a
 * hip's end slopes are kept by the headroom formula alone.
 */
final class RafterFramer {
  /** Straight pieces of half a curved rib. */
  private static final int PIECES = 6;

  private static final List<Side> NORTH_SOUTH = List.of(Side.SOUTH, Side.NORTH);
  private static final List<Side> EAST_WEST = List.of(Side.WEST, Side.EAST);

  private final Attic shell;
  private final boolean northSouth;
  private final double slope;
  private final double cos;

  RafterFramer(Attic shell) {
    this.shell = shell;
    northSouth = shell.chordRun() == Direction.NORTH_SOUTH;
    slope = shell.roof().pitchRise() / (double) shell.roof().pitchRun();
    cos = 1 / Math.sqrt(1 + slope * slope);
  }

  void frame(List<Member> members, LayoutCorner layout) {
    for (Interval c : shell.chords()) {
      if (!RoofFramer.spans(shell, c).isEmpty()) {
        topChords(c, members);
      }
    }
    for (int i = 0; i < shell.dormers().size(); i++) {
      new DormerFramer(shell, shell.dormers().get(i), i + 1, this).frame(members, layout);
    }
  }

  private void topChords(Interval c, List<Member> members) {
    Roof roof = shell.roof();
    if (roof.shape() == Roof.Shape.ARCHED) {
      Arch.of(shell).ifPresent(a -> rib(c, a, members));
      return;
    }
    if (roof.shape() == Roof.Shape.FLAT || roof.shape() == Roof.Shape.HIP) {
      return;
    }
    boolean shed = roof.shape() == Roof.Shape.SHED;
    Side low = northSouth ? Side.SOUTH : Side.WEST;
    boolean lowAtStart = !shed || roof.lowSide().orElse(Side.SOUTH) == low;
    if (lowAtStart) {
      rafter(c, low, members);
    }
    if (!shed || !lowAtStart) {
      rafter(c, low.opposite(), members);
    }
  }

  /** A curved rib as straight pieces whose undersides touch the arch in their middles. */
  private void rib(Interval c, Arch arch, List<Member> members) {
    double r = arch.radius();
    double step = Math.asin(Math.min(1, arch.span() / 2 / r)) / PIECES;
    double out = r / Math.cos(step / 2);
    MemberKind kind =
        shell.roof().frame() == Roof.Frame.TRUSSES ? MemberKind.TOP_CHORD : MemberKind.RAFTER;
    for (Side side : northSouth ? NORTH_SOUTH : EAST_WEST) {
      for (int i = 0; i < PIECES; i++) {
        double low = (PIECES - i) * step;
        double in = arch.span() / 2 - out * Math.sin(low);
        double up = arch.crown() - r + out * Math.cos(low);
        double run = arch.span() / 2 - out * Math.sin(low - step) - in;
        double rise = out * (Math.cos(low - step) - Math.cos(low));
        String id =
            shell.id() + "/rib-" + WallFramer.tag(c.lo()) + (isUp(side) ? "-a" : "-b") + (i + 1);
        members.add(segment(id, kind, c, side, new double[] {in, up, run, rise}));
      }
    }
  }

  private Member segment(String id, MemberKind kind, Interval c, Side side, double[] mm) {
    Interval whole = northSouth ? shell.outline().yRange() : shell.outline().xRange();
    int sign = isUp(side) ? 1 : -1;
    long at = (sign > 0 ? whole.lo() : whole.hi()) + sign * Math.round(mm[0] * 1e6);
    long z = shell.plateZ() + Math.round(mm[1] * 1e6);
    long mid = (c.lo() + c.hi()) / 2;
    Point3 origin = northSouth ? new Point3(mid, at, z) : new Point3(at, mid, z);
    long half = c.length() / 2;
    long depth = shell.roof().chord().value().depth().nm();
    Box box = new Box(0, Math.round(Math.hypot(mm[2], mm[3]) * 1e6), -half, half, 0, depth);
    Frame frame = plane(origin, northSouth, sign, mm[3] / mm[2]);
    return new Member(id, kind, frame, box, shell.id(), true);
  }

  private void rafter(Interval c, Side side, List<Member> members) {
    MemberKind kind =
        shell.roof().frame() == Roof.Frame.TRUSSES ? MemberKind.TOP_CHORD : MemberKind.RAFTER;
    String id =
        shell.id()
            + "/"
            + kind.word().replace(' ', '-')
            + "-"
            + WallFramer.tag(c.lo())
            + (isUp(side) ? "-a" : "-b");
    long from = 0;
    int piece = 0;
    for (Interval gone : DormerFramer.cuts(shell, side, c)) {
      if (gone.lo() > from) {
        members.add(piece(id + "-low" + (piece == 0 ? "" : piece), kind, c, side, from, gone.lo()));
        piece++;
      }
      from = Math.max(from, gone.hi());
    }
    if (from < reach()) {
      members.add(piece(id, kind, c, side, from, reach()));
    }
  }

  /** Level distance from an eave to where the slope ends. */
  long reach() {
    Interval whole = northSouth ? shell.outline().yRange() : shell.outline().xRange();
    return shell.roof().shape() == Roof.Shape.SHED ? whole.length() : whole.length() / 2;
  }

  static boolean isUp(Side side) {
    return side == Side.SOUTH || side == Side.WEST;
  }

  /**
   * A piece in the plane of the rafters.
   *
   * @param c world range across the slope
   * @param from level distance from the eave to its lower end
   */
  Member piece(String id, MemberKind kind, Interval c, Side side, long from, long to) {
    Interval whole = northSouth ? shell.outline().yRange() : shell.outline().xRange();
    int sign = isUp(side) ? 1 : -1;
    long eave = sign > 0 ? whole.lo() : whole.hi();
    long depth = shell.roof().chord().value().depth().nm();
    long under = shell.plateZ() + Math.round(shell.heelMm() * 1e6 - depth / cos);
    long mid = (c.lo() + c.hi()) / 2;
    Point3 origin = northSouth ? new Point3(mid, eave, under) : new Point3(eave, mid, under);
    long half = c.length() / 2;
    Box box = new Box(Math.round(from / cos), Math.round(to / cos), -half, half, 0, depth);
    return new Member(id, kind, plane(origin, northSouth, sign, slope), box, shell.id(), true);
  }

  /** A frame whose u axis rises from a point northward or eastward, or the other way. */
  static Frame plane(Point3 origin, boolean northSouth, int sign, double slope) {
    double cos = 1 / Math.sqrt(1 + slope * slope);
    double sin = slope * cos;
    Frame.Axis u =
        northSouth ? new Frame.Axis(0, sign * cos, sin) : new Frame.Axis(sign * cos, 0, sin);
    Frame.Axis w =
        northSouth ? new Frame.Axis(0, -sign * sin, cos) : new Frame.Axis(-sign * sin, 0, cos);
    Frame.Axis v = northSouth ? new Frame.Axis(-sign, 0, 0) : new Frame.Axis(0, sign, 0);
    return new Frame(origin, u, v, w);
  }
}
