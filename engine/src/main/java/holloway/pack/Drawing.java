package holloway.pack;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * A drawing of the pack.
 *
 * @param file its name
 * @param title what it shows
 * @param svg a whole SVG document
 */
public record Drawing(String file, String title, String svg) {
  /** As an address that carries the drawing in it, so that its style stays its own. */
  public String inline() {
    return "data:image/svg+xml;base64,"
        + Base64.getEncoder().encodeToString(svg.getBytes(StandardCharsets.UTF_8));
  }

  /** Without what may stand only at the head of a file. */
  public String element() {
    return svg.substring(svg.indexOf("<svg"));
  }
}
