package holloway.view;

import holloway.look.Area;
import holloway.look.Bodies;
import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Placer;
import holloway.look.Rgb;
import holloway.look.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * Two plans for one house side by side, from one eye: what is the same stands back, holes that the
 * other has not are labelled, and the difference is told in numbers.
 */
final class TwoWaysPicture {
  private static final Vector3f LOOK = new Vector3f(-0.50f, 0.70f, -0.52f);

  private final Side first;
  private final Side second;
  private final TwoWays ways;
  private final Page page;

  /** One of the two: what it is called, its model, and the holes that it alone has. */
  record Side(String name, Model model, Set<String> own) {}

  TwoWaysPicture(Side first, Side second, TwoWays ways, Page page) {
    this.first = first;
    this.second = second;
    this.ways = ways;
    this.page = page;
  }

  Sheet sheet() {
    Area m = page.model;
    float head = page.size() * 2.2f;
    List<Vector3fc> all = new ArrayList<>();
    for (Model x : List.of(first.model, second.model)) {
      x.cables().forEach(c -> all.addAll(c.points()));
      x.rooms().forEach(r -> all.addAll(r.outline()));
    }
    Area left = new Area(m.x(), m.y() + head, m.width() / 2, m.height() - head);
    Area upper = new Area(m.x(), m.y() + head, m.width(), m.height() / 2 - head);
    Eye tall = Eye.on(all, LOOK, new Vector3f(0, 0, 1), left, 3, 0.08f);
    Eye wide = Eye.on(all, LOOK, new Vector3f(0, 0, 1), upper, 3, 0.08f);
    // A wide house is larger one over the other.
    boolean over = wide.perPixel() < tall.perPixel();
    Eye eye = over ? wide : tall;
    Area a = over ? upper : left;
    Area b =
        over
            ? new Area(m.x(), a.bottom() + head, a.width(), a.height())
            : new Area(left.right(), a.y(), a.width(), a.height());
    List<Pane> panes = List.of(pane(first, eye, a), pane(second, eye, b));
    column(over);
    return new Sheet(page.width, page.height, page.theme, panes, page.canvas.marks());
  }

  private Pane pane(Side side, Eye eye, Area area) {
    Set<String> other = ways.runsThatDiffer();
    Bodies bodies =
        new Painted(side.model, page.theme)
            .lit(s -> s.runs().stream().anyMatch(other::contains))
            .cables(c -> other.contains(c.id()), 1)
            .bodies();
    Pane pane =
        new Pane(
            (int) area.x(),
            (int) area.y(),
            (int) area.width(),
            (int) area.height(),
            eye.view(),
            eye.projection(),
            List.of(),
            bodies,
            page.leastPixels(side.model));
    outlines(side.model, pane);
    String name = page.canvas.fitted(side.name, page.size(), true, area.width() - 2 * page.size());
    float y = area.y() - page.size() * 1.6f;
    page.canvas.word(area.x() + page.size(), y, name, page.size(), true, page.ink());
    Placer placer = new Placer(area.inset(2), page.canvas.scale());
    Marks marks = new Marks(page.canvas, pane, placer);
    for (Pin p : side.model.pins()) {
      if (side.own.contains(p.id())) {
        marks.pin(p, false);
      } else {
        marks.bare(p);
      }
    }
    side.model.ends().stream().filter(EndMark::cabinet).forEach(marks::end);
    marks.finish();
    return pane;
  }

  private void outlines(Model model, Pane pane) {
    int colour = Rgb.with(page.theme.ink(), 0.28);
    for (RoomMark r : model.rooms()) {
      for (int i = 0; i < r.outline().size(); i++) {
        Vector3f a = pane.pixel(r.outline().get(i));
        Vector3f b = pane.pixel(r.outline().get((i + 1) % r.outline().size()));
        page.canvas.add(new Mark.Line(a.x, a.y, b.x, b.y, 1.2f * page.canvas.scale(), colour));
      }
    }
  }

  private void column(boolean over) {
    page.title(first.model.name() + ": two ways side by side", "from the south-east and above");
    page.heading("In numbers");
    page.row(page.quiet(), "", over ? "upper" : "left", over ? "lower" : "right", "difference");
    for (TwoWays.Row r : ways.rows()) {
      page.row(page.ink(), r.name(), r.first(), r.second(), r.more());
    }
    Set<String> other = ways.runsThatDiffer();
    page.heading(other.isEmpty() ? "Every run goes the same way" : "Runs that go another way");
    int all = (int) second.model.cables().stream().filter(c -> other.contains(c.id())).count();
    int left = all;
    for (Cable c : second.model.cables()) {
      if (other.contains(c.id()) && page.room(10)) {
        page.run(c, c.length());
        left--;
      }
    }
    page.more(left, all);
    page.heading("Signs");
    page.sign(
        "hole that both have; a label: the other has it not",
        (x, y) -> page.canvas.pin(x, y, page.theme.pin()));
    Signs.lit(page);
    page.sign("pale: a run that goes the same way in both", (x, y) -> pale(x, y));
  }

  private void pale(float x, float y) {
    float w = page.size() * 2.4f;
    int c = Rgb.with(page.theme.ink(), 0.28);
    page.canvas.add(new Mark.Line(x - w / 2, y, x + w / 2, y, page.size() * 0.3f, c));
  }
}
