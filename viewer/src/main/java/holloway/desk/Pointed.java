package holloway.desk;

import holloway.look.Pane;
import holloway.pick.Ray;
import holloway.pick.Shapes;
import holloway.pick.Tree;
import holloway.session.Choice;
import holloway.view.Cable;
import holloway.view.EndMark;
import holloway.view.Model;
import holloway.view.Piece;
import holloway.view.Pin;
import holloway.view.Space;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.joml.Vector4fc;

/**
 * What a pixel of the model points at: the nearest pin, else an outlet, else a cable, else the
 * solid or lit hollow that is seen there. Two trees, one of bodies and one of what is thin.
 */
final class Pointed {
  private static final float PIN = 15;
  private static final float END = 13;
  private static final float CABLE = 9;
  private static final Vector3fc NO_SIZE = new Vector3f(1e-4f, 0, 0);

  private final Model model;
  private final List<Stretch> stretches = new ArrayList<>();

  /** Pieces first, then hollows. */
  private final Tree bodies;

  /** Pins first, then ends, then stretches of cables. */
  private final Tree thin;

  private record Stretch(Cable cable, Vector3fc a, Vector3fc b) {}

  Pointed(Model model) {
    this.model = model;
    Shapes thick = new Shapes();
    model.pieces().forEach(p -> thick.add(p.centre(), p.u(), p.v(), p.w()));
    model.spaces().forEach(s -> thick.add(s.centre(), s.u(), s.v(), s.w()));
    bodies = new Tree(thick);
    Shapes lines = new Shapes();
    model.pins().forEach(p -> lines.add(p.middle(), NO_SIZE, up(), north()));
    model.ends().forEach(e -> lines.add(e.at(), NO_SIZE, up(), north()));
    for (Cable c : model.cables()) {
      for (int i = 0; i + 1 < c.points().size(); i++) {
        Vector3fc a = c.points().get(i);
        Vector3fc b = c.points().get(i + 1);
        stretches.add(new Stretch(c, a, b));
        Vector3f half = new Vector3f(b).sub(a).mul(0.5f);
        boolean steep = Math.abs(half.z) > 0.9f * half.length();
        Vector3f side = half.cross(steep ? north() : up(), new Vector3f()).normalize(1e-4f);
        Vector3f other = half.cross(side, new Vector3f()).normalize(1e-4f);
        lines.add(new Vector3f(a).add(half), half, side, other);
      }
    }
    thin = new Tree(lines);
  }

  private static Vector3f up() {
    return new Vector3f(0, 0, 1e-4f);
  }

  private static Vector3f north() {
    return new Vector3f(0, 1e-4f, 0);
  }

  /** All that is at a pixel, what a person means first. */
  List<Choice> at(Seen seen, Pane pane, float x, float y, float scale) {
    Ray ray = Ray.at(pane, x, y);
    List<Choice> out = new ArrayList<>();
    List<Integer> near = thin.near(ray, PIN * scale);
    pin(near, seen, pane, x, y, PIN * scale).ifPresent(out::add);
    end(near, seen, pane, x, y, END * scale).ifPresent(out::add);
    cable(near, pane, x, y, CABLE * scale).ifPresent(out::add);
    bodies(seen, ray, out);
    return out;
  }

  private Optional<Choice> pin(
      List<Integer> near, Seen seen, Pane pane, float x, float y, float within) {
    Optional<Choice> best = Optional.empty();
    float least = within;
    for (int n : near) {
      if (n < model.pins().size()) {
        Pin p = model.pins().get(n);
        float far = far(pane, p.middle(), x, y);
        if (seen.isShown(p) && far < least) {
          least = far;
          best = Optional.of(new Choice.Hole(p.id()));
        }
      }
    }
    return best;
  }

  private Optional<Choice> end(
      List<Integer> near, Seen seen, Pane pane, float x, float y, float within) {
    Optional<Choice> best = Optional.empty();
    float least = within;
    for (int n : near) {
      int i = n - model.pins().size();
      if (i >= 0 && i < model.ends().size()) {
        EndMark e = model.ends().get(i);
        float far = far(pane, e.at(), x, y);
        boolean shown = !e.cabinet() && seen.isShown(e.at()) && isKept(pane, e.at());
        if (shown && far < least) {
          least = far;
          best = Optional.of(new Choice.Outlet(e.name()));
        }
      }
    }
    return best;
  }

  private Optional<Choice> cable(List<Integer> near, Pane pane, float x, float y, float within) {
    Optional<Choice> best = Optional.empty();
    float least = within;
    for (int n : near) {
      int i = n - model.pins().size() - model.ends().size();
      if (i >= 0) {
        Stretch s = stretches.get(i);
        float far = far(pane, s, x, y);
        if (far < least) {
          least = far;
          best = Optional.of(new Choice.Run(s.cable.id()));
        }
      }
    }
    return best;
  }

  /** The first solid or lit hollow, then all else along the ray, nearest first. */
  private void bodies(Seen seen, Ray ray, List<Choice> to) {
    int first = to.size();
    boolean found = false;
    for (Tree.Hit h : bodies.all(ray, n -> counts(seen, n))) {
      boolean piece = h.number() < model.pieces().size();
      Choice c = choice(h.number());
      boolean means =
          piece ? seen.hides(model.pieces().get(h.number())) : seen.isLit(space(h.number()));
      if (means && !found) {
        to.add(first, c);
        found = true;
      } else {
        to.add(c);
      }
    }
  }

  private boolean counts(Seen seen, int number) {
    if (number < model.pieces().size()) {
      Piece p = model.pieces().get(number);
      return seen.isShown(p);
    }
    Space s = space(number);
    return !s.open() && seen.isShown(s.centre());
  }

  private Space space(int number) {
    return model.spaces().get(number - model.pieces().size());
  }

  private Choice choice(int number) {
    return number < model.pieces().size()
        ? new Choice.Member(model.pieces().get(number).id())
        : new Choice.Hollow(space(number).id());
  }

  private static boolean isKept(Pane pane, Vector3fc p) {
    for (Vector4fc c : pane.cuts()) {
      if (c.x() * p.x() + c.y() * p.y() + c.z() * p.z() + c.w() < 0) {
        return false;
      }
    }
    return true;
  }

  private static float far(Pane pane, Vector3fc at, float x, float y) {
    Vector3f p = pane.pixel(at);
    return p.z <= 0 ? Float.MAX_VALUE : (float) Math.hypot(p.x - x, p.y - y);
  }

  /** From a pixel to a stretch on the picture; what a slice took away is far. */
  private static float far(Pane pane, Stretch s, float x, float y) {
    Vector3f a = pane.pixel(s.a);
    Vector3f b = pane.pixel(s.b);
    if (a.z <= 0 || b.z <= 0) {
      return Float.MAX_VALUE;
    }
    float dx = b.x - a.x;
    float dy = b.y - a.y;
    float length = dx * dx + dy * dy;
    float t = length == 0 ? 0 : ((x - a.x) * dx + (y - a.y) * dy) / length;
    t = Math.max(0, Math.min(1, t));
    // The same place in the house: nearer parts take more of the picture.
    float there = t * a.z / (t * a.z + (1 - t) * b.z);
    if (!isKept(pane, new Vector3f(s.a).lerp(s.b, there))) {
      return Float.MAX_VALUE;
    }
    return (float) Math.hypot(a.x + t * dx - x, a.y + t * dy - y);
  }
}
