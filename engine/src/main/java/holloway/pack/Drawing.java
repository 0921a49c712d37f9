package holloway.pack;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.function.UnaryOperator;

/**
 * A drawing of the pack.
 *
 * @param file its name
 * @param title what it shows
 * @param svg a whole SVG document
 * @param onPaper the same for the PDF
 * @param narrow the same for a screen of 360 pixels; of a drawing that is scrolled there, the same
 * @param wideMm the most that it takes up on paper
 */
public record Drawing(
    String file,
    String title,
    String svg,
    String onPaper,
    String narrow,
    double wideMm,
    double highMm) {
  /** As an address that carries the drawing in it, so that its style stays its own. */
  public String inline() {
    return "data:image/svg+xml;base64,"
        + Base64.getEncoder().encodeToString(narrow.getBytes(StandardCharsets.UTF_8));
  }

  /** The same with each form of it changed alike. */
  Drawing each(UnaryOperator<String> form) {
    return new Drawing(
        file, title, form.apply(svg), form.apply(onPaper), form.apply(narrow), wideMm, highMm);
  }

  Drawing titled(String other) {
    return new Drawing(file, other, svg, onPaper, narrow, wideMm, highMm);
  }

  /** The same where less height is left on paper. */
  Drawing within(double high) {
    return new Drawing(file, title, svg, onPaper, narrow, wideMm, Math.min(highMm, high));
  }

  /** For paper, in the text of the page. */
  public String element() {
    return PaperDrawing.of(onPaper, wideMm, highMm);
  }
}
