package holloway.drawing;

import holloway.geometry.Point2;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Rooms with their name and clear size inside. */
final class RoomNames {
  private final Sheet sheet;

  RoomNames(Sheet sheet) {
    this.sheet = sheet;
  }

  void floors() {
    sheet.svg().open("rooms");
    for (PlacedRoom r : sheet.rooms()) {
      sheet.svg().polygon("room", r.name(), r.outline().corners().stream().map(Svg::at).toList());
    }
    sheet.svg().close();
  }

  void names() {
    sheet.svg().open("names");
    sheet.rooms().forEach(this::name);
    sheet.svg().close();
  }

  private void name(PlacedRoom r) {
    String wide = sheet.tape(r.outline().xRange().length());
    boolean square = r.outline().corners().size() == 4;
    String deep = sheet.tape(r.outline().yRange().length()) + (square ? "" : " over all");
    List<List<String>> forms =
        List.of(
            List.of(r.name(), wide + " x " + deep),
            List.of(r.name(), wide + " x", deep),
            broken(r.name(), wide, deep));
    if (!name(r, forms, sizes(), true)) {
      name(r, forms, new double[] {Sheet.SMALL, 100, 80, 60}, false);
    }
  }

  /** The largest size that fits, clear of all marks if that is asked. */
  private boolean name(PlacedRoom r, List<List<String>> forms, double[] sizes, boolean clear) {
    for (double size : sizes) {
      for (List<String> lines : forms) {
        for (boolean upright : new boolean[] {false, true}) {
          Optional<Rect> at = place(r, lines, size, upright, clear);
          if (at.isPresent()) {
            write(lines, at.get(), size, upright);
            return true;
          }
        }
      }
    }
    return false;
  }

  private static List<String> broken(String name, String wide, String deep) {
    List<String> lines = new ArrayList<>(List.of(name.split(" ")));
    lines.add(wide + " x");
    lines.add(deep);
    return lines;
  }

  private Optional<Rect> place(
      PlacedRoom r, List<String> lines, double size, boolean upright, boolean clear) {
    int letters = lines.stream().mapToInt(l -> l.codePointCount(0, l.length())).max().orElse(1);
    double along = letters * size * Labels.LETTER;
    double across = lines.size() * size * 1.25;
    double wide = upright ? across : along;
    double high = upright ? along : across;
    List<Rect> inside = new ArrayList<>();
    for (double[] p : spots(r)) {
      Rect box = Rect.around(p[0], p[1], wide, high);
      if (lies(r, box.grown(50)) && !(clear && sheet.labels().covered(box) > 0)) {
        inside.add(box);
      }
    }
    return sheet.labels().settle(inside);
  }

  /** The middle of the room first, then a grid over it, nearest to the middle first. */
  private static List<double[]> spots(PlacedRoom r) {
    Rect box = Rect.of(r.outline().corners().stream().map(Svg::at).toList());
    double mx = (box.x0() + box.x1()) / 2;
    double my = (box.y0() + box.y1()) / 2;
    List<double[]> out = new ArrayList<>();
    for (int i = -8; i <= 8; i++) {
      for (int j = -8; j <= 8; j++) {
        out.add(new double[] {mx + i * box.wide() / 18, my + j * box.high() / 18});
      }
    }
    out.sort(Comparator.comparingDouble(p -> Math.hypot(p[0] - mx, p[1] - my)));
    return out;
  }

  static boolean touches(PlacedRoom r, Rect b) {
    return Rect.of(r.outline().corners().stream().map(Svg::at).toList()).shared(b) > 0;
  }

  /** Does a box lie in a room, by its corners and the middles of its sides? */
  static boolean lies(PlacedRoom r, Rect b) {
    double[][] around = {
      {b.x0(), b.y0()},
      {b.x1(), b.y0()},
      {b.x0(), b.y1()},
      {b.x1(), b.y1()},
      {(b.x0() + b.x1()) / 2, b.y0()},
      {(b.x0() + b.x1()) / 2, b.y1()},
      {b.x0(), (b.y0() + b.y1()) / 2},
      {b.x1(), (b.y0() + b.y1()) / 2}
    };
    for (double[] p : around) {
      if (!r.outline().contains(new Point2(Math.round(p[0] * 1e6), Math.round(-p[1] * 1e6)))) {
        return false;
      }
    }
    return true;
  }

  private void write(List<String> lines, Rect at, double size, boolean upright) {
    double step = size * 1.25;
    double x = (at.x0() + at.x1()) / 2;
    double y = (at.y0() + at.y1()) / 2;
    for (int i = 0; i < lines.size(); i++) {
      double off = (i - (lines.size() - 1) / 2.0) * step;
      boolean digits = lines.get(i).matches("[0-9].*");
      String kind = digits && i > 0 ? "size" : "name";
      sheet
          .svg()
          .text(kind, lines.get(i), upright ? x + off : x, upright ? y : y + off, size, upright);
    }
  }

  /** Largest first. */
  private double[] sizes() {
    double t = sheet.type();
    return new double[] {Sheet.NAME * t, 180 * t, Sheet.NAME, 180, Sheet.PLAIN, Sheet.SMALL, 100};
  }
}
