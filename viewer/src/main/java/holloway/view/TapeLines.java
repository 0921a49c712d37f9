package holloway.view;

import holloway.look.Area;
import holloway.look.Canvas;
import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Placer;
import holloway.look.Rgb;
import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** Draws the place of a hole and its tape lines over one pane. */
final class TapeLines {
  private final Page page;
  private final Pane pane;
  private final Area body;
  private final Placer placer;

  TapeLines(Page page, Pane pane, Area body) {
    this.page = page;
    this.pane = pane;
    this.body = body;
    this.placer = new Placer(body.inset(3), page.canvas.scale());
  }

  void draw(HoleSheet hole, Vector3fc here, List<TapeMark> tapes, Vector3f look) {
    Canvas c = page.canvas;
    Vector3f at = pane.pixel(here);
    placer.keepFree(new Area(at.x - 14, at.y - 14, 28, 28));
    for (TapeMark t : tapes) {
      line(t, at);
    }
    c.pin(at.x, at.y, hole.pin().breaksLaw() ? page.theme.warn() : page.theme.pin());
    String label = hole.pin().label();
    Area box = c.label(label, page.size() * 1.15f, true);
    Area to = placer.beside(at.x, at.y, box.width(), box.height(), c.pinRadius() + 2);
    c.leader(at.x, at.y, to, page.theme.ink());
    c.plated(to, label, page.size() * 1.15f, true, page.ink());
    for (TapeMark t : tapes) {
      label(t);
    }
    if (tapes.isEmpty()) {
      String none = "nothing here to measure from: a pilot wire shows the place";
      float y = body.bottom() - page.size() * 4;
      Area plate = c.label(none, page.size(), false);
      c.plated(
          new Area(body.midX() - plate.width() / 2, y, plate.width(), plate.height()),
          none,
          page.size(),
          false,
          page.quiet());
    }
  }

  private void line(TapeMark t, Vector3f at) {
    Vector3f a = pane.pixel(t.from());
    Vector3f b = pane.pixel(t.to());
    page.canvas.dimension(a.x, a.y, b.x, b.y, page.theme.tape());
    keepLine(a, b);
    // The tape may end beside the axis; the last bit is dashed.
    if (b.distance(at.x, at.y, b.z) > 4) {
      page.canvas.add(
          new Mark.Line(
              b.x,
              b.y,
              at.x,
              at.y,
              1.4f * page.canvas.scale(),
              Rgb.with(page.theme.tape(), 0.8),
              5 * page.canvas.scale(),
              4 * page.canvas.scale()));
    }
  }

  private void keepLine(Vector3f a, Vector3f b) {
    int parts = 24;
    for (int i = 0; i <= parts; i++) {
      float x = a.x + (b.x - a.x) * i / parts;
      float y = a.y + (b.y - a.y) * i / parts;
      placer.keepFree(new Area(x - 3, y - 3, 6, 6));
    }
  }

  private void label(TapeMark t) {
    Canvas c = page.canvas;
    Vector3f a = pane.pixel(t.from());
    Vector3f b = pane.pixel(t.to());
    float strong = page.size() * 1.1f;
    List<String> words =
        c.lines("from " + t.landmark(), page.size() * 0.9f, false, body.width() * 0.42f);
    float w = c.width(t.length(), strong, true);
    for (String l : words) {
      w = Math.max(w, c.width(l, page.size() * 0.9f, false));
    }
    float line = page.size() * 1.1f;
    float h = strong * 1.3f + words.size() * line + page.size() * 0.2f;
    float pad = page.size() * 0.4f;
    Area to = placer.beside((a.x + b.x) / 2, (a.y + b.y) / 2, w + 2 * pad, h, 4 * c.scale());
    c.leader((a.x + b.x) / 2, (a.y + b.y) / 2, to, page.theme.tape());
    c.add(
        new Mark.Slab(
            to.x(),
            to.y(),
            to.width(),
            to.height(),
            page.size() * 0.3f,
            Rgb.with(page.theme.plate(), 0.88)));
    c.word(to.x() + pad, to.y() + 2, t.length(), strong, true, page.ink());
    float y = to.y() + strong * 1.3f;
    for (String l : words) {
      c.word(to.x() + pad, y, l, page.size() * 0.9f, false, page.quiet());
      y += line;
    }
  }
}
