package holloway.drawing;

import holloway.geometry.Point2;
import holloway.survey.PlacedRoom;
import holloway.survey.PlacedStair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Stairs: the flight on the level where it starts, the opening on the level it leads to. */
final class Flights {
  /** From tread to tread on the drawing, millimetres; how many there are nobody was asked. */
  private static final double TREAD = 250;

  /** Sizes of their names, the larger first, and how far these keep off the flight. */
  private static final double[] SIZES = {100, 80};

  private static final double OFF = 30;

  /**
   * A flight or its opening that has a name to be written.
   *
   * @param room whose it is on this level; none if it opens into nobody's
   */
  private record Marked(String name, Rect at, Optional<PlacedRoom> room) {}

  private final Sheet sheet;
  private final List<Marked> marked = new ArrayList<>();

  Flights(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Shapes first, so that every label knows what it must not cover. */
  void shapes() {
    sheet.svg().open("stairs");
    for (PlacedStair s : sheet.placed().stairs()) {
      if (sheet.isHere(s.room().name())) {
        flight(s);
        mark(s, s.stair().name() + ", up", Optional.of(s.room()));
      } else if (s.upper().name().equals(sheet.level().name())) {
        sheet.svg().polygon("hatch", s.stair().name(), ring(s));
        mark(s, s.stair().name() + ", down", over(s));
      }
    }
    sheet.svg().close();
  }

  /** Beside the flight, level or upright, in its own room; else across it; else nowhere. */
  void labels() {
    for (Marked m : marked) {
      boolean written = false;
      for (int i = 0; i < SIZES.length && !written; i++) {
        written = beside(m, SIZES[i], false) || beside(m, SIZES[i], true);
      }
      if (!written) {
        boolean upright = m.at.high() > m.at.wide();
        sheet.label("shaft", m.name, SIZES[0], middle(m, upright), upright);
      }
    }
  }

  private boolean beside(Marked m, double size, boolean upright) {
    Rect b = Labels.box(m.name, 0, 0, size, upright);
    double dx = (m.at.wide() + b.wide()) / 2 + OFF;
    double dy = (m.at.high() + b.high()) / 2 + OFF;
    List<Rect> places = new ArrayList<>();
    for (double along : new double[] {0, 0.25, -0.25, 0.45, -0.45}) {
      double x = mid(m.at.x0(), m.at.x1());
      double y = mid(m.at.y0(), m.at.y1());
      for (int side : new int[] {1, -1}) {
        double up = y + along * m.at.high();
        double on = x + along * m.at.wide();
        places.add(Rect.around(x + side * dx, up, b.wide(), b.high()));
        places.add(Rect.around(on, y + side * dy, b.wide(), b.high()));
      }
    }
    List<Rect> own =
        places.stream()
            .filter(r -> m.room.filter(p -> RoomNames.lies(p, r)).isPresent())
            .filter(r -> sheet.labels().covered(r) == 0)
            .toList();
    return sheet.label("shaft", m.name, size, own, upright);
  }

  private static List<Rect> middle(Marked m, boolean upright) {
    double x = mid(m.at.x0(), m.at.x1());
    double y = mid(m.at.y0(), m.at.y1());
    return List.of(Labels.box(m.name, x, y, SIZES[0], upright));
  }

  private static double mid(double a, double b) {
    return (a + b) / 2;
  }

  private void mark(PlacedStair s, String name, Optional<PlacedRoom> room) {
    Rect r = Rect.of(ring(s));
    sheet.labels().mark(r);
    marked.add(new Marked(name, r, room));
  }

  /** The room of this level that the middle of the opening lies in. */
  private Optional<PlacedRoom> over(PlacedStair s) {
    Point2 middle =
        new Point2((s.box().x0() + s.box().x1()) / 2, (s.box().y0() + s.box().y1()) / 2);
    return sheet.rooms().stream().filter(r -> r.outline().contains(middle)).findFirst();
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
