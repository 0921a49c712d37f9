package holloway.view;

import holloway.look.Area;
import holloway.look.Canvas;
import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Placer;
import holloway.look.Rgb;
import holloway.plan.Plan;
import java.util.List;
import java.util.function.Predicate;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * The marks of a view that moves: as in still pictures, with findings and a chosen hole's tapes.
 */
public final class LiveMarks {
  private final Canvas canvas;
  private final Pane pane;
  private final Marks marks;
  private final Placer placer;

  public LiveMarks(Canvas canvas, Pane pane, Placer placer) {
    this.canvas = canvas;
    this.pane = pane;
    this.placer = placer;
    this.marks = new Marks(canvas, pane, placer);
  }

  public void pin(Pin p, boolean strong) {
    if (pane.pixel(p.middle()).z > 0) {
      marks.pin(p, strong);
    }
  }

  public void end(EndMark e) {
    if (pane.pixel(e.at()).z > 0) {
      marks.end(e);
    }
  }

  /** Where nobody knows a cable's way. */
  public void guessed(Cable c, Predicate<Vector3fc> shown) {
    marks.guessed(c, shown);
  }

  public void name(Vector3fc at, String text) {
    if (pane.pixel(at).z > 0) {
      marks.name(at, text);
    }
  }

  /** A triangle with a bar at each finding that has a place; those of law are ringed too. */
  public void findings(List<Plan.FindingLine> findings, Predicate<Vector3fc> shown) {
    for (Plan.FindingLine f : findings) {
      f.at().map(Models::metres).filter(shown::test).ifPresent(p -> finding(f, p));
    }
  }

  private void finding(Plan.FindingLine f, Vector3f at) {
    Vector3f p = pane.pixel(at);
    if (p.z <= 0 || !pane.holds(p.x, p.y)) {
      return;
    }
    float r = 9 * canvas.scale();
    float y = p.y - canvas.pinRadius() * 2.1f;
    int colour = Rgb.opaque(f.breaksLaw() ? canvas.theme().warn() : canvas.theme().glow());
    int rim = Rgb.opaque(canvas.theme().plate());
    canvas.add(new Mark.Wedge(p.x, y - r - 2, p.x + r + 2, y + r, p.x - r - 2, y + r, rim));
    canvas.add(new Mark.Wedge(p.x, y - r, p.x + r, y + r - 1.5f, p.x - r, y + r - 1.5f, colour));
    canvas.add(new Mark.Line(p.x, y - r * 0.35f, p.x, y + r * 0.35f, 2 * canvas.scale(), rim));
  }

  /** The tape lines of a hole, both sides. */
  public void tapes(HoleSheet h) {
    for (List<TapeMark> side : List.of(h.tapesA(), h.tapesB())) {
      side.forEach(this::tape);
    }
  }

  private void tape(TapeMark t) {
    Vector3f a = pane.pixel(t.from());
    Vector3f b = pane.pixel(t.to());
    if (a.z <= 0 || b.z <= 0) {
      return;
    }
    canvas.dimension(a.x, a.y, b.x, b.y, canvas.theme().tape());
    Area box = canvas.label(t.length(), canvas.size(), true);
    Area to =
        placer.beside(
            (a.x + b.x) / 2, (a.y + b.y) / 2, box.width(), box.height(), 3 * canvas.scale());
    canvas.plated(to, t.length(), canvas.size(), true, Rgb.opaque(canvas.theme().ink()));
  }

  /** Draws the labels, once all marks are known. */
  public void finish() {
    marks.finish();
  }
}
