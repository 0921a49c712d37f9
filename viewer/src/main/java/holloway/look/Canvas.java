package holloway.look;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Draws the flat part of a picture: words on plates, pins, dimension lines, arrows. */
public final class Canvas {
  /** Height of a line of usual type at scale 1, in pixels. */
  public static final float TYPE = 19;

  private final Theme theme;
  private final Measure measure;
  private final float scale;
  private final UnaryOperator<String> words;
  private final List<Mark> marks = new ArrayList<>();

  public Canvas(Theme theme, Measure measure, float scale) {
    this(theme, measure, scale, UnaryOperator.identity());
  }

  /**
   * @param words puts each text into the language of the picture before it is measured and drawn; a
   *     piece of one that is broken into lines is given to it again
   */
  public Canvas(Theme theme, Measure measure, float scale, UnaryOperator<String> words) {
    this.theme = theme;
    this.measure = measure;
    this.scale = scale;
    this.words = words;
  }

  public Theme theme() {
    return theme;
  }

  public float scale() {
    return scale;
  }

  /** Usual type. */
  public float size() {
    return Math.round(TYPE * scale);
  }

  public float width(String text, float size, boolean bold) {
    return measure.width(words.apply(text), size, bold);
  }

  public void add(Mark m) {
    marks.add(m);
  }

  public List<Mark> marks() {
    return List.copyOf(marks);
  }

  /** Words whose line of type begins at the upper left corner of where they stand. */
  public void word(float x, float y, String text, float size, boolean bold, int colour) {
    String said = words.apply(text);
    marks.add(new Mark.Word(Math.round(x), Math.round(y + size * 0.80f), said, size, bold, colour));
  }

  /** Words in the middle of a place. */
  public void centred(float x, float y, String text, float size, boolean bold, int colour) {
    word(x - width(text, size, bold) / 2, y - size / 2, text, size, bold, colour);
  }

  /** Size that a label with a plate takes. */
  public Area label(String text, float size, boolean bold) {
    return new Area(0, 0, width(text, size, bold) + 0.7f * size, size * 1.25f);
  }

  /** Words on a plate that is readable over anything. */
  public void plated(Area at, String text, float size, boolean bold, int colour) {
    marks.add(
        new Mark.Slab(
            at.x(), at.y(), at.width(), at.height(), size * 0.3f, Rgb.with(theme.plate(), 0.86)));
    centred(at.midX(), at.midY(), text, size, bold, colour);
  }

  /** Radius of a hole's ring. */
  public float pinRadius() {
    return 6.5f * scale;
  }

  /** A hole: a ring with a dark rim inside and out, so that it stands out on every ground. */
  public void pin(float x, float y, int colour) {
    float r = pinRadius();
    int rim = Rgb.with(theme.plate(), 0.9);
    marks.add(new Mark.Disc(x, y, r + 1.6f * scale, rim));
    marks.add(new Mark.Ring(x, y, r, 2.4f * scale, Rgb.opaque(colour)));
    marks.add(new Mark.Disc(x, y, 1.5f * scale, Rgb.opaque(colour)));
  }

  /** A line from a mark to its label where that is not close by. */
  public void leader(float x, float y, Area label, int colour) {
    float tx = Math.max(label.x(), Math.min(x, label.right()));
    float ty = Math.max(label.y(), Math.min(y, label.bottom()));
    float far = (float) Math.hypot(tx - x, ty - y);
    if (far > pinRadius() + 5 * scale) {
      float r = pinRadius() / far;
      marks.add(
          new Mark.Line(
              x + (tx - x) * r, y + (ty - y) * r, tx, ty, 1.2f * scale, Rgb.with(colour, 0.8)));
    }
  }

  /** A line with an arrow's head at both ends, as a tape is held. */
  public void dimension(float x0, float y0, float x1, float y1, int colour) {
    float length = (float) Math.hypot(x1 - x0, y1 - y0);
    float w = 1.6f * scale;
    marks.add(new Mark.Line(x0, y0, x1, y1, w + 2.4f * scale, Rgb.with(theme.plate(), 0.75)));
    marks.add(new Mark.Line(x0, y0, x1, y1, w, Rgb.opaque(colour)));
    if (length > 1) {
      head(x0, y0, (x0 - x1) / length, (y0 - y1) / length, length, colour);
      head(x1, y1, (x1 - x0) / length, (y1 - y0) / length, length, colour);
    }
  }

  private void head(float x, float y, float ux, float uy, float length, int colour) {
    float long1 = Math.min(9 * scale, length / 2);
    float half = long1 * 0.38f;
    float bx = x - ux * long1;
    float by = y - uy * long1;
    marks.add(
        new Mark.Wedge(
            x,
            y,
            bx - uy * half,
            by + ux * half,
            bx + uy * half,
            by - ux * half,
            Rgb.opaque(colour)));
  }

  /** A piece of a run as the model shows it: its colour and its pattern, lying flat. */
  public void sample(float x, float y, float length, float width, int colour, Dash dash) {
    int gap = Rgb.opaque(Rgb.mix(colour, theme.additive() ? 0x0B0E14 : 0xFFFFFF, 0.78));
    int rim = Rgb.opaque(Theme.rim(colour));
    marks.add(new Mark.Line(x - 1, y, x + length + 1, y, width + 2, rim));
    float[] parts = dash.parts();
    // The whole pattern, however short the piece: two of one colour are told apart by it alone.
    float unit = Math.min(width, length / dash.period());
    float at = 0;
    for (int i = 0; at < length; i = (i + 1) % 4) {
      float end = Math.min(length, at + parts[i] * unit);
      if (end > at) {
        int c = i % 2 == 0 ? Rgb.opaque(colour) : gap;
        marks.add(new Mark.Line(x + at, y, x + end, y, width, c));
      }
      at = end;
    }
  }

  /** Words cut off so that they fit, with dots at the end. */
  public String fitted(String english, float size, boolean bold, float most) {
    String text = words.apply(english);
    if (width(text, size, bold) <= most) {
      return text;
    }
    int end = text.length();
    while (end > 1 && width(text.substring(0, end) + "\u2026", size, bold) > most) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + "\u2026";
  }

  /** Words broken into lines that fit; a single word that does not is cut off. */
  public List<String> lines(String text, float size, boolean bold, float most) {
    List<String> out = new ArrayList<>();
    String line = "";
    for (String word : words.apply(text.strip()).split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, size, bold) > most) {
        out.add(line);
        longer = word;
      }
      line = fitted(longer, size, bold, most);
    }
    if (!line.isEmpty()) {
      out.add(line);
    }
    return out;
  }
}
