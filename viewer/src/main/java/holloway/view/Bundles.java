package holloway.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * Lays cables that share a way beside each other. Each stretch that several share gets as many
 * lanes as there are cables; a lane is a number of widths from the true line, and the tube is moved
 * aside when it is drawn, so that the picture's scale decides how far.
 */
final class Bundles {
  /** Two points nearer than this are one. */
  private static final float SAME = 0.003f;

  private final List<Cable> cables;
  private final List<List<Node>> ways = new ArrayList<>();
  private final Map<String, TreeSet<Integer>> shared = new HashMap<>();

  /** A point of a cable, with the step it ends. */
  private record Node(Vector3fc at, int step) {}

  /**
   * A cable ready to be drawn: its points, how many widths each is moved and where to, and the step
   * each belongs to.
   */
  record Laid(List<Vector3fc> points, List<Vector3fc> fan, List<Integer> steps) {}

  private Bundles(List<Cable> cables) {
    this.cables = cables;
  }

  /** One for each cable, in their order. */
  static List<Laid> of(List<Cable> cables) {
    Bundles b = new Bundles(cables);
    cables.forEach(c -> b.ways.add(b.split(c)));
    for (int i = 0; i < cables.size(); i++) {
      b.share(i);
    }
    List<Laid> out = new ArrayList<>();
    for (int i = 0; i < cables.size(); i++) {
      out.add(b.laid(i));
    }
    return out;
  }

  /** The cable's points, and those of others that lie on its way. */
  private List<Node> split(Cable c) {
    List<Node> out = new ArrayList<>();
    out.add(new Node(c.points().get(0), c.steps().get(0)));
    for (int i = 0; i + 1 < c.points().size(); i++) {
      Vector3fc a = c.points().get(i);
      Vector3fc b = c.points().get(i + 1);
      List<Float> at = new ArrayList<>();
      for (Cable o : cables) {
        if (o != c) {
          o.points().forEach(p -> onWay(a, b, p, at));
        }
      }
      at.sort(null);
      Vector3f way = new Vector3f(b).sub(a);
      float length = way.length();
      float last = 0;
      for (float t : at) {
        if (t - last > SAME && length - t > SAME) {
          out.add(new Node(new Vector3f(way).mul(t / length).add(a), c.steps().get(i + 1)));
          last = t;
        }
      }
      out.add(new Node(b, c.steps().get(i + 1)));
    }
    return out;
  }

  private static void onWay(Vector3fc a, Vector3fc b, Vector3fc p, List<Float> at) {
    Vector3f way = new Vector3f(b).sub(a);
    float length = way.length();
    Vector3f to = new Vector3f(p).sub(a);
    float t = to.dot(way) / length;
    if (t > SAME && t < length - SAME && to.lengthSquared() - t * t < SAME * SAME) {
      at.add(t);
    }
  }

  private static String key(Vector3fc a, Vector3fc b) {
    String x = place(a);
    String y = place(b);
    return x.compareTo(y) < 0 ? x + " " + y : y + " " + x;
  }

  private static String place(Vector3fc p) {
    return Math.round(p.x() / SAME)
        + ","
        + Math.round(p.y() / SAME)
        + ","
        + Math.round(p.z() / SAME);
  }

  private void share(int cable) {
    List<Node> way = ways.get(cable);
    for (int i = 0; i + 1 < way.size(); i++) {
      shared
          .computeIfAbsent(key(way.get(i).at, way.get(i + 1).at), k -> new TreeSet<>())
          .add(cable);
    }
  }

  private float lane(int cable, Vector3fc a, Vector3fc b) {
    TreeSet<Integer> all = shared.get(key(a, b));
    return all.headSet(cable).size() - (all.size() - 1) / 2f;
  }

  private Laid laid(int cable) {
    List<Node> way = ways.get(cable);
    List<Vector3fc> points = new ArrayList<>();
    List<Vector3fc> fan = new ArrayList<>();
    List<Integer> steps = new ArrayList<>();
    for (int i = 0; i < way.size(); i++) {
      Vector3fc at = way.get(i).at;
      Vector3f before = i == 0 ? null : moved(cable, way.get(i - 1).at, at);
      Vector3f after = i + 1 == way.size() ? null : moved(cable, at, way.get(i + 1).at);
      for (Vector3f f : joined(before, after, way, i)) {
        points.add(at);
        fan.add(f);
        steps.add(way.get(i).step);
      }
    }
    return new Laid(points, fan, steps);
  }

  /** Where a stretch is moved: square to it and level, upright ones to one corner. */
  private Vector3f moved(int cable, Vector3fc a, Vector3fc b) {
    return aside(a, b).mul(lane(cable, a, b));
  }

  private static Vector3f aside(Vector3fc a, Vector3fc b) {
    Vector3f d = new Vector3f(b).sub(a);
    float level = (float) Math.hypot(d.x, d.y);
    if (level < 0.2f * d.length()) {
      return new Vector3f(0.7f, 0.7f, 0);
    }
    // The same side whichever way the cable runs.
    Vector3f side = new Vector3f(-d.y / level, d.x / level, 0);
    return side.x + side.y < 0 ? side.negate() : side;
  }

  private static List<Vector3f> joined(Vector3f before, Vector3f after, List<Node> way, int i) {
    if (before == null || after == null) {
      return List.of(before == null ? after : before);
    }
    boolean upBefore = upright(way.get(i - 1).at, way.get(i).at);
    boolean upAfter = upright(way.get(i).at, way.get(i + 1).at);
    if (upBefore != upAfter) {
      return List.of(upBefore ? after : before);
    }
    Vector3f a = aside(way.get(i - 1).at, way.get(i).at);
    Vector3f b = aside(way.get(i).at, way.get(i + 1).at);
    if (Math.abs(a.dot(b)) > 0.9f) {
      return before.distance(after) < 1e-4f ? List.of(before) : List.of(before, after);
    }
    return List.of(new Vector3f(before).add(after));
  }

  private static boolean upright(Vector3fc a, Vector3fc b) {
    Vector3f d = new Vector3f(b).sub(a);
    return Math.hypot(d.x, d.y) < 0.2f * d.length();
  }
}
