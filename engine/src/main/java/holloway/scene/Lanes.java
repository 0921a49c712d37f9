package holloway.scene;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Lays cables that share a way beside each other: as lanes, a number of widths from the true line,
 * so that the scale of a picture decides how far; and packed, as they would lie in one hole.
 */
public final class Lanes {
  /** Two points nearer than this are one, millimetres. */
  private static final double SAME = 3;

  private static final Vec NORTH = new Vec(0, 1, 0);

  private final List<Line> lines;
  private final double widest;
  private final List<List<Node>> ways = new ArrayList<>();
  private final Map<String, TreeSet<Integer>> shared = new HashMap<>();

  /**
   * A cable's true way: at least two points, and the step that each ends.
   *
   * @param air by step, that of a room or before the outer walls; other steps have none
   */
  record Line(List<Vec> points, List<Integer> steps, double width, Map<Integer, Air> air) {}

  /** A point of a cable, with the step it ends. */
  private record Node(Vec at, int step) {}

  /**
   * A cable ready to be drawn.
   *
   * @param points of the true way, more than it has where lanes change
   * @param fan how many widths each is moved and where to; {@code steps} the step each ends
   * @param packed the way that the middle of the cable takes in a bundle of true size, millimetres
   */
  public record Laid(List<Vec> points, List<Vec> fan, List<Integer> steps, List<Vec> packed) {
    public Laid {
      points = List.copyOf(points);
      fan = List.copyOf(fan);
      steps = List.copyOf(steps);
      packed = List.copyOf(packed);
    }
  }

  private Lanes(List<Line> lines) {
    this.lines = lines;
    this.widest = lines.stream().mapToDouble(Line::width).max().orElse(0);
  }

  /** One for each line, in their order. */
  static List<Laid> of(List<Line> lines) {
    Lanes l = new Lanes(lines);
    lines.forEach(c -> l.ways.add(l.split(c)));
    for (int i = 0; i < lines.size(); i++) {
      l.share(i);
    }
    List<Laid> out = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      out.add(l.laid(i));
    }
    return out;
  }

  /** The cable's points, and those of others that lie on its way. */
  private List<Node> split(Line c) {
    List<Node> out = new ArrayList<>();
    out.add(new Node(c.points().get(0), c.steps().get(0)));
    for (int i = 0; i + 1 < c.points().size(); i++) {
      Vec a = c.points().get(i);
      Vec b = c.points().get(i + 1);
      Vec way = b.minus(a);
      double length = way.length();
      double last = 0;
      for (double t : stops(c, a, way.times(1 / length), length)) {
        if (t - last > SAME && length - t > SAME) {
          out.add(new Node(a.plus(way.times(t / length)), c.steps().get(i + 1)));
          last = t;
        }
      }
      out.add(new Node(b, c.steps().get(i + 1)));
    }
    return out;
  }

  /** Where other cables have a point on a stretch, along it. */
  private List<Double> stops(Line own, Vec a, Vec unit, double length) {
    List<Double> out = new ArrayList<>();
    for (Line o : lines) {
      if (o == own) {
        continue;
      }
      for (Vec p : o.points()) {
        double x = p.x() - a.x();
        double y = p.y() - a.y();
        double z = p.z() - a.z();
        double t = x * unit.x() + y * unit.y() + z * unit.z();
        if (t > SAME && t < length - SAME && x * x + y * y + z * z - t * t < SAME * SAME) {
          out.add(t);
        }
      }
    }
    out.sort(null);
    return out;
  }

  private static String key(Vec a, Vec b) {
    String x = place(a);
    String y = place(b);
    return x.compareTo(y) < 0 ? x + " " + y : y + " " + x;
  }

  private static String place(Vec p) {
    return Math.round(p.x() / SAME)
        + ","
        + Math.round(p.y() / SAME)
        + ","
        + Math.round(p.z() / SAME);
  }

  private void share(int line) {
    List<Node> way = ways.get(line);
    for (int i = 0; i + 1 < way.size(); i++) {
      shared.computeIfAbsent(key(way.get(i).at, way.get(i + 1).at), k -> new TreeSet<>()).add(line);
    }
  }

  private Laid laid(int line) {
    List<Node> way = ways.get(line);
    List<Vec> points = new ArrayList<>();
    List<Vec> fan = new ArrayList<>();
    List<Integer> steps = new ArrayList<>();
    List<Vec> packed = new ArrayList<>();
    for (int i = 0; i < way.size(); i++) {
      Vec at = way.get(i).at;
      Vec before = i == 0 ? null : moved(line, way.get(i - 1).at, at, way.get(i).step);
      Vec after =
          i + 1 == way.size() ? null : moved(line, at, way.get(i + 1).at, way.get(i + 1).step);
      for (Vec f : joined(before, after, way, i)) {
        points.add(at);
        fan.add(f);
        steps.add(way.get(i).step);
      }
      if (i + 1 < way.size()) {
        Vec by = inBundle(line, at, way.get(i + 1).at);
        packed.add(at.plus(by));
        packed.add(way.get(i + 1).at.plus(by));
      }
    }
    return new Laid(points, fan, steps, packed);
  }

  /**
   * Where a stretch is moved: square to it and level, upright ones both to the east and to the
   * north, so that they lie beside each other from either side; on the face of a wall all of them
   * to the side of the air, since in the wall they are not.
   */
  private Vec moved(int line, Vec a, Vec b, int step) {
    TreeSet<Integer> all = shared.get(key(a, b));
    Air air = lines.get(line).air().get(step);
    Vec middle = a.plus(b).times(0.5);
    double lane = all.headSet(line).size() - (all.size() - 1) / 2.0;
    Vec out = new Vec(0, 0, 0);
    for (Vec aside : upright(a, b) ? List.of(Vec.EAST, NORTH) : List.of(aside(a, b))) {
      double off = air == null ? 0 : air.side(middle, aside) * all.size() / 2.0;
      out = out.plus(aside.times(lane + off));
    }
    return out;
  }

  /** Where a stretch lies in a round bundle of all that share it. */
  private Vec inBundle(int line, Vec a, Vec b) {
    TreeSet<Integer> all = shared.get(key(a, b));
    double[] at = Bundle.place(all.headSet(line).size(), all.size());
    Vec along = b.minus(a).unit();
    Vec across = along.cross(Math.abs(along.z()) < 0.9 ? Vec.UP : Vec.EAST).unit();
    // The same corner whichever way the cable runs.
    Vec side = across.x() + across.y() < 0 ? across.times(-1) : across;
    Vec other = along.cross(across);
    Vec up = other.x() + other.y() + other.z() < 0 ? other.times(-1) : other;
    return side.times(at[0] * widest).plus(up.times(at[1] * widest));
  }

  private static boolean upright(Vec a, Vec b) {
    Vec d = b.minus(a);
    return Math.hypot(d.x(), d.y()) < 0.2 * d.length();
  }

  private static Vec aside(Vec a, Vec b) {
    Vec d = b.minus(a);
    double level = Math.hypot(d.x(), d.y());
    // The same side whichever way the cable runs.
    Vec side = new Vec(-d.y() / level, d.x() / level, 0);
    return side.x() + side.y() < 0 ? side.times(-1) : side;
  }

  private static List<Vec> joined(Vec before, Vec after, List<Node> way, int i) {
    if (before == null || after == null) {
      return List.of(before == null ? after : before);
    }
    Vec from = way.get(i - 1).at;
    Vec at = way.get(i).at;
    Vec to = way.get(i + 1).at;
    boolean rises = upright(from, at);
    if (rises != upright(at, to)) {
      return rises
          ? both(before, end(after, before, at, to))
          : both(end(before, after, from, at), after);
    }
    if (rises || Math.abs(aside(from, at).dot(aside(at, to))) > 0.9) {
      return both(before, after);
    }
    return List.of(before.plus(after));
  }

  /**
   * Where a level stretch ends at an upright one: it goes on along its own lane, or ends sooner, so
   * that neither is drawn aslant.
   */
  private static Vec end(Vec level, Vec upright, Vec a, Vec b) {
    Vec aside = aside(a, b);
    Vec along = new Vec(aside.y(), -aside.x(), 0);
    return level.plus(along.times(upright.dot(along)));
  }

  private static List<Vec> both(Vec before, Vec after) {
    boolean same = before.minus(after).length() < 1e-4;
    return same ? List.of(before) : List.of(before, after);
  }
}
