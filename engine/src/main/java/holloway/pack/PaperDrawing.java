package holloway.pack;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A drawing on paper: its shapes as SVG, and its text over them as text of the page, so that it can
 * be selected and searched and is set in the page's own type.
 */
final class PaperDrawing {
  private static final Pattern BOX = Pattern.compile("viewBox=\"(\\S+) (\\S+) (\\S+) (\\S+)\"");
  private static final Pattern SIZE = Pattern.compile("<svg ([^>]*)>");
  private static final Pattern TEXT =
      Pattern.compile(
          "<text class=\"([^\"]*)\" x=\"(\\S+)\" y=\"(\\S+)\" dy=\"0.35em\""
              + " font-size=\"(\\S+)\"( transform=\"rotate[^\"]*\")?>([^<]*)</text>\n");

  /** From the top of a line as high as its type to a point a third of the type above the foot. */
  private static final double RISE = 0.5;

  private final String svg;
  private final double x0;
  private final double y0;
  private final double wide;
  private final double high;
  private final double scale;

  /**
   * @param svg as {@code drawing} writes it
   * @param wideMm the most it may take up on the sheet
   */
  private PaperDrawing(String svg, double wideMm, double highMm) {
    this.svg = svg;
    Matcher m = BOX.matcher(svg);
    if (!m.find()) {
      throw new IllegalArgumentException("a drawing without a view box");
    }
    x0 = Double.parseDouble(m.group(1));
    y0 = Double.parseDouble(m.group(2));
    wide = Double.parseDouble(m.group(3));
    high = Double.parseDouble(m.group(4));
    scale = Math.min(wideMm / wide, highMm / high);
  }

  /** As an element of the page, no larger than the box given. */
  static String of(String svg, double wideMm, double highMm) {
    return new PaperDrawing(svg, wideMm, highMm).element();
  }

  private String element() {
    String size = "width:%smm;height:%smm".formatted(mm(wide * scale), mm(high * scale));
    String shapes = TEXT.matcher(svg.substring(svg.indexOf("<svg"))).replaceAll("");
    StringBuilder out = new StringBuilder("<div class=\"drawing\" style=\"" + size + "\">");
    out.append(SIZE.matcher(shapes).replaceFirst("<svg $1 style=\"" + size + "\">"));
    Matcher m = TEXT.matcher(svg);
    while (m.find()) {
      out.append(span(m));
    }
    return out.append("</div>").toString();
  }

  private String span(Matcher m) {
    double x = (Double.parseDouble(m.group(2)) - x0) * scale;
    double y = (Double.parseDouble(m.group(3)) - y0) * scale;
    double size = Double.parseDouble(m.group(4)) * scale;
    boolean left = m.group(1).startsWith("left");
    // A line of this width holds any text of the drawing; it is centred in it or begins at its
    // left.
    double line = 400;
    String turn = m.group(5) == null ? "" : ";transform:rotate(-90deg)";
    return "<span class=\"%s\" style=\"left:%smm;top:%smm;width:%smm;height:%smm;font-size:%smm%s\">%s</span>"
        .formatted(
            m.group(1),
            mm(left ? x : x - line / 2),
            mm(y - RISE * size),
            mm(line),
            mm(size),
            mm(size),
            turn,
            m.group(6));
  }

  private static String mm(double v) {
    return String.format(Locale.ROOT, "%.2f", v);
  }
}
