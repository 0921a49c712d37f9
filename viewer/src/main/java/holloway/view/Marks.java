package holloway.view;

import holloway.look.Area;
import holloway.look.Canvas;
import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Placer;
import holloway.look.Rgb;
import holloway.look.Theme;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** Pins, ends and names over a pane: marks first, then labels where there is room for them. */
final class Marks {
  /** Lines of type that a name may stand lower or higher than its place. */
  private static final float[] ASIDE = {0, 1.6f, -1.6f, 3.2f, -3.2f, 4.8f, -4.8f};

  private final Canvas canvas;
  private final Pane pane;
  private final Placer placer;
  private final List<Runnable> labels = new ArrayList<>();
  private final List<Runnable> names = new ArrayList<>();
  private final List<Vector3f> guessed = new ArrayList<>();
  private Lines lines;
  private boolean finished;

  Marks(Canvas canvas, Pane pane, Placer placer) {
    this.canvas = canvas;
    this.pane = pane;
    this.placer = placer;
  }

  /** A hole and its label; strong when it is the one that the picture is about. */
  void pin(Pin p, boolean strong) {
    Vector3f at = pane.pixel(p.middle());
    if (!pane.holds(at.x, at.y)) {
      return;
    }
    Theme t = canvas.theme();
    int colour = p.breaksLaw() ? t.warn() : t.pin();
    free(at, canvas.pinRadius() + 2);
    labels.add(() -> ring(at, p, colour, strong));
  }

  /** A hole without its label. */
  void bare(Pin p) {
    Vector3f at = pane.pixel(p.middle());
    if (pane.holds(at.x, at.y)) {
      free(at, canvas.pinRadius());
      labels.add(() -> canvas.pin(at.x, at.y, canvas.theme().quiet()));
    }
  }

  private void ring(Vector3f at, Pin p, int colour, boolean strong) {
    // Not by colour alone: a hole that breaks the law says so.
    String text = p.label() + (p.breaksLaw() ? " !" : "");
    float size = canvas.size() * (strong ? 1.15f : 1);
    Area box = canvas.label(text, size, true);
    Area to = placer.beside(at.x, at.y, box.width(), box.height(), canvas.pinRadius() + 1);
    canvas.leader(at.x, at.y, to, canvas.theme().ink());
    canvas.pin(at.x, at.y, colour);
    canvas.plated(to, text, size, true, Rgb.opaque(colour));
  }

  /** The cabinet as a square, an outlet as a diamond, with its name. */
  void end(EndMark e) {
    Vector3f at = pane.pixel(e.at());
    if (!pane.holds(at.x, at.y)) {
      return;
    }
    free(at, 8 * canvas.scale());
    labels.add(
        () -> {
          Area box = canvas.label(e.name(), canvas.size(), false);
          Area to = placer.beside(at.x, at.y, box.width(), box.height(), 9 * canvas.scale());
          canvas.leader(at.x, at.y, to, canvas.theme().ink());
          sign(canvas, at.x, at.y, e.cabinet());
          canvas.plated(to, e.name(), canvas.size(), false, Rgb.opaque(canvas.theme().ink()));
        });
  }

  /** Says it where nobody knows a cable's way, once for all cables there. */
  void guessed(Cable c, Predicate<Vector3fc> shown) {
    for (int step : new TreeSet<>(c.guessed())) {
      Vector3f middle = c.middle(step);
      Vector3f at = pane.pixel(middle);
      boolean said = guessed.stream().anyMatch(g -> g.distance(middle) < 0.01f);
      if (said || at.z <= 0 || !pane.holds(at.x, at.y) || !shown.test(middle)) {
        continue;
      }
      guessed.add(middle);
      labels.add(
          () -> {
            String text = "way not known";
            Area box = canvas.label(text, canvas.size(), false);
            float gap = 5 * canvas.scale();
            Area to = placer.beside(at.x, at.y, box.width(), box.height(), gap);
            canvas.leader(at.x, at.y, to, canvas.theme().quiet());
            canvas.plated(to, text, canvas.size(), false, Rgb.opaque(canvas.theme().quiet()));
          });
    }
  }

  static void sign(Canvas canvas, float x, float y, boolean cabinet) {
    float r = (cabinet ? 7.5f : 8) * canvas.scale();
    int ink = Rgb.opaque(canvas.theme().ink());
    int rim = Rgb.opaque(canvas.theme().plate());
    if (cabinet) {
      canvas.add(new Mark.Slab(x - r - 1.5f, y - r - 1.5f, 2 * r + 3, 2 * r + 3, 0, rim));
      canvas.add(new Mark.Slab(x - r, y - r, 2 * r, 2 * r, 0, ink));
      return;
    }
    diamond(canvas, x, y, r + 2, rim);
    diamond(canvas, x, y, r, ink);
  }

  private static void diamond(Canvas canvas, float x, float y, float r, int colour) {
    canvas.add(new Mark.Wedge(x, y - r, x + r, y, x - r, y, colour));
    canvas.add(new Mark.Wedge(x, y + r, x + r, y, x - r, y, colour));
  }

  /**
   * A quiet name on its place, like that of a room, or a little above or below where a cable or a
   * mark is; no label is put over it.
   */
  void name(Vector3fc at, String text) {
    if (finished) {
      put(at, text);
    } else {
      names.add(() -> put(at, text));
    }
  }

  private void put(Vector3fc at, String text) {
    Vector3f p = pane.pixel(at);
    float size = canvas.size();
    Area label = canvas.label(text, size, false);
    Area middle =
        new Area(p.x - label.width() / 2, p.y - label.height() / 2, label.width(), label.height());
    if (!pane.holds(middle.x(), middle.y()) || !pane.holds(middle.right(), middle.bottom())) {
      return;
    }
    Area box = finished ? null : middle;
    for (float up : ASIDE) {
      Area a = new Area(middle.x(), middle.y() + up * size, middle.width(), middle.height());
      if (placer.isFree(a) && !lines().crosses(a, 5 * canvas.scale())) {
        box = a;
        break;
      }
    }
    if (box == null) {
      return; // over a label that is there already it would make both unreadable
    }
    placer.keepFree(box);
    if (box.y() > p.y + size || box.bottom() < p.y - size) {
      canvas.add(new Mark.Disc(p.x, p.y, 2 * canvas.scale(), Rgb.opaque(canvas.theme().quiet())));
      canvas.leader(p.x, p.y, box, canvas.theme().quiet());
    }
    canvas.add(
        new Mark.Slab(
            box.x(),
            box.y(),
            box.width(),
            box.height(),
            2,
            Rgb.with(canvas.theme().plate(), 0.45)));
    canvas.centred(box.midX(), box.midY(), text, size, false, Rgb.opaque(canvas.theme().quiet()));
  }

  private Lines lines() {
    if (lines == null) {
      lines = new Lines(pane);
    }
    return lines;
  }

  private void free(Vector3f at, float r) {
    placer.keepFree(new Area(at.x - r, at.y - r, 2 * r, 2 * r));
  }

  /** Draws the labels, once all marks are known. */
  void finish() {
    names.forEach(Runnable::run);
    finished = true;
    labels.forEach(Runnable::run);
  }
}
