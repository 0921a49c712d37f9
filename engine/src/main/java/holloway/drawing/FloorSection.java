package holloway.drawing;

import holloway.schedule.FloorCrossing;
import holloway.schedule.HoleView;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * An upright cut through a floor where cable passes it, to scale: what is solid is hatched or grey,
 * what is bored has a heavy outline, the cable is a thick line. What lies above and below is named.
 */
public final class FloorSection {
  private static final double TYPE = 46;

  private static final String STYLE =
      """
      polygon{stroke-width:4}.cut{fill:#d0d0d0}.bored{fill:#fff;stroke-width:9}
      .cable{stroke-width:16}.halo{stroke:#fff;stroke-width:30}
      .floor{stroke-width:4;stroke-dasharray:24 14}.bar{stroke-width:6}.frame{stroke-width:4}
      .plate{fill:#fff;stroke:none}
      """;

  private FloorSection() {}

  /**
   * @param title said of the whole
   * @param above what is over the floor; {@code below} what is under it
   * @param words puts directions and lengths into the language of the page
   */
  public static String of(
      FloorCrossing c,
      String title,
      String above,
      String below,
      UnitSystem system,
      UnaryOperator<String> words) {
    Svg svg = new Svg();
    Rect frame = new Rect(-450, -450, 450, 550);
    svg.open("section");
    for (boolean bored : new boolean[] {false, true}) {
      for (HoleView.Shape s : c.solids()) {
        if (s.bored() == bored) {
          svg.polygon(
              bored ? "bored" : "cut",
              s.what(),
              s.corners().stream().map(FloorSection::at).toList());
        }
      }
    }
    svg.line("floor", new double[] {-450, 0}, new double[] {450, 0});
    cable(svg, c.cable());
    svg.rect("frame", "", frame);
    svg.close();
    plate(svg, above, -360);
    plate(svg, below, 490);
    if (!c.hole().isEmpty()) {
      mark(svg, c.hole());
    }
    bar(svg, system, words, c);
    return Paper.of(svg, title, 30, STYLE);
  }

  private static double[] at(double[] p) {
    return new double[] {p[0], -p[1]};
  }

  private static void cable(Svg svg, List<double[]> line) {
    for (String kind : List.of("halo", "cable")) {
      for (int i = 1; i < line.size(); i++) {
        svg.line(kind, at(line.get(i - 1)), at(line.get(i)));
      }
    }
  }

  /** What is above or below, folded into the frame at its left. */
  private static void plate(Svg svg, String text, double y) {
    List<String> lines = Labels.folded(text, (int) (860 / TYPE / Labels.LETTER));
    double top = y - (y > 0 ? (lines.size() - 1) * 1.2 * TYPE : 0);
    for (String l : lines) {
      Rect box = Labels.box(l, 0, 0, TYPE, false);
      svg.rect("plate", "", new Rect(-440, top - TYPE * 0.6, -420 + box.wide(), top + TYPE * 0.6));
      svg.text("left", l, -430, top, TYPE, false);
      top += 1.2 * TYPE;
    }
  }

  private static void mark(Svg svg, String label) {
    Rect box = Rect.around(130, 50, label.length() * TYPE * 0.8 + 20, TYPE * 1.3);
    svg.rect("plate", "", box);
    svg.text("strong", label, 130, 50, TYPE * 1.1, false);
  }

  private static void bar(
      Svg svg, UnitSystem system, UnaryOperator<String> words, FloorCrossing c) {
    double wide = system == UnitSystem.FT_IN ? 304.8 : 200;
    double y = 615;
    double[] a = {450 - wide, y};
    double[] b = {450, y};
    svg.line("bar", a, b);
    svg.line("bar", new double[] {a[0], y - 12}, new double[] {a[0], y + 12});
    svg.line("bar", new double[] {b[0], y - 12}, new double[] {b[0], y + 12});
    String length = words.apply(system.format(Length.mm(wide)));
    double room = Labels.box(length, 0, 0, TYPE, false).wide();
    svg.text("strong", length, 450 - wide - 20 - room / 2, y, TYPE, false);
    svg.text("left", words.apply("→ " + c.right()), -450, y, TYPE, false);
  }
}
