package holloway.drawing;

import holloway.survey.PlacedStair;
import java.util.ArrayList;
import java.util.List;

/** Stairs: the flight on the level where it starts, the opening on the level it leads to. */
final class Flights {
  /** From tread to tread on the drawing, millimetres; how many there are nobody was asked. */
  private static final double TREAD = 250;

  private final Sheet sheet;
  private final List<Rect> marked = new ArrayList<>();
  private final List<String> names = new ArrayList<>();

  Flights(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Shapes first, so that every label knows what it must not cover. */
  void shapes() {
    sheet.svg().open("stairs");
    for (PlacedStair s : sheet.placed().stairs()) {
      if (sheet.isHere(s.room().name())) {
        flight(s);
        mark(s, s.stair().name() + ", up");
      } else if (s.upper().name().equals(sheet.level().name())) {
        sheet.svg().polygon("hatch", s.stair().name(), ring(s));
        mark(s, s.stair().name() + ", down");
      }
    }
    sheet.svg().close();
  }

  void labels() {
    for (int i = 0; i < marked.size(); i++) {
      Rect r = marked.get(i);
      double[] mid = {(r.x0() + r.x1()) / 2, (r.y0() + r.y1()) / 2};
      double off = Math.min(r.wide(), r.high()) / 2 + 30;
      sheet.label("shaft", names.get(i), 100, Labels.around(names.get(i), mid, 100, off, 60));
    }
  }

  private void mark(PlacedStair s, String name) {
    Rect r = Rect.of(ring(s));
    sheet.labels().mark(r);
    marked.add(r);
    names.add(name);
  }

  private void flight(PlacedStair s) {
    Rect r = Rect.of(ring(s));
    sheet.svg().polygon("chase", s.stair().name(), ring(s));
    double long1 = s.northSouth() ? r.high() : r.wide();
    for (double d = TREAD; d < long1 - 1; d += TREAD) {
      double at = s.onward() == s.northSouth() ? long1 - d : d;
      double[] a = s.northSouth() ? p(r.x0(), r.y0() + at) : p(r.x0() + at, r.y0());
      double[] b = s.northSouth() ? p(r.x1(), r.y0() + at) : p(r.x0() + at, r.y1());
      sheet.svg().line("cross", a, b);
    }
    arrow(s, r);
  }

  /** Along the middle, from the first tread to the last, the head where it arrives. */
  private void arrow(PlacedStair s, Rect r) {
    double mx = (r.x0() + r.x1()) / 2;
    double my = (r.y0() + r.y1()) / 2;
    // North is up on the sheet: y falls there.
    boolean more = s.northSouth() ? !s.onward() : s.onward();
    double lo = s.northSouth() ? r.y0() : r.x0();
    double hi = s.northSouth() ? r.y1() : r.x1();
    double tail = more ? lo + TREAD / 2 : hi - TREAD / 2;
    double head = more ? hi - TREAD / 2 : lo + TREAD / 2;
    double back = more ? head - 120 : head + 120;
    sheet.svg().line("cross", along(s, mx, my, tail, 0), along(s, mx, my, head, 0));
    for (int side : new int[] {-60, 60}) {
      sheet.svg().line("cross", along(s, mx, my, head, 0), along(s, mx, my, back, side));
    }
  }

  private static double[] along(PlacedStair s, double mx, double my, double at, double aside) {
    return s.northSouth() ? p(mx + aside, at) : p(at, my + aside);
  }

  private static double[] p(double x, double y) {
    return new double[] {x, y};
  }

  private static List<double[]> ring(PlacedStair s) {
    double x0 = s.box().x0() / 1e6;
    double x1 = s.box().x1() / 1e6;
    double y0 = -s.box().y1() / 1e6;
    double y1 = -s.box().y0() / 1e6;
    return List.of(p(x0, y0), p(x1, y0), p(x1, y1), p(x0, y1));
  }
}
