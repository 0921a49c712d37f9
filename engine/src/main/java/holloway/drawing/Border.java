package holloway.drawing;

import holloway.geometry.Turn;
import holloway.survey.PlacedRoom;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Title, north arrows, scale bar and legend, under the plan. */
final class Border {
  private static final double LINE = 260;
  private final Sheet sheet;
  private final Map<String, String> letters;

  Border(Sheet sheet, Map<String, String> letters) {
    this.sheet = sheet;
    this.letters = letters;
  }

  void draw(Rect drawn) {
    Svg svg = sheet.svg();
    svg.open("border");
    double right = Math.max(drawn.x1(), drawn.x0() + 9000);
    double row = LINE * sheet.type();
    double y = drawn.y1() + 240 + row;
    left("title", title(), drawn.x0(), y, row);
    left("note", sheet.words().apply(area()), drawn.x0(), y + 1.3 * row, sheet.plain());
    north("north", 0, right - 350, y + 250);
    sheet.svg().text("north-word", "N", right - 350, y - 270, 200, false);
    if (!turned().isNone()) {
      north("north site", turned().degrees(), right - 850, y + 100);
    }
    bar(right - 4000, y + 250);
    double at = y + 3.2 * row;
    for (String line : wrapped(said(), (right - drawn.x0()) / (sheet.plain() * Labels.LETTER))) {
      left("note", line, drawn.x0(), at, sheet.plain());
      at += row;
    }
    svg.close();
  }

  private String title() {
    return sheet.placed().house().name() + ", level " + sheet.level().name();
  }

  private String area() {
    double m2 = 0;
    for (PlacedRoom r : sheet.rooms()) {
      m2 += Math.abs(r.outline().signedAreaMm2()) / 1e6;
    }
    return sheet.system() == UnitSystem.METRIC
        ? String.format(Locale.ROOT, "rooms %.1f m2", m2)
        : String.format(Locale.ROOT, "rooms %.0f sq ft", m2 / 0.09290304);
  }

  private List<String> notes() {
    List<String> out = new ArrayList<>();
    out.add("1:50 if printed at its own size.");
    out.add("Sizes are clear, from finished face to finished face.");
    out.add("A dashed outline of studs or a chase is assumed, not seen;");
    out.add("white ticks in a wall are studs that were found.");
    out.add("Pale grey beside walls: linings, cladding, or space that nothing accounts for.");
    if (sheet.walls().stream().anyMatch(w -> !w.traits().battens().isEmpty())) {
      out.add("White with short dashes before a wall: battens behind its board.");
    }
    boolean porch =
        sheet.placed().house().porches().stream().anyMatch(p -> sheet.isHere(p.face().room()));
    if (porch) {
      out.add("Dashed outside the house: the roof over a porch.");
    }
    out.add(
        "Black triangle or ring: outlet; open one: another place it may go. Black box: cabinet.");
    out.add("Hatched: masonry. D door, W window, O opening, with the clear width.");
    turnedNote().ifPresent(out::add);
    letters.forEach((k, v) -> out.add(k + " " + v + (k.equals(last()) ? "." : ",")));
    return out;
  }

  private Optional<String> turnedNote() {
    if (turned().isNone()) {
      return Optional.empty();
    }
    String way = turned().degrees() > 0 ? "counter-clockwise" : "clockwise";
    String figure = Svg.number(Math.abs(turned().degrees()));
    return Optional.of(
        "The house stands turned "
            + figure
            + " degrees "
            + way
            + ": N and north mean its own north, the open arrow that of its site.");
  }

  private List<String> said() {
    return notes().stream().map(sheet.words()).toList();
  }

  private String last() {
    return letters.keySet().stream().reduce((a, b) -> b).orElse("");
  }

  private static List<String> wrapped(List<String> pieces, double letters) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : String.join(" ", pieces).split(" ")) {
      if (line.length() > 0 && line.length() + 1 + word.length() > letters) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private void left(String kind, String text, double x, double y, double size) {
    sheet.svg().text("left " + kind, text, x, y, size, false);
  }

  private Turn turned() {
    return sheet.placed().house().turned();
  }

  /** An arrow that points so many degrees clockwise of up, about its middle. */
  private void north(String kind, double degrees, double x, double y) {
    double c = Math.cos(Math.toRadians(degrees));
    double s = Math.sin(Math.toRadians(degrees));
    List<double[]> arrow = new ArrayList<>();
    for (double[] p : new double[][] {{0, -250}, {130, 250}, {0, 150}, {-130, 250}}) {
      arrow.add(new double[] {x + c * p[0] - s * p[1], y - 150 + s * p[0] + c * p[1]});
    }
    sheet.svg().polygon(kind, kind, arrow);
  }

  private void bar(double x, double y) {
    boolean metric = sheet.system() == UnitSystem.METRIC;
    double unit = metric ? 1000 : Length.feet(3).nm() / 1e6;
    for (int i = 0; i < 3; i++) {
      Rect part = new Rect(x + i * unit, y, x + (i + 1) * unit, y + 80);
      sheet.svg().rect(i % 2 == 0 ? "bar dark" : "bar", "", part);
    }
    for (int i = 0; i <= 3; i++) {
      String text = metric ? i + " m" : 3 * i + " ft";
      sheet
          .svg()
          .text(
              "bar-word",
              text,
              x + i * unit,
              y - 110 * sheet.type(),
              Sheet.SMALL * sheet.type(),
              false);
    }
  }
}
