package holloway.drawing;

/** Wraps shapes as one SVG file: black on white, a title, a size in millimetres of the house. */
final class Paper {
  private static final String STYLE =
      """
      text{font-family:sans-serif;text-anchor:middle;fill:#000}
      .left{text-anchor:start}.strong{font-weight:bold}
      polygon,line,circle,polyline{stroke:#000;stroke-width:10;fill:none}
      .leg{stroke-width:26}.level{stroke-width:8;stroke-dasharray:120 60}
      .under{stroke:#fff;stroke-width:60}.bore{fill:#fff;stroke-width:22}.end{fill:#000}
      .frame{stroke-width:16}.port{fill:#fff}.spare{stroke-dasharray:6 4}
      """;

  private Paper() {}

  /**
   * @param margin round everything drawn, millimetres of the drawing
   * @param style rules after the common ones
   */
  static String of(Svg svg, String title, double margin, String style) {
    Rect r = svg.reach().grown(margin);
    String size = Svg.number(r.wide()) + " " + Svg.number(r.high());
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="%s %s %s" role="img">
        <title>%s</title>
        <style>
        %s%s</style>
        <path d="M%s %sh%sv%sh-%sZ" fill="#fff"/>
        %s</svg>
        """
        .formatted(
            Svg.number(r.x0()),
            Svg.number(r.y0()),
            size,
            Svg.escaped(title),
            STYLE,
            style,
            Svg.number(r.x0()),
            Svg.number(r.y0()),
            Svg.number(r.wide()),
            Svg.number(r.high()),
            Svg.number(r.wide()),
            svg.body());
  }
}
