package holloway.view;

import holloway.look.Area;
import holloway.look.Canvas;
import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Placer;
import holloway.look.Rgb;
import holloway.look.Theme;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3fc;

/**
 * How a still picture is laid out: a line of title above, the model, a column of explanations at
 * the right where there is room for one, else below.
 */
final class Page {
  private static final float WIDE = 1600;
  private static final float TALL = 1000;

  final int width;
  final int height;
  final Theme theme;
  final Canvas canvas;
  final Area model;
  final Area side;
  final UnitSystem units;

  /** Real north in the house's own frame; empty where that is its own. */
  final Optional<Vector3fc> north;

  private float at;

  Page(Pictures.Paper paper, UnitSystem units, Optional<Vector3fc> north) {
    this.north = north;
    this.width = paper.width();
    this.height = paper.height();
    this.theme = paper.theme();
    this.units = units;
    float scale = Math.max(0.6f, Math.min(width / WIDE, height / TALL));
    if (width < height) {
      scale = Math.max(0.6f, Math.min(width / TALL, height / WIDE));
    }
    canvas = new Canvas(theme, paper.measure(), scale, paper.words());
    float size = canvas.size();
    float top = Math.round(size * 2.6f);
    boolean beside = width >= height;
    float column = Math.round(Math.min(width * 0.30f, size * 22));
    float below = Math.round(Math.min(height * 0.34f, size * 22));
    model =
        beside
            ? new Area(0, top, width - column, height - top)
            : new Area(0, top, width, height - top - below);
    side =
        beside
            ? new Area(width - column, top, column - size, height - top - size)
            : new Area(size, height - below, width - 2 * size, below - size);
    at = side.y() + size * 0.4f;
  }

  /** What is up in a plan. */
  String up() {
    return north.isPresent() ? "the house's own north is up" : "north is up";
  }

  /** What is said after a direction, where it is not the compass's. */
  String by() {
    return north.isPresent() ? ", by the house's own north" : "";
  }

  float size() {
    return canvas.size();
  }

  int ink() {
    return Rgb.opaque(theme.ink());
  }

  int quiet() {
    return Rgb.opaque(theme.quiet());
  }

  void title(String strong, String more) {
    float s = Math.round(size() * 1.35f);
    float x = size();
    float y = size() * 0.7f;
    canvas.word(x, y, strong, s, true, ink());
    float after = x + canvas.width(strong, s, true) + size();
    String fits = canvas.fitted(more, size(), false, Math.max(0, width - after - size()));
    canvas.word(after, y + s - size() - 1, fits, size(), false, quiet());
  }

  /** Whether so many more lines fit into the column. */
  boolean room(float lines) {
    return at + lines * size() * 1.35f <= side.bottom();
  }

  void heading(String text) {
    if (!room(2.5f)) {
      return;
    }
    at += size() * 0.5f;
    canvas.word(side.x(), at, text, size(), true, ink());
    at += size() * 1.5f;
  }

  /** Words in the column; dots where they would run out of it. */
  void words(String text, int colour) {
    paragraph(text, colour, 0);
  }

  /** As {@link #words}, so many pixels in from the left. */
  void paragraph(String text, int colour, float in) {
    List<String> lines = canvas.lines(text, size(), false, side.width() - in);
    for (int i = 0; i < lines.size(); i++) {
      if (!room(1)) {
        return;
      }
      // What does not fit is not left out without a word.
      String line =
          room(2) || i + 1 == lines.size() ? lines.get(i) : "\u2026 more in the work pack";
      canvas.word(side.x() + in, at, line, size(), false, colour);
      at += size() * 1.25f;
    }
    at += size() * 0.15f;
  }

  /** Says that a list goes on, where there was no room for so many of all. */
  void more(int count, int all) {
    if (count > 0) {
      String which = count < all ? "and " + count + " more" : count + " runs";
      words(which + "; each has a picture of its own", quiet());
    }
  }

  /** A name, and under it three short texts in columns. */
  void row(int colour, String name, String a, String b, String c) {
    if (!room(2.2f)) {
      return;
    }
    if (!name.isEmpty()) {
      canvas.word(side.x(), at, name, size(), false, quiet());
      at += size() * 1.2f;
    }
    String[] texts = {a, b, c};
    for (int i = 0; i < 3; i++) {
      String text = canvas.fitted(texts[i], size(), i == 2, side.width() / 3 - 4);
      canvas.word(side.x() + side.width() * i / 3, at, text, size(), i == 2, colour);
    }
    at += size() * 1.45f;
  }

  /** A line with a piece of a run before it. */
  void run(Cable c, String more) {
    float sample = size() * 3.6f;
    canvas.sample(
        side.x(), at + size() * 0.55f, sample, size() * 0.28f, theme.run(c.number()), c.dash());
    float x = side.x() + sample + size() * 0.6f;
    float end = canvas.width(more, size(), false);
    float most = side.right() - x - end - size() * 0.5f;
    canvas.word(x, at, canvas.fitted(c.id(), size(), false, most), size(), false, ink());
    canvas.word(side.right() - end, at, more, size(), false, quiet());
    at += size() * 1.4f;
  }

  /** A line with a mark before it, which the caller draws at the place given. */
  void sign(String text, java.util.function.BiConsumer<Float, Float> draw) {
    if (!room(1)) {
      return;
    }
    draw.accept(side.x() + size() * 1.3f, at + size() * 0.55f);
    float x = side.x() + size() * 3.2f;
    for (String line : canvas.lines(text, size(), false, side.right() - x)) {
      canvas.word(x, at, line, size(), false, quiet());
      at += size() * 1.25f;
    }
    at += size() * 0.15f;
  }

  /** The least width of a cable, in pixels: less where many lie side by side. */
  float leastPixels(Model m) {
    int n = m.cables().size();
    return canvas.scale() * (n <= 8 ? 4.2f : n <= 20 ? 3.2f : 2.3f);
  }

  String length(double metres) {
    return units.format(new Length(Math.round(metres * 1e9)));
  }

  /**
   * Where the house stands turned: the mark of real north in a part of the sheet, which is kept
   * free.
   *
   * @param at where in the house, metres
   */
  void north(Pane pane, Placer placer, Area area, Vector3fc at) {
    north.ifPresent(
        n -> {
          Area place = NorthMark.area(area, size());
          placer.keepFree(place);
          NorthMark.draw(canvas, pane, at, n, place);
        });
  }

  /** What that mark means. */
  void northWords() {
    if (north.isPresent()) {
      words("N: north by the compass or the site's grid; own: the house's own north", quiet());
    }
  }

  /** A bar of a round length, at the lower left of the model. */
  Area scaleBar(Eye eye) {
    return scaleBar(eye, model);
  }

  /** The same in a part of it. */
  Area scaleBar(Eye eye, Area model) {
    float[] rounds =
        units == UnitSystem.METRIC
            ? new float[] {0.1f, 0.2f, 0.5f, 1, 2, 5, 10}
            : new float[] {0.1524f, 0.3048f, 0.6096f, 1.524f, 3.048f, 6.096f};
    float best = rounds[0];
    for (float r : rounds) {
      if (r / eye.perPixel() <= model.width() * 0.28f) {
        best = r;
      }
    }
    float x = model.x() + size() * 1.2f;
    float y = model.bottom() - size() * 1.2f;
    float w = best / eye.perPixel();
    int half = Rgb.with(theme.ink(), 0.45);
    canvas.add(new Mark.Line(x, y, x + w / 2, y, 5 * canvas.scale(), ink()));
    canvas.add(new Mark.Line(x + w / 2, y, x + w, y, 5 * canvas.scale(), half));
    Area label = canvas.label(length(best), size(), false);
    Area at1 =
        new Area(x + w + size() * 0.3f, y - label.height() / 2, label.width(), label.height());
    canvas.plated(at1, length(best), size(), false, ink());
    return new Area(x, at1.y(), at1.right() - x, at1.height());
  }
}
