package holloway.drawing;

import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.house.Opening;
import holloway.house.WallSpec;
import holloway.survey.BehindBoard;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Walls as filled strips, and the gaps that doors and windows leave in them. */
final class WallStrips {
  /** Where a board or a plate ends, a drawn gap reaches past it by this much, millimetres. */
  private static final long PAST = 2_000_000;

  private static final GeometryFactory JTS = new GeometryFactory();

  private final Sheet sheet;

  WallStrips(Sheet sheet) {
    this.sheet = sheet;
  }

  /** All that walls and rooms enclose, cladding carried round the corners, as one line. */
  void outline() {
    List<Geometry> parts = new ArrayList<>();
    for (Wall w : sheet.walls()) {
      long more = w.isOuter() ? Math.max(w.core().lo(), w.thickness() - w.core().hi()) : 0;
      parts.add(ring(Sheet.strip(w, -more, w.length() + more, 0, w.thickness())));
    }
    for (PlacedRoom r : sheet.rooms()) {
      parts.add(ring(r.outline().corners().stream().map(Svg::at).toList()));
    }
    Geometry all = Overlay.union(parts);
    for (int i = 0; i < all.getNumGeometries(); i++) {
      List<double[]> points = new ArrayList<>();
      for (Coordinate c : ((Polygon) all.getGeometryN(i)).getExteriorRing().getCoordinates()) {
        points.add(new double[] {c.x, c.y});
      }
      sheet.svg().polygon("whole-house", "", points);
    }
  }

  private static Polygon ring(List<double[]> points) {
    List<Coordinate> ring = new ArrayList<>();
    points.forEach(p -> ring.add(new Coordinate(p[0], p[1])));
    ring.add(ring.get(0).copy());
    return JTS.createPolygon(ring.toArray(Coordinate[]::new));
  }

  void draw() {
    sheet.svg().open("walls");
    for (Wall w : sheet.walls()) {
      sheet.svg().polygon("wall", w.id(), Sheet.strip(w, 0, w.length(), 0, w.thickness()));
      sheet.labels().mark(Rect.of(Sheet.strip(w, 0, w.length(), 0, w.thickness())));
    }
    for (Wall w : sheet.walls()) {
      if (w.isOpen()) {
        continue; // only a header, over the cut of the plan
      }
      List<double[]> core = Sheet.strip(w, 0, w.length(), w.core().lo(), w.core().hi());
      sheet.svg().polygon(core(w), w.id(), core);
      studs(w);
      for (int side = 0; side < 2; side++) {
        battens(w, side);
      }
    }
    sheet.svg().close();
  }

  private static String core(Wall w) {
    String kind = w.kind() == WallSpec.Kind.FRAMED ? "framed" : "masonry";
    boolean taken = w.isFramed() && w.studs().isAssumed();
    return "core " + kind + (taken ? " assumed" : "");
  }

  /** Only a layout that somebody found is drawn; a guessed one would look like knowledge. */
  private static boolean isKnown(Wall w) {
    return w.isFramed() && !w.studOrigin().isAssumed() && w.every().value().nm() > 0;
  }

  private void studs(Wall w) {
    if (!isKnown(w)) {
      return;
    }
    long every = w.every().value().nm();
    for (long s = Math.floorMod(w.studOrigin().value(), every); s < w.length(); s += every) {
      sheet.svg().line("stud", Sheet.of(w, s, w.core().lo()), Sheet.of(w, s, w.core().hi()));
    }
  }

  /**
   * A service layer before the wall: its lining is a white strip like any, what is behind it not.
   */
  private void battens(Wall w, int side) {
    BehindBoard.between(w, side)
        .filter(t -> w.isFramed())
        .ifPresent(
            t ->
                w.faces().stream()
                    .filter(f -> f.side() == side)
                    .forEach(
                        f ->
                            sheet
                                .svg()
                                .polygon(
                                    "battens",
                                    w.id(),
                                    Sheet.strip(w, f.s().lo(), f.s().hi(), t.lo(), t.hi()))));
  }

  /** Gaps go over every wall, so that no strip is drawn over one. */
  void gaps(List<Tags.Tag> tags) {
    sheet.svg().open("openings");
    tags.forEach(this::opening);
    sheet.svg().close();
  }

  void labels(List<Tags.Tag> tags) {
    tags.forEach(this::label);
  }

  /** The box around all walls, or around the rooms where there is none. */
  Rect extent() {
    List<double[]> corners = new ArrayList<>();
    for (Wall w : sheet.walls()) {
      corners.addAll(Sheet.strip(w, 0, w.length(), 0, w.thickness()));
    }
    for (PlacedRoom r : sheet.rooms()) {
      r.outline().corners().forEach(p -> corners.add(Svg.at(p)));
    }
    return Rect.of(corners);
  }

  /** The clear width as stated, in the middle of its rough opening. */
  static Interval clear(Wall.WallOpening o) {
    long half = o.opening().width().value().nm() / 2;
    return new Interval(o.s().mid() - half, o.s().mid() + half);
  }

  private void opening(Tags.Tag tag) {
    Wall w = tag.wall();
    Interval s = clear(tag.opening());
    long t1 = w.thickness();
    Svg svg = sheet.svg();
    String kind = "gap " + tag.kind();
    svg.polygon(kind, tag.name(), Sheet.strip(w, s.lo(), s.hi(), -PAST, t1 + PAST));
    svg.line("jamb", Sheet.of(w, s.lo(), 0), Sheet.of(w, s.lo(), t1));
    svg.line("jamb", Sheet.of(w, s.hi(), 0), Sheet.of(w, s.hi(), t1));
    if (tag.opening().opening().kind() == Opening.Kind.WINDOW) {
      for (long t : new long[] {0, t1 / 2, t1}) {
        svg.line("pane", Sheet.of(w, s.lo(), t), Sheet.of(w, s.hi(), t));
      }
    } else if (tag.opening().opening().kind() == Opening.Kind.DOOR) {
      svg.line("leaf", Sheet.of(w, s.lo(), t1 / 2), Sheet.of(w, s.hi(), t1 / 2));
    } else {
      svg.line("head", Sheet.of(w, s.lo(), 0), Sheet.of(w, s.hi(), 0));
      svg.line("head", Sheet.of(w, s.lo(), t1), Sheet.of(w, s.hi(), t1));
    }
  }

  private void label(Tags.Tag tag) {
    Wall w = tag.wall();
    Interval s = clear(tag.opening());
    Point2 mid = w.world(s.mid(), w.thickness() / 2, 0).plan();
    String text = tag.name() + " " + sheet.tape(tag.opening().opening().width().value().nm());
    double off = w.thickness() / 2e6 + 30;
    sheet.label("tag", text, Sheet.SMALL, Labels.around(text, Svg.at(mid), Sheet.SMALL, off, 60));
  }
}
