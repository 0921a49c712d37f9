package holloway.drawing;

import holloway.geometry.Point2;
import java.util.List;
import java.util.Locale;

/** Writes shapes and text as SVG, and remembers how far they reach. Millimetres of the house. */
final class Svg {
  private final StringBuilder out = new StringBuilder();
  private Rect reach = null;

  /** A point of the survey on the sheet. */
  static double[] at(Point2 p) {
    return new double[] {p.x() / 1e6, -p.y() / 1e6};
  }

  static String escaped(String text) {
    StringBuilder s = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> s.append("&amp;");
                case '<' -> s.append("&lt;");
                case '>' -> s.append("&gt;");
                case '"' -> s.append("&quot;");
                default -> s.appendCodePoint(c < ' ' ? ' ' : c);
              }
            });
    return s.toString();
  }

  /** To a tenth of a millimetre, without a trailing zero. */
  static String number(double mm) {
    String s = String.format(Locale.ROOT, "%.1f", mm);
    s = s.endsWith(".0") ? s.substring(0, s.length() - 2) : s;
    return s.equals("-0") ? "0" : s;
  }

  Rect reach() {
    return reach;
  }

  String body() {
    return out.toString();
  }

  void reaches(Rect r) {
    reach = reach == null ? r : reach.with(r);
  }

  void open(String kind) {
    out.append("<g class=\"").append(kind).append("\">\n");
  }

  void close() {
    out.append("</g>\n");
  }

  /**
   * @param about what it shows, kept as {@code data-of}; empty for none
   */
  void polygon(String kind, String about, List<double[]> points) {
    out.append("<polygon").append(attributes(kind, about)).append(" points=\"");
    for (int i = 0; i < points.size(); i++) {
      out.append(i == 0 ? "" : " ");
      out.append(number(points.get(i)[0])).append(',').append(number(points.get(i)[1]));
    }
    out.append("\"/>\n");
    reaches(Rect.of(points));
  }

  void rect(String kind, String about, Rect r) {
    polygon(
        kind,
        about,
        List.of(
            new double[] {r.x0(), r.y0()},
            new double[] {r.x1(), r.y0()},
            new double[] {r.x1(), r.y1()},
            new double[] {r.x0(), r.y1()}));
  }

  void line(String kind, double[] a, double[] b) {
    out.append("<line")
        .append(attributes(kind, ""))
        .append(
            " x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"/>\n"
                .formatted(number(a[0]), number(a[1]), number(b[0]), number(b[1])));
    reaches(Rect.of(List.of(a, b)));
  }

  void circle(String kind, String about, double[] at, double radius) {
    out.append("<circle")
        .append(attributes(kind, about))
        .append(
            " cx=\"%s\" cy=\"%s\" r=\"%s\"/>\n"
                .formatted(number(at[0]), number(at[1]), number(radius)));
    reaches(Rect.around(at[0], at[1], 2 * radius, 2 * radius));
  }

  /**
   * One line of text, centred on a point or, of a kind that begins with {@code left}, to the right
   * of it; {@code upright} reads from below to above.
   */
  void text(String kind, String text, double x, double y, double size, boolean upright) {
    String turn = upright ? " transform=\"rotate(-90 %s %s)\"".formatted(number(x), number(y)) : "";
    // A third of the size puts the middle of the letters on the point in every viewer.
    out.append(
        "<text class=\"%s\" x=\"%s\" y=\"%s\" dy=\"0.35em\" font-size=\"%s\"%s>%s</text>\n"
            .formatted(kind, number(x), number(y), number(size), turn, escaped(text)));
    Rect box = Labels.box(text, x, y, size, upright);
    boolean left = kind.startsWith("left");
    reaches(left ? new Rect(x, box.y0(), x + box.wide(), box.y1()) : box);
  }

  private static String attributes(String kind, String about) {
    return " class=\""
        + kind
        + "\""
        + (about.isEmpty() ? "" : " data-of=\"" + escaped(about) + "\"");
  }
}
