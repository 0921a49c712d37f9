package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Dormer;
import holloway.house.LayoutCorner;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.List;

/**
 * What frames a dormer, all of it assumed: doubled trimmer rafters beside the opening, doubled
 * headers between them where the cut rafters end, a front on the lower header, cheek studs on the
 * trimmers, and a roof of its own. Nothing of it hangs lower than the rafters do, but for the
 * cheeks of one that a room goes out into.
 */
final class DormerFramer {
  /** Depth of a 2x4: cheeks and front; nobody measured them, from memory. */
  static final long CHEEK = 89_000_000;

  /** The knee wall's own thickness, where its end posts stand; from experience. */
  private static final long KNEE = 150_000_000;

  private static final long STUD_EVERY = 406_400_000;

  private final Attic shell;
  private final PlacedDormer dormer;
  private final Side side;
  private final String id;
  private final RafterFramer rafters;
  private final long thick;
  private final long depth;
  private final double slope;
  private final boolean eastWest;

  DormerFramer(Attic shell, PlacedDormer dormer, int number, RafterFramer rafters) {
    this.shell = shell;
    this.dormer = dormer;
    this.rafters = rafters;
    side = dormer.dormer().side();
    id = shell.id() + "/dormer-" + number;
    thick = shell.roof().chord().value().thickness().nm();
    depth = shell.roof().chord().value().depth().nm();
    slope = shell.roof().pitchRise() / (double) shell.roof().pitchRun();
    eastWest = side.runsEastWest();
  }

  /** Level distances from the eave over which a rafter at this place is missing, in order. */
  static List<Interval> cuts(Attic shell, Side side, Interval rafter) {
    List<Interval> out = new ArrayList<>();
    for (PlacedDormer d : shell.dormers()) {
      Box b = d.clear();
      Interval across = side.runsEastWest() ? b.x() : b.y();
      if (d.dormer().side() == side && across.overlaps(rafter)) {
        long header = 2 * shell.roof().chord().value().thickness().nm();
        Interval open = open(shell, d);
        out.add(new Interval(Math.max(0, open.lo() - header), open.hi() + header));
      }
    }
    out.sort(java.util.Comparator.comparingLong(Interval::lo));
    return out;
  }

  /**
   * From the front to the upper header, level from the eave: under a shed of its own, which is
   * taken to rise half as steeply as the main roof, it lies twice as far in as its front is high.
   */
  private static Interval open(Attic shell, PlacedDormer d) {
    Box b = d.clear();
    long back = Dormers.inset(shell, d);
    long deep = (d.dormer().side().runsEastWest() ? b.y() : b.x()).length();
    long ridge =
        new RafterFramer(shell).reach() - 4 * shell.roof().chord().value().thickness().nm();
    long end = d.dormer().cover() == Dormer.Cover.SHED ? back + 2 * deep : back + deep;
    return new Interval(back, Math.max(back + 1, Math.min(end, ridge)));
  }

  void frame(List<Member> members, LayoutCorner layout) {
    Interval across = eastWest ? dormer.clear().x() : dormer.clear().y();
    Interval open = open(shell, dormer);
    Interval west = new Interval(across.lo() - 2 * thick, across.lo());
    Interval east = new Interval(across.hi(), across.hi() + 2 * thick);
    members.add(piece("trimmer-a", MemberKind.RAFTER, west, new Interval(0, rafters.reach())));
    members.add(piece("trimmer-b", MemberKind.RAFTER, east, new Interval(0, rafters.reach())));
    long low = Math.max(0, open.lo() - 2 * thick);
    if (low < open.lo()) {
      Interval header = new Interval(low, open.lo());
      members.add(piece("header-low", MemberKind.HEADER, across, header));
    }
    Interval high = new Interval(open.hi(), open.hi() + 2 * thick);
    members.add(piece("header-high", MemberKind.HEADER, across, high));
    front(across, open.lo(), members);
    cheek("a", new Interval(across.lo() - CHEEK, across.lo()), members);
    cheek("b", new Interval(across.hi(), across.hi() + CHEEK), members);
    below(open.lo(), members, across);
    if (dormer.dormer().cover() == Dormer.Cover.SHED) {
      shed(across, open, layout.isFromHigh(eastWest), members);
    } else {
      gable(across, open, members);
    }
  }

  private Member piece(String tail, MemberKind kind, Interval across, Interval deep) {
    return rafters.piece(id + "/" + tail, kind, across, side, deep.lo(), deep.hi());
  }

  /** Posts at the cheeks and plates over them; what window is between nobody is asked. */
  private void front(Interval across, long back, List<Member> members) {
    Interval deep = new Interval(Math.max(0, back - CHEEK), Math.max(back, CHEEK / 2));
    Interval whole = new Interval(across.lo() - CHEEK, across.hi() + CHEEK);
    long top = dormer.clear().z1();
    members.add(
        box("plate", MemberKind.TOP_PLATE, whole, deep, new Interval(top - 2 * thick, top)));
    long foot = foot(deep.hi());
    if (foot < top - 2 * thick) {
      Interval z = new Interval(foot, top - 2 * thick);
      Interval west = new Interval(across.lo() - CHEEK, across.lo());
      Interval east = new Interval(across.hi(), across.hi() + CHEEK);
      members.add(box("post-a", MemberKind.POST, west, deep, z));
      members.add(box("post-b", MemberKind.POST, east, deep, z));
    }
  }

  /** Studs on the trimmer, each as high as the slope leaves, and a plate over them. */
  private void cheek(String tag, Interval across, List<Member> members) {
    long back = Dormers.inset(shell, dormer);
    long top = dormer.clear().z1() - 2 * thick;
    for (long at = back + STUD_EVERY; foot(at + thick) < top; at += STUD_EVERY) {
      members.add(
          box(
              "cheek-" + tag + "-" + WallFramer.tag(at),
              MemberKind.STUD,
              across,
              new Interval(at, at + thick),
              new Interval(foot(at + thick), top)));
    }
    // The plate ends where the rafter beside it rises past its underside.
    long whole = (eastWest ? dormer.clear().y() : dormer.clear().x()).length();
    long end = back + whole - Math.round((2 * thick + depth * Math.hypot(1, slope)) / slope);
    if (end > back) {
      Interval z = new Interval(top, top + 2 * thick);
      Interval deep = new Interval(back, end);
      members.add(box("cheek-plate-" + tag, MemberKind.TOP_PLATE, across, deep, z));
    }
  }

  /**
   * Of one that a room goes out into: the cheeks go on below the trimmers, from the floor's joists
   * up, between the front and the knee wall.
   */
  private void below(long back, List<Member> members, Interval across) {
    if (dormer.dormer().room().isEmpty()) {
      return;
    }
    long end = back + dormer.dormer().back().value().nm() - KNEE;
    for (long at = back; at + thick <= end; at += STUD_EVERY) {
      Interval in = new Interval(at, at + thick);
      long top = shell.slopeUnderside(world(across.mid(), at, 0).plan());
      Interval z = new Interval(shell.chordTopZ(), Math.max(shell.chordTopZ(), top));
      if (z.length() > 0) {
        String tail = "-" + WallFramer.tag(at);
        Interval west = new Interval(across.lo() - CHEEK, across.lo());
        Interval east = new Interval(across.hi(), across.hi() + CHEEK);
        members.add(box("foot-a" + tail, MemberKind.STUD, west, in, z));
        members.add(box("foot-b" + tail, MemberKind.STUD, east, in, z));
      }
    }
  }

  private void shed(Interval across, Interval open, boolean fromHigh, List<Member> members) {
    long every = shell.roof().every().value().nm();
    for (long from = 0; from + thick <= across.length(); from += every) {
      long at = fromHigh ? across.hi() - from - thick : across.lo() + from;
      long mid = at + thick / 2;
      Point3 foot = world(mid, open.lo(), dormer.clear().z1());
      int sign = RafterFramer.isUp(side) ? 1 : -1;
      members.add(
          sloped("rafter-" + WallFramer.tag(at), eastWest, sign, foot, open.length(), slope / 2));
    }
  }

  /** Two slopes as steep as the main roof's, over the stretch in which the cheeks stand. */
  private void gable(Interval across, Interval open, List<Member> members) {
    long every = shell.roof().every().value().nm();
    for (long at = open.lo(); at + thick <= open.hi(); at += every) {
      for (int sign : new int[] {1, -1}) {
        long cheek = sign > 0 ? across.lo() : across.hi();
        Point3 foot = world(cheek, at + thick / 2, dormer.clear().z1());
        String tail = "rafter-" + WallFramer.tag(at) + (sign > 0 ? "-a" : "-b");
        members.add(sloped(tail, !eastWest, sign, foot, across.length() / 2, slope));
      }
    }
  }

  private Member sloped(
      String tail, boolean northSouth, int sign, Point3 foot, long level, double pitch) {
    double cos = 1 / Math.hypot(1, pitch);
    Box box = new Box(0, Math.round(level / cos), -thick / 2, thick / 2, 0, depth);
    Frame frame = RafterFramer.plane(foot, northSouth, sign, pitch);
    return new Member(id + "/" + tail, MemberKind.RAFTER, frame, box, shell.id(), true);
  }

  /** World z of the rafters' upper edges at a level distance from the eave, over the joists. */
  private long foot(long in) {
    Point2 p = world((eastWest ? dormer.clear().x() : dormer.clear().y()).mid(), in, 0).plan();
    long upper = shell.slopeUnderside(p) + Math.round(depth * Math.hypot(1, slope));
    return Math.max(shell.chordTopZ(), upper);
  }

  private Point3 world(long across, long in, long z) {
    long at = Dormers.eave(shell, side) + (RafterFramer.isUp(side) ? in : -in);
    return eastWest ? new Point3(across, at, z) : new Point3(at, across, z);
  }

  private Member box(String tail, MemberKind kind, Interval across, Interval in, Interval z) {
    Point3 a = world(across.lo(), in.lo(), z.lo());
    Point3 b = world(across.hi(), in.hi(), z.hi());
    Box box =
        new Box(
            Math.min(a.x(), b.x()),
            Math.max(a.x(), b.x()),
            Math.min(a.y(), b.y()),
            Math.max(a.y(), b.y()),
            z.lo(),
            z.hi());
    return new Member(id + "/" + tail, kind, Frame.WORLD, box, shell.id(), true);
  }
}
