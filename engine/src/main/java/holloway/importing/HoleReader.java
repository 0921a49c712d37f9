package holloway.importing;

import holloway.house.Opening;
import holloway.step.StepEntity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Doors, windows and plain openings of walls (IfcRelVoidsElement, IfcRelFillsElement). */
final class HoleReader {
  static final List<String> DOORS = List.of("IFCDOOR", "IFCDOORSTANDARDCASE");
  static final List<String> WINDOWS = List.of("IFCWINDOW", "IFCWINDOWSTANDARDCASE");
  static final List<String> OPENINGS = List.of("IFCOPENINGELEMENT", "IFCOPENINGSTANDARDCASE");

  /** Narrower than this it lets a pipe through, not a person; millimetres. */
  private static final double LEAST_PLAIN = 300;

  /** What a wall is taken for that nobody could read; millimetres. */
  private static final double USUAL_WALL = 200;

  /** Door frames and shims on both sides; openings nearer than this are written as one. */
  private static final double JAMB = 55;

  private final Model model;
  private final Shapes shapes;
  private final Tree tree;
  private final Map<Long, PlanWall> walls;
  private final Move move;
  private final Remarks remarks;

  HoleReader(
      Model model,
      Shapes shapes,
      Tree tree,
      Map<Long, PlanWall> walls,
      Move move,
      Remarks remarks) {
    this.model = model;
    this.shapes = shapes;
    this.tree = tree;
    this.walls = walls;
    this.move = move;
    this.remarks = remarks;
  }

  List<PlanHole> read() {
    List<PlanHole> out = new ArrayList<>();
    Set<Long> filled = new TreeSet<>();
    model
        .all("IFCRELFILLSELEMENT")
        .forEach(r -> model.find(r.value(4)).ifPresent(o -> filled.add(o.id())));
    for (StepEntity e : model.all(Stream.concat(DOORS.stream(), WINDOWS.stream()).toList())) {
      boolean door = DOORS.contains(e.type());
      remarks.attempt(door ? "door" : "window", e, () -> filling(e, door)).ifPresent(out::add);
    }
    for (StepEntity e : model.all(OPENINGS)) {
      boolean inWall = tree.parent(e).filter(w -> WallReader.TYPES.contains(w.type())).isPresent();
      if (!filled.contains(e.id()) && inWall) {
        remarks.attempt("opening", e, () -> plain(e)).ifPresent(out::add);
      }
    }
    return joined(out);
  }

  private PlanHole filling(StepEntity e, boolean door) {
    Optional<StepEntity> opening = tree.parent(e).filter(o -> OPENINGS.contains(o.type()));
    Optional<PlanWall> host = opening.flatMap(this::host);
    Optional<Double> width = model.length(e, 9).filter(w -> w > 0);
    Optional<Double> height = model.length(e, 8).filter(h -> h > 0);
    Opening.Kind kind = door ? Opening.Kind.DOOR : Opening.Kind.WINDOW;
    Optional<Shape> shape = opening.flatMap(shapes::find).map(s -> s.moved(move));
    if (shape.isPresent()) {
      return of(name(e), kind, shape.get(), host, width, height);
    }
    if (width.isEmpty() || height.isEmpty()) {
      throw new Unreadable("neither its size nor its opening is told");
    }
    return of(name(e), kind, box(e, width.get(), height.get()), host, width, height);
  }

  /** From the lower left corner of the frame, as IfcDoor and IfcWindow are placed. */
  private Shape box(StepEntity e, double width, double height) {
    Move at = move.then(shapes.placement(e));
    Vec a = at.apply(Vec.ZERO);
    Vec b = at.apply(new Vec(width, 0, 0));
    return new Shape(
        List.of(
            List.of(a, b, at.apply(new Vec(width, 0, height)), at.apply(new Vec(0, 0, height)))),
        Set.of());
  }

  private PlanHole plain(StepEntity e) {
    Shape shape = shapes.get(e).moved(move);
    PlanHole h =
        of(name(e), Opening.Kind.OPENING, shape, host(e), Optional.empty(), Optional.empty());
    if (h.width() < LEAST_PLAIN || h.top() - h.bottom() < LEAST_PLAIN) {
      throw new Unreadable("it is smaller than a door or window; nothing fills it");
    }
    return h;
  }

  private Optional<PlanWall> host(StepEntity opening) {
    return tree.parent(opening).map(w -> walls.get(w.id()));
  }

  private static String name(StepEntity e) {
    return Titles.plain(Model.text(e, 2).orElse("#" + e.id()), "#" + e.id());
  }

  private static PlanHole of(
      String name,
      Opening.Kind kind,
      Shape shape,
      Optional<PlanWall> host,
      Optional<Double> width,
      Optional<Double> height) {
    List<Vec> points = shape.faces().stream().flatMap(List::stream).toList();
    Vec along = host.map(PlanWall::along).orElseGet(() -> lying(points));
    Vec across = new Vec(-along.y(), along.x(), 0);
    double[] s = WallReader.extent(points, along);
    double[] t = WallReader.extent(points, across);
    double wide = width.orElse(s[1] - s[0]);
    double mid = host.map(w -> w.centre().dot(across)).orElse((t[0] + t[1]) / 2);
    Vec centre = along.times((s[0] + s[1]) / 2).plus(across.times(mid));
    double bottom = shape.bottom();
    double top = height.map(h -> bottom + h).orElse(shape.top());
    double thick = host.map(PlanWall::thickness).orElse(Math.max(t[1] - t[0], USUAL_WALL));
    return new PlanHole(name, kind, centre, along, wide, bottom, top, thick);
  }

  /** Without a wall to go by: along the longer of the plan's two axes. */
  private static Vec lying(List<Vec> points) {
    double[] x = WallReader.extent(points, Vec.X);
    double[] y = WallReader.extent(points, Vec.Y);
    return x[1] - x[0] >= y[1] - y[0] ? Vec.X : Vec.Y;
  }

  private List<PlanHole> joined(List<PlanHole> holes) {
    List<PlanHole> out = new ArrayList<>();
    for (PlanHole h : holes) {
      PlanHole whole = h;
      for (int i = 0; i < out.size(); i++) {
        if (whole.touches(out.get(i), JAMB)) {
          remarks.add(
              "%s and %s touch each other in one wall and are written as one opening"
                  .formatted(out.get(i).title(), whole.title()));
          whole = out.remove(i).and(whole);
          i = -1;
        }
      }
      out.add(whole);
    }
    return out;
  }
}
