package holloway.drawing;

import holloway.request.Request;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * One level while it is drawn.
 *
 * @param type how many times as large as at 1:50 the type is: a large house is printed smaller
 * @param words puts a sentence of the legend into another language
 */
record Sheet(
    Placed placed,
    Request request,
    PlacedLevel level,
    UnitSystem system,
    Svg svg,
    Labels labels,
    double type,
    UnaryOperator<String> words) {
  /** Sizes of type, millimetres of the house; at 1:50 a fiftieth of it on paper. */
  static final double SMALL = 120;

  static final double PLAIN = 150;
  static final double NAME = 210;

  /** The width of a house whose plain type is 2.7 mm high on a page, dimensions and all. */
  private static final double PAGE = 10_000;

  /** So that type can still be read when all rooms are printed on one page. */
  static double type(Placed placed) {
    Rect all =
        Rect.of(
            placed.rooms().stream()
                .flatMap(r -> r.outline().corners().stream())
                .map(Svg::at)
                .toList());
    return Math.max(1, (all.wide() + 3600) / PAGE);
  }

  double plain() {
    return PLAIN * type;
  }

  String tape(long nm) {
    return system.format(new Length(nm));
  }

  List<PlacedRoom> rooms() {
    return placed.rooms().stream().filter(r -> r.room().level().equals(level.name())).toList();
  }

  List<Wall> walls() {
    return placed.walls().stream().filter(w -> w.level().equals(level.name())).toList();
  }

  boolean isHere(String room) {
    return placed.getRoom(room).room().level().equals(level.name());
  }

  /** A point of a wall on the sheet. */
  static double[] of(Wall w, long s, long t) {
    return Svg.at(w.world(s, t, 0).plan());
  }

  static List<double[]> strip(Wall w, long s0, long s1, long t0, long t1) {
    return List.of(of(w, s0, t0), of(w, s1, t0), of(w, s1, t1), of(w, s0, t1));
  }

  /** On the face of a wall, {@code off} millimetres out of it. */
  static double[] face(OnWall s, double off) {
    long nm = Math.round(off * 1e6);
    return of(s.wall(), s.s(), s.side() == 0 ? -nm : s.wall().thickness() + nm);
  }

  /** A small label round a point, in the type of this sheet or, where that has no room, smaller. */
  boolean label(String kind, String text, double[] at, double first, double step) {
    for (double size : new double[] {SMALL * type, SMALL}) {
      List<Rect> places = Labels.around(text, at, size, first, step * size / SMALL);
      if (label(kind, text, size, places)) {
        return true;
      }
    }
    return false;
  }

  /** Writes a label where it covers least; leaves it out rather than write over other text. */
  boolean label(String kind, String text, double size, List<Rect> places) {
    return label(kind, text, size, places, false);
  }

  /**
   * As {@link #label(String, String, double, List)}.
   *
   * @param upright the text runs upward
   */
  boolean label(String kind, String text, double size, List<Rect> places, boolean upright) {
    Optional<Rect> at = labels.settle(places);
    at.ifPresent(
        r -> svg.text(kind, text, (r.x0() + r.x1()) / 2, (r.y0() + r.y1()) / 2, size, upright));
    return at.isPresent();
  }
}
