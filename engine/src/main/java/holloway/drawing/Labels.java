package holloway.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keeps text apart: what is taken on a sheet, and the first free place among several. */
final class Labels {
  /** Width of a letter over its size, a generous mean for sans-serif type. */
  static final double LETTER = 0.6;

  private final List<Rect> texts = new ArrayList<>();
  private final List<Rect> marks = new ArrayList<>();

  static Rect box(String text, double x, double y, double size, boolean upright) {
    double wide = Math.max(1, text.codePointCount(0, text.length())) * size * LETTER;
    return upright ? Rect.around(x, y, size * 1.15, wide) : Rect.around(x, y, wide, size * 1.15);
  }

  /** Text stands here. */
  void take(Rect r) {
    texts.add(r);
  }

  /** Text had better not stand here. */
  void mark(Rect r) {
    marks.add(r);
  }

  boolean isFree(Rect r) {
    return texts.stream().allMatch(t -> t.shared(r) == 0);
  }

  /** How much of what is drawn a box would lie on, square millimetres. */
  double covered(Rect r) {
    return marks.stream().mapToDouble(m -> m.shared(r)).sum();
  }

  /** The place that covers least, among those clear of other text; the first of equals; taken. */
  Optional<Rect> settle(List<Rect> places) {
    Rect best = null;
    double least = Double.MAX_VALUE;
    for (Rect r : places) {
      if (isFree(r) && covered(r) < least) {
        best = r;
        least = covered(r);
      }
    }
    if (best != null) {
      take(best);
    }
    return Optional.ofNullable(best);
  }

  /** Lines of at most so many letters; a longer word has a line of its own. */
  static List<String> folded(String text, int letters) {
    List<String> out = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > letters) {
        out.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    out.add(line.toString());
    return out;
  }

  /** Places round a point, nearest first, in rings {@code step} apart. */
  static List<Rect> around(String text, double[] at, double size, double first, double step) {
    List<Rect> out = new ArrayList<>();
    Rect b = box(text, 0, 0, size, false);
    for (int ring = 0; ring < 5; ring++) {
      double off = first + ring * step;
      double dx = b.wide() / 2 + off;
      double dy = b.high() / 2 + off;
      double[][] moves = {
        {0, -dy},
        {0, dy},
        {dx, 0},
        {-dx, 0},
        {dx, -dy},
        {-dx, -dy},
        {dx, dy},
        {-dx, dy},
        {dx / 2, -dy},
        {-dx / 2, -dy},
        {dx / 2, dy},
        {-dx / 2, dy}
      };
      for (double[] m : moves) {
        out.add(Rect.around(at[0] + m[0], at[1] + m[1], b.wide(), b.high()));
      }
    }
    return out;
  }
}
