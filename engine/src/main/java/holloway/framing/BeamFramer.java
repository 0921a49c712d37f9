package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.survey.Placed;
import holloway.survey.PlacedBeam;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;

/** Stated beams as solids that nobody bores, and the posts in the walls that carry their ends. */
final class BeamFramer {
  /** A beam's end reaches so far into what carries it; common practice, no published source. */
  static final long BEARING = 100_000_000;

  /** Less of a joist's depth than this is rounding. */
  private static final long IN_DEPTH = 10_000_000;

  private BeamFramer() {}

  static void frame(Placed placed, List<Member> members) {
    int n = 0;
    for (PlacedBeam b : PlacedBeam.of(placed)) {
      n++;
      String id = "beam/" + b.beam().name() + "/" + n;
      members.add(
          new Member(
              id, MemberKind.BEAM, Frame.WORLD, b.box(BEARING), "beam/" + b.beam().name(), false));
      for (Wall w : placed.walls()) {
        if (w.level().equals(b.room().room().level()) && w.isFramed()) {
          post(b, w, n, members);
        }
      }
    }
  }

  /** Under an end within a framed wall: the bay there is shut from top to foot, as a guess. */
  private static void post(PlacedBeam b, Wall w, int n, List<Member> members) {
    Box beam = local(b.box(BEARING), w.frame());
    Interval along = new Interval(0, w.length());
    boolean in = beam.y().overlaps(w.core()) && beam.x().overlaps(along) && isEnd(b, w);
    if (in) {
      Interval s = beam.x().cut(along).orElseThrow();
      Box box = new Box(s.lo(), s.hi(), w.core().lo(), w.core().hi(), WallFramer.PLATE, w.height());
      String id = w.id() + "/beam-post-" + n + "-" + WallFramer.tag(s.lo());
      members.add(new Member(id, MemberKind.OBSTACLE, w.frame(), box, w.id(), true));
    }
  }

  /** Only walls square to the beam carry it; one beside it is not touched. */
  private static boolean isEnd(PlacedBeam b, Wall w) {
    return Math.abs(b.eastWest() ? w.frame().u().x() : w.frame().u().y()) < 0.5;
  }

  static Box local(Box b, Frame frame) {
    Point3 p = frame.toLocal(new Point3(b.x0(), b.y0(), b.z0()));
    Point3 q = frame.toLocal(new Point3(b.x1(), b.y1(), b.z1()));
    return new Box(
        Math.min(p.x(), q.x()),
        Math.max(p.x(), q.x()),
        Math.min(p.y(), q.y()),
        Math.max(p.y(), q.y()),
        Math.min(p.z(), q.z()),
        Math.max(p.z(), q.z()));
  }

  /** Beams in the depth of a floor's joists, in its frame. */
  static List<Box> within(Placed placed, Frame frame, Interval joistZ) {
    List<Box> out = new ArrayList<>();
    for (PlacedBeam b : PlacedBeam.of(placed)) {
      Box box = local(b.box(BEARING), frame);
      if (box.z().cut(joistZ).filter(z -> z.length() >= IN_DEPTH).isPresent()) {
        out.add(box);
      }
    }
    return out;
  }

  /** Stretches along a joist that such beams take, where they run across it. */
  static List<Interval> across(List<Box> beams, Interval joist) {
    return beams.stream()
        .filter(b -> b.y().length() > b.x().length() && b.y().overlaps(joist))
        .map(Box::x)
        .toList();
  }
}
