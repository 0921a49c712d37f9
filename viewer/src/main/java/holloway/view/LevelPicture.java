package holloway.view;

import holloway.look.Area;
import holloway.look.Bodies;
import holloway.look.Pane;
import holloway.look.Placer;
import holloway.look.Sheet;
import holloway.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.joml.Vector4f;

/** One level from above, its walls cut at the height of the chest: studs, hollows, runs, holes. */
final class LevelPicture {
  private static final float CHEST_FEET = 1.2192f;
  private static final float CHEST_METRIC = 1.2f;

  /** A building that is not wider than this part of all is drawn for itself, larger. */
  private static final float MUCH = 0.65f;

  /** This part of the height is for it. */
  private static final float ABOVE = 0.66f;

  /** As far from a room a mark or a wall may be, metres, and still be of its building. */
  private static final float WALL = 1;

  /** What hangs under the roof of a porch is still of its building, metres from its rooms. */
  private static final float PORCH = 5;

  private final List<Pane> panes = new ArrayList<>();
  private final Model model;
  private final Storey storey;
  private final Page page;

  LevelPicture(Model model, Storey storey, Page page) {
    this.model = model;
    this.storey = storey;
    this.page = page;
  }

  Sheet sheet() {
    List<RoomMark> rooms = model.rooms().stream().filter(r -> r.level() == storey.order()).toList();
    List<Vector3fc> all = new ArrayList<>();
    rooms.forEach(r -> all.addAll(r.outline()));
    model.pieces().stream().filter(this::isWall).forEach(p -> corners(p, all));
    List<RoomMark> main = rooms.isEmpty() ? rooms : Buildings.of(rooms).get(0);
    List<Vector3fc> near = all.stream().filter(p -> isOf(main, p)).toList();
    column();
    if (wide(near) > MUCH * wide(all)) {
      view(page.model, all, rooms, p -> true, p -> true);
    } else {
      apart(rooms, main, near, all);
    }
    return new Sheet(page.width, page.height, page.theme, panes, page.canvas.marks());
  }

  /** A building far off would make this one small: it alone above, and all of them below. */
  private void apart(
      List<RoomMark> rooms, List<RoomMark> main, List<Vector3fc> near, List<Vector3fc> all) {
    Area m = page.model;
    float split = Math.round(m.height() * ABOVE);
    Area below = new Area(m.x(), m.y() + split, m.width(), m.height() - split);
    List<RoomMark> others = rooms.stream().filter(r -> !main.contains(r)).toList();
    Predicate<Vector3fc> hers = p -> away(main, p) < Math.min(PORCH, away(others, p));
    Area above = new Area(m.x(), m.y(), m.width(), split);
    view(above, near, main, hers, p -> isOf(main, p));
    view(below, all, others, p -> !hers.test(p), p -> !isOf(main, p));
    String text = "the whole level";
    Area label = page.canvas.label(text, page.size(), false);
    page.canvas.plated(
        new Area(m.x() + page.size(), below.y(), label.width(), label.height()),
        text,
        page.size(),
        false,
        page.quiet());
  }

  private static boolean isOf(List<RoomMark> building, Vector3fc p) {
    return away(building, p) < WALL;
  }

  private static double away(List<RoomMark> building, Vector3fc p) {
    return building.stream().mapToDouble(r -> r.away(p)).min().orElse(Double.MAX_VALUE);
  }

  private static float wide(List<Vector3fc> points) {
    Vector3f reach = reach(points);
    return Math.max(reach.x, reach.y);
  }

  private static Vector3f reach(List<Vector3fc> points) {
    Vector3f low = new Vector3f(Float.MAX_VALUE);
    Vector3f high = new Vector3f(-Float.MAX_VALUE);
    points.forEach(p -> low.min(p));
    points.forEach(p -> high.max(p));
    return high.sub(low);
  }

  /**
   * @param marked whose ends and holes have a sign here
   * @param guessed where the words of an unknown way may stand
   */
  private void view(
      Area area,
      List<Vector3fc> walls,
      List<RoomMark> rooms,
      Predicate<Vector3fc> marked,
      Predicate<Vector3fc> guessed) {
    List<Vector3fc> all = new ArrayList<>(walls);
    outlying(marked).forEach(all::add);
    // At the foot of a high one there are the words of its depth, and the bar under them.
    Vector3f reach = reach(all);
    boolean high = reach.y * area.width() > reach.x * area.height();
    float free = page.size() * (high ? 4.4f / area.height() : 3.4f / area.width());
    Eye eye = Eye.on(all, new Vector3f(0, 0, -1), new Vector3f(0, 1, 0), area, 1, free);
    Pane pane = pane(eye, area);
    panes.add(pane);
    marks(pane, area, page.scaleBar(eye, area), rooms, walls, marked, guessed);
  }

  /** Ends out under a porch, beyond all walls, which the picture has to reach. */
  private Stream<Vector3fc> outlying(Predicate<Vector3fc> marked) {
    List<RoomMark> rooms = model.rooms().stream().filter(r -> r.level() == storey.order()).toList();
    return model.ends().stream()
        .map(EndMark::at)
        .filter(p -> here(p) && marked.test(p) && away(rooms, p) >= WALL);
  }

  private static void corners(Piece p, List<Vector3fc> to) {
    to.add(new Vector3f(p.centre()).add(p.reach()));
    to.add(new Vector3f(p.centre()).sub(p.reach()));
  }

  private boolean isWall(Piece p) {
    return p.level() == storey.order() && !p.flat();
  }

  private boolean here(Vector3fc p) {
    return model.storeyAt(p).equals(storey);
  }

  private Pane pane(Eye eye, Area area) {
    float cut = storey.floor() + chest();
    Bodies bodies =
        new Painted(model, page.theme)
            .solid(p -> isWall(p) || standsHere(p, cut))
            .lit(s -> here(s.centre()) && s.centre().z() - reach(s) < cut)
            .along((a, b) -> isBeside(a) || isBeside(b))
            .cables(this::passes, 1)
            .bodies();
    Floors.add(bodies, model, storey.order(), page.theme);
    return new Pane(
        (int) area.x(),
        (int) area.y(),
        (int) area.width(),
        (int) area.height(),
        eye.view(),
        eye.projection(),
        List.of(new Vector4f(0, 0, -1, cut)),
        List.of(new Vector4f(0, 0, 1, -storey.low()), new Vector4f(0, 0, -1, storey.high())),
        bodies,
        page.leastPixels(model) * Math.max(0.5f, area.height() / page.model.height()));
  }

  private float chest() {
    return page.units == UnitSystem.METRIC ? CHEST_METRIC : CHEST_FEET;
  }

  /** In the same part of a split-level house: another one's floors lie at this height too. */
  private boolean isBeside(Vector3fc p) {
    return model.storeyAt(p).part() == storey.part();
  }

  private boolean passes(Cable c) {
    return c.points().stream().anyMatch(this::here);
  }

  private static float reach(Space s) {
    return Math.abs(s.u().z()) + Math.abs(s.v().z()) + Math.abs(s.w().z());
  }

  /** Obstacles, stairs and masonry that stand on this floor. */
  private boolean standsHere(Piece p, float cut) {
    float low = p.centre().z() - p.reach().z;
    boolean stands =
        switch (p.kind()) {
          case OBSTACLE, STAIR, MASONRY, POST, NOT_OURS -> true;
          default -> false;
        };
    return stands && p.level() == storey.order() && low < cut;
  }

  private void marks(
      Pane pane,
      Area area,
      Area bar,
      List<RoomMark> rooms,
      List<Vector3fc> all,
      Predicate<Vector3fc> marked,
      Predicate<Vector3fc> guessed) {
    Placer placer = new Placer(area.inset(2), page.canvas.scale());
    placer.keepFree(bar);
    page.north(pane, placer, area, model.centre());
    Marks marks = new Marks(page.canvas, pane, placer);
    dimensions(pane, all, placer);
    rooms.forEach(r -> marks.name(r.middle(), r.name()));
    model.ends().stream().filter(e -> here(e.at()) && marked.test(e.at())).forEach(marks::end);
    model.pins().stream()
        .filter(p -> here(p.middle()) && marked.test(p.middle()))
        .forEach(p -> marks.pin(p, false));
    model.cables().forEach(c -> marks.guessed(c, p -> here(p) && guessed.test(p)));
    marks.finish();
  }

  /** The whole width and depth, outside to outside. */
  private void dimensions(Pane pane, List<Vector3fc> all, Placer placer) {
    Vector3f low = new Vector3f(Float.MAX_VALUE);
    Vector3f high = new Vector3f(-Float.MAX_VALUE);
    for (Vector3fc p : all) {
      low.min(p);
      high.max(p);
    }
    Vector3f a = pane.pixel(new Vector3f(low.x, high.y, 0));
    Vector3f b = pane.pixel(new Vector3f(high.x, high.y, 0));
    Vector3f c = pane.pixel(new Vector3f(low.x, low.y, 0));
    float off = page.size() * 1.1f;
    placer.keepFree(dimension(a.x, a.y - off, b.x, b.y - off, high.x - low.x));
    placer.keepFree(dimension(a.x - off, a.y, c.x - off, c.y, high.y - low.y));
  }

  private Area dimension(float x0, float y0, float x1, float y1, float metres) {
    page.canvas.dimension(x0, y0, x1, y1, page.theme.quiet());
    String text = page.length(metres);
    Area box = page.canvas.label(text, page.size(), false);
    float mx = (x0 + x1) / 2;
    float my = (y0 + y1) / 2;
    boolean upright = Math.abs(y1 - y0) > Math.abs(x1 - x0);
    // Beside an upright line there is no room: under its foot there is.
    float x = upright ? Math.max(2, mx - box.width() / 2) : mx - box.width() / 2;
    float y = upright ? Math.max(y0, y1) + 2 : my - box.height() / 2;
    Area at = new Area(x, y, box.width(), box.height());
    page.canvas.plated(at, text, page.size(), false, page.quiet());
    return at;
  }

  private void column() {
    page.title(
        model.name() + ": " + storey.name() + " level",
        "from above, walls cut " + page.length(chest()) + " over the floor; " + page.up());
    TreeSet<String> here = new TreeSet<>();
    for (Cable c : model.cables()) {
      if (passes(c)) {
        here.add(c.id());
      }
    }
    int all = here.size();
    page.heading("Runs that pass here, and their way");
    for (Cable c : model.cables()) {
      if (here.contains(c.id()) && page.room(11)) {
        page.run(c, c.length());
        here.remove(c.id());
      }
    }
    page.more(here.size(), all);
    page.heading("Signs");
    Signs.holes(page);
    Signs.ends(page);
    Signs.lit(page);
    Signs.faint(page);
    page.northWords();
  }
}
