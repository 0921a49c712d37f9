package holloway.drawing;

import holloway.framing.Attic;
import holloway.framing.Framing;
import holloway.framing.PlacedDormer;
import holloway.geometry.Point2;
import holloway.house.Along;
import holloway.house.Chase;
import holloway.house.Fact;
import holloway.house.FloorSpec;
import holloway.house.Obstacle;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.units.Length;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Chases, obstacles, and hatches in ceilings and floors. */
final class Shafts {
  private final Sheet sheet;
  private final Map<Rect, String> named = new LinkedHashMap<>();

  Shafts(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Shapes first, so that every label knows what it must not cover. */
  void shapes() {
    sheet.svg().open("shafts");
    sheet.placed().house().chases().stream().filter(this::passes).forEach(this::chase);
    sheet.placed().house().obstacles().forEach(this::obstacle);
    sheet.placed().house().roofs().forEach(r -> r.hatches().forEach(this::hatch));
    sheet.placed().house().roofs().forEach(r -> r.skylights().forEach(this::skylight));
    dormers();
    sheet.level().level().floor().crawlspace().ifPresent(c -> wayDown(c.access()));
    for (var r : sheet.rooms()) {
      r.room().floor().flatMap(f -> f.crawlspace()).ifPresent(c -> wayDown(c.access()));
    }
    sheet.svg().close();
  }

  void labels() {
    named.forEach((ring, name) -> label(name, ring));
  }

  private boolean passes(Chase c) {
    int top = c.to().equals("attic") ? Integer.MAX_VALUE : sheet.placed().getLevel(c.to()).order();
    PlacedLevel from = sheet.placed().getLevel(c.from());
    return sheet.level().part() == from.part()
        && sheet.level().order() >= from.order()
        && sheet.level().order() <= top;
  }

  /** The clear shaft, drawn dashed where nobody has seen it. */
  private void chase(Chase c) {
    long along = c.alongFace().value().nm();
    Along near = c.along().orElseGet(() -> centred(c, along));
    Along mid =
        new Along(near.from(), Fact.assumed(new Length(near.distance().value().nm() + along / 2)));
    sheet
        .placed()
        .findSpot(c.beside(), mid, 0)
        .ifPresent(s -> crossed(c.known() ? "chase" : "chase assumed", c.name(), ring(c, s)));
  }

  private static List<double[]> ring(Chase c, OnWall s) {
    long half = c.alongFace().value().nm() / 2;
    long away = c.awayFromFace().value().nm();
    boolean onHigh = (s.side() == 1) == c.inside();
    long face = onHigh ? s.wall().thickness() : 0;
    long t0 = onHigh ? face : face - away;
    return Sheet.strip(s.wall(), s.s() - half, s.s() + half, t0, t0 + away);
  }

  private Along centred(Chase c, long along) {
    List<Placed.Segment> faces = sheet.placed().listFaces(c.beside().room(), c.beside().side());
    Placed.Segment f = faces.get(Math.min(c.beside().ordinal(), faces.size()) - 1);
    long length = f.start().at(0).distanceTo(f.end().at(0));
    Side from = c.beside().side().runsEastWest() ? Side.WEST : Side.SOUTH;
    return new Along(from, Fact.assumed(new Length(Math.max(0, (length - along) / 2))));
  }

  private void crossed(String kind, String name, List<double[]> ring) {
    sheet.svg().polygon(kind, name, ring);
    sheet.svg().line("cross", ring.get(0), ring.get(2));
    sheet.svg().line("cross", ring.get(1), ring.get(3));
    mark(name, ring);
  }

  private void mark(String name, List<double[]> ring) {
    sheet.labels().mark(Rect.of(ring));
    named.put(Rect.of(ring), name);
  }

  private void label(String name, Rect r) {
    double[] mid = {(r.x0() + r.x1()) / 2, (r.y0() + r.y1()) / 2};
    double off = Math.min(r.wide(), r.high()) / 2 + 30;
    List<Rect> places = Labels.around(name, mid, 100, off, 60);
    sheet.label("shaft", name, 100, places);
  }

  private void obstacle(Obstacle o) {
    String word = o.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    o.inWall().filter(w -> sheet.isHere(w.face().room())).ifPresent(w -> inWall(word, w));
    o.inVoid()
        .filter(v -> sheet.isHere(v.at().room()))
        .ifPresent(
            v -> {
              Point2 p = Marks.plan(sheet, v.at());
              List<double[]> ring = box(p, v.eastWest().nm(), v.northSouth().nm());
              String where =
                  v.above()
                      ? " over the ceiling"
                      : v.hung() ? " under the ceiling" : " under the floor";
              sheet.svg().polygon("obstacle hidden", word + where, ring);
              mark(word + where, ring);
            });
  }

  private void inWall(String word, Obstacle.InWall w) {
    long width = w.width().value().nm();
    Along mid =
        new Along(
            w.along().from(),
            Fact.assumed(new Length(w.along().distance().value().nm() + width / 2)));
    Optional<OnWall> spot = sheet.placed().findSpot(w.face(), mid, w.bottom().value().nm());
    spot.ifPresent(
        s -> {
          long lo = s.s() - width / 2;
          var core = s.wall().core();
          List<double[]> ring = Sheet.strip(s.wall(), lo, lo + width, core.lo(), core.hi());
          sheet.svg().polygon("obstacle", word, ring);
          mark(word, ring);
        });
  }

  private void hatch(Roof.Hatch h) {
    if (sheet.isHere(h.at().room())) {
      Point2 p = Marks.plan(sheet, h.at());
      crossed("hatch", "hatch up", box(p, h.eastWest().nm(), h.northSouth().nm()));
    }
  }

  private void skylight(Roof.Skylight k) {
    if (sheet.isHere(k.at().room())) {
      Point2 p = Marks.plan(sheet, k.at());
      crossed("hatch", "skylight", box(p, k.eastWest().nm(), k.northSouth().nm()));
    }
  }

  /** Cheeks, front and the line where the slope is as high: what lies over the ceilings. */
  private void dormers() {
    if (sheet.placed().house().roofs().stream().allMatch(r -> r.dormers().isEmpty())) {
      return;
    }
    Set<PlacedDormer> here = new LinkedHashSet<>();
    for (Attic a : Framing.of(sheet.placed()).attics()) {
      if (isOver(a.roof())) {
        here.addAll(a.dormers());
      }
    }
    for (PlacedDormer d : here) {
      Point2 mid = new Point2(d.clear().x().mid(), d.clear().y().mid());
      List<double[]> ring = box(mid, d.clear().x().length(), d.clear().y().length());
      sheet.svg().polygon("obstacle hidden", "dormer over the ceiling", ring);
      mark("dormer", ring);
    }
  }

  private boolean isOver(Roof roof) {
    return roof.level()
        .map(l -> l.equals(sheet.level().name()))
        .orElseGet(() -> roof.rooms().stream().anyMatch(sheet::isHere));
  }

  private void wayDown(Optional<FloorSpec.WayIn> way) {
    way.flatMap(w -> w.floorHatch())
        .filter(at -> sheet.isHere(at.room()))
        .ifPresent(
            at -> {
              Point2 p = Marks.plan(sheet, at);
              crossed(
                  "hatch", "hatch down", box(p, way.get().width().nm(), way.get().height().nm()));
            });
    way.flatMap(w -> w.outsideDoor())
        .filter(at -> sheet.isHere(at.face().room()))
        .flatMap(at -> sheet.placed().findSpot(at.face(), at.along(), 0))
        .ifPresent(
            s -> {
              long half = way.get().width().nm() / 2;
              long t = s.wall().thickness();
              crossed(
                  "hatch", "way under", Sheet.strip(s.wall(), s.s() - half, s.s() + half, 0, t));
            });
  }

  private static List<double[]> box(Point2 p, long eastWest, long northSouth) {
    double[] m = Svg.at(p);
    Rect r = Rect.around(m[0], m[1], eastWest / 1e6, northSouth / 1e6);
    return List.of(
        new double[] {r.x0(), r.y0()},
        new double[] {r.x1(), r.y0()},
        new double[] {r.x1(), r.y1()},
        new double[] {r.x0(), r.y1()});
  }
}
