package holloway.view;

import holloway.look.Area;
import holloway.look.Bodies;
import holloway.look.Canvas;
import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Rgb;
import holloway.look.Sheet;
import java.util.ArrayList;
import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.joml.Vector4f;

/** One hole from both sides, each as a person there sees it, with the tape lines to measure by. */
final class HolePicture {
  /** Pieces farther away than so many metres are never in the picture. */
  private static final float FAR = 30;

  /** Metres that are seen at least: to know the place by, or to see a short tape in. */
  private static final float ALONE = 1.5f;

  private static final float WITH_TAPES = 0.8f;

  /** What was closed must not be cut open again. */
  private static final float SLACK = 0.002f;

  private final Model model;
  private final HoleSheet hole;
  private final Page page;
  private final List<Pane> panes = new ArrayList<>();

  HolePicture(Model model, HoleSheet hole, Page page) {
    this.model = model;
    this.hole = hole;
    this.page = page;
  }

  Sheet sheet() {
    page.title(model.name() + ": hole " + hole.pin().label(), hole.what());
    boolean beside = page.model.width() >= page.model.height();
    Area m = page.model;
    float gap = Math.round(page.size() * 0.5f);
    Area first =
        beside
            ? new Area(m.x() + gap, m.y(), m.width() / 2 - 1.5f * gap, m.height() - gap)
            : new Area(m.x() + gap, m.y(), m.width() - 2 * gap, m.height() / 2 - 1.5f * gap);
    Area second =
        beside
            ? new Area(m.x() + m.width() / 2 + gap / 2, m.y(), first.width(), first.height())
            : new Area(first.x(), m.y() + m.height() / 2 + gap / 2, first.width(), first.height());
    side(first, true);
    side(second, false);
    column();
    return new Sheet(page.width, page.height, page.theme, panes, page.canvas.marks());
  }

  private void side(Area area, boolean drill) {
    Vector3fc here = drill ? hole.a() : hole.b();
    Vector3fc there = drill ? hole.b() : hole.a();
    List<TapeMark> tapes = drill ? hole.tapesA() : hole.tapesB();
    Vector3f look = new Vector3f(there).sub(here);
    if (look.lengthSquared() < 1e-10f) {
      look.set(0, 1, 0);
    }
    look.normalize();
    List<Vector3fc> seen = new ArrayList<>(List.of(here));
    for (TapeMark t : tapes) {
      seen.add(t.from());
      seen.add(t.to());
    }
    float title = page.size() * 3.1f;
    Area body = new Area(area.x(), area.y() + title, area.width(), area.height() - title);
    Slice cut = slice(here, look, before(here, look, tapes), behind());
    float least = tapes.isEmpty() ? ALONE : WITH_TAPES;
    Eye eye = Eye.over(there(cut, here), seen, look, up(look), body, least, 0.2f);
    Pane pane = pane(body, eye, here, look, tapes);
    panes.add(pane);
    frame(area, body, drill, look);
    new TapeLines(page, pane, body).draw(hole, here, tapes, look);
  }

  /** Up is up; looking up or down, north is up, as on the plan. */
  private static Vector3f up(Vector3f look) {
    return Math.abs(look.z) > 0.7f ? new Vector3f(0, 1, 0) : new Vector3f(0, 0, 1);
  }

  /** The corners of what the picture shows of the house, as far as it is near the place. */
  private List<Vector3fc> there(Slice cut, Vector3fc here) {
    List<Vector3fc> out = new ArrayList<>(List.of(here));
    for (Piece p : model.pieces()) {
      if (cut.touches(p.centre(), p.reach()) && p.centre().distance(here) < FAR) {
        out.add(new Vector3f(p.centre()).add(p.reach()));
        out.add(new Vector3f(p.centre()).sub(p.reach()));
      }
    }
    return out;
  }

  private static float before(Vector3fc here, Vector3f look, List<TapeMark> tapes) {
    // What stands between the person and the place would hide it; the tapes' landmarks must not go.
    float before = 0.10f;
    for (TapeMark t : tapes) {
      before = Math.max(before, depth(t.from(), here, look) + 0.03f);
    }
    return before;
  }

  private float behind() {
    return hole.a().distance(hole.b()) + 0.5f;
  }

  private Pane pane(Area body, Eye eye, Vector3fc here, Vector3f look, List<TapeMark> tapes) {
    float before = before(here, look, tapes);
    float behind = behind();
    Vector4f near = new Vector4f(look, before - look.dot(here));
    Vector4f far = new Vector4f(-look.x, -look.y, -look.z, behind + look.dot(here));
    Bodies bodies =
        new Painted(model, page.theme)
            .solidIn(slice(here, look, before, behind), p -> p.centre().distance(here) < FAR)
            .lit(s -> hole.between().contains(s.id()))
            .only(c -> hole.pin().runs().contains(c.id()), 1)
            .bodies();
    return new Pane(
        (int) body.x(),
        (int) body.y(),
        (int) body.width(),
        (int) body.height(),
        eye.view(),
        eye.projection(),
        List.of(near, far),
        bodies,
        5 * page.canvas.scale());
  }

  /**
   * The same part of the house along the axis that the look is nearest to; cut pieces are closed.
   */
  private static Slice slice(Vector3fc here, Vector3f look, float before, float behind) {
    int axis = look.maxComponent();
    if (Math.abs(look.get(axis)) < 0.999f) {
      return new Slice(axis, here.get(axis), 2 * FAR);
    }
    float side = Math.signum(look.get(axis));
    float near = here.get(axis) - side * (before - SLACK);
    float far = here.get(axis) + side * (behind - SLACK);
    return new Slice(axis, (near + far) / 2, Math.abs(far - near));
  }

  /** How far a point is on the person's side of the place. */
  private static float depth(Vector3fc p, Vector3fc here, Vector3f look) {
    return -new Vector3f(p).sub(here).dot(look);
  }

  /** In which direction a pane looks, and so what is up in it. */
  private String looking(Vector3f look) {
    if (Math.abs(look.z) > 0.7f) {
      return look.z < 0
          ? "seen from above, " + page.up()
          : "seen from below: " + page.up() + ", west is right";
    }
    boolean eastWest = Math.abs(look.x) > Math.abs(look.y);
    String way = eastWest ? look.x > 0 ? "east" : "west" : look.y > 0 ? "north" : "south";
    return "looking " + way + page.by();
  }

  private void frame(Area area, Area body, boolean drill, Vector3f look) {
    Canvas c = page.canvas;
    float s = page.size();
    String text = drill ? "Drill here: " + hole.from() : "The bit comes out: " + hole.out();
    float y = area.y() + s * 0.3f;
    for (String line : c.lines(text, s, true, area.width()).stream().limit(2).toList()) {
      c.word(area.x(), y, line, s, true, page.ink());
      y += s * 1.3f;
    }
    String how = looking(look);
    Area plate = c.label(how, s * 0.9f, false);
    c.plated(
        new Area(
            body.x() + s * 0.4f,
            body.bottom() - plate.height() - s * 0.4f,
            plate.width(),
            plate.height()),
        how,
        s * 0.9f,
        false,
        page.quiet());
    int line = Rgb.with(page.theme.ink(), 0.22);
    float w = Math.max(1, c.scale());
    c.add(new Mark.Line(body.x(), body.y(), body.right(), body.y(), w, line));
    c.add(new Mark.Line(body.x(), body.bottom(), body.right(), body.bottom(), w, line));
    c.add(new Mark.Line(body.x(), body.y(), body.x(), body.bottom(), w, line));
    c.add(new Mark.Line(body.right(), body.y(), body.right(), body.bottom(), w, line));
  }

  private void column() {
    for (HoleSheet.Line l : hole.lines()) {
      page.heading(l.title());
      l.words().forEach(w -> page.words(w, page.ink()));
    }
    if (!page.room(2)) {
      return;
    }
    page.heading("Runs through it");
    int left = hole.pin().runs().size();
    for (Cable c : model.cables()) {
      if (hole.pin().runs().contains(c.id()) && page.room(left == 1 ? 1 : 2.5f)) {
        page.run(c, "");
        left--;
      }
    }
    page.more(left, hole.pin().runs().size());
  }
}
