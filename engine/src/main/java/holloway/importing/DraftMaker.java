package holloway.importing;

import holloway.geometry.Point2;
import holloway.house.Direction;
import holloway.housefile.draft.Draft;
import holloway.step.StepEntity;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Puts together what the readers of rooms, walls, openings and roofs tell. */
final class DraftMaker {
  private final Model model;
  private final String schema;
  private final String fileName;
  private final Remarks remarks = new Remarks();
  private final Grid grid;

  DraftMaker(Model model, String schema, String fileName) {
    this.model = model;
    this.schema = schema;
    this.fileName = fileName;
    this.grid = new Grid(model.units().metric());
  }

  Draft make() {
    Shapes shapes = new Shapes(model);
    Tree tree = new Tree(model);
    Materials materials = new Materials(model);
    List<RawRoom> raw = new SpaceReader(model, shapes, tree, remarks).read();
    Squaring squaring = Squaring.of(raw);
    Move move = squaring.move();
    Floors floors = Floors.of(raw, grid, move, remarks);
    Map<Long, PlanWall> walls = new WallReader(model, shapes, materials, move, remarks).read();
    List<PlanHole> holes = new HoleReader(model, shapes, tree, walls, move, remarks).read();
    List<Draft.Hole> openings = new HoleFitter(floors, grid, remarks).fit(holes);
    List<Draft.Cover> roofs = new CoverReader(model, shapes, tree, floors, move, remarks).read();
    List<Draft.Level> levels = levels(floors, new FloorSlabs(model, shapes, materials, remarks));
    Spots spots = new Spots(floors, holes, grid);
    Draft.Spot cabinet = spots.cabinet();
    WallThickness thick = new WallThickness(floors, walls.values(), grid, remarks);
    Draft.WallDefault outer = thick.outer();
    Draft.WallDefault inner = thick.inner();
    List<Draft.Wall> others = thick.others(inner, outer);
    return new Draft(
        title(),
        about(squaring),
        toFinish(squaring, roofs, walls.values()),
        grid.metric(),
        squaring.stands(),
        outer,
        inner,
        levels,
        rooms(floors),
        others,
        openings,
        roofs,
        cabinet,
        spots.outlet(cabinet));
  }

  private String title() {
    for (StepEntity e : model.all(List.of("IFCBUILDING", "IFCPROJECT"))) {
      Optional<String> name =
          Model.text(e, 2).or(() -> Model.text(e, e.type().length() > 10 ? 7 : 5));
      if (name.isPresent()) {
        return Titles.plain(name.get(), "My House");
      }
    }
    return "My House";
  }

  private List<String> about(Squaring squaring) {
    List<String> about = new ArrayList<>();
    about.add(
        "Read from %s, a building model (%s); positions are rounded to %s."
            .formatted(fileName, schema, grid.metric() ? "0.1 mm" : "1/64 in"));
    if (squaring.degrees() != 0) {
      about.add(
          String.format(
              Locale.ROOT,
              "The plan was turned by %.2f degrees (%s) so that its walls lie square: north here is a name for one side, and 'turned' says how it lies in the model.",
              Math.abs(squaring.degrees()),
              squaring.degrees() > 0 ? "counter-clockwise" : "clockwise"));
    }
    new TrueNorth(model).words().ifPresent(about::add);
    about.add("What the model does not tell is marked 'to finish'. Measure before you drill.");
    return about;
  }

  private List<String> toFinish(
      Squaring squaring, List<Draft.Cover> roofs, Collection<PlanWall> walls) {
    List<String> out = new ArrayList<>();
    if (!model.units().stated()) {
      out.add("the model states no unit of length; millimetres were taken");
    }
    out.add(
        "place and built decide what is assumed behind the board, and are not the model's word");
    if (!squaring.square()) {
      out.add("some walls lie at an angle to the others; they are written as they are");
    }
    if (walls.isEmpty()) {
      out.add(
          "the model holds no walls that could be read; they follow from the gaps between rooms");
    }
    if (roofs.isEmpty()) {
      out.add("the roof: no roof of the model could be told; say over, shape, ridge, pitch, frame");
    }
    count("IFCSTAIR", "stairs", out);
    count("IFCCURTAINWALL", "curtain walls", out);
    out.add("things seen in rooms (sockets, switches, taps, radiators), obstacles, chases");
    out.addAll(remarks.all());
    return out;
  }

  private void count(String type, String words, List<String> out) {
    int n = model.all(type).size();
    if (n > 0) {
      out.add(
          "%d %s of the model are not carried over; state what is in the way as obstacles"
              .formatted(n, words));
    }
  }

  private List<Draft.Level> levels(Floors floors, FloorSlabs slabs) {
    List<Draft.Level> out = new ArrayList<>();
    for (int i = 0; i < floors.levels().size(); i++) {
      PlanLevel l = floors.levels().get(i);
      Optional<PlanLevel> below =
          i == 0 ? Optional.empty() : Optional.of(floors.levels().get(i - 1));
      Optional<FloorSlabs.Slab> slab = slabs.under(l.floor());
      boolean concrete = i == 0 || slab.filter(FloorSlabs.Slab::isConcrete).isPresent();
      String as = slab.map(this::words).orElse("; the model shows no slab here");
      String what =
          i == 0
              ? "whether the lowest floor is a slab, as written, or joists over a crawlspace"
              : concrete
                  ? "whether this floor is concrete, as written, or joists"
                  : "joists, every and kind of this floor; the way they run is a guess (the shorter)";
      out.add(
          new Draft.Level(
              l.name(),
              below.map(PlanLevel::name),
              grid.length(l.height()),
              below.map(b -> grid.length(l.floor() - b.floor())),
              concrete,
              shorter(floors.rooms(i)),
              List.of(what + as)));
    }
    return out;
  }

  private String words(FloorSlabs.Slab s) {
    String made = s.layers().isEmpty() ? "" : " (" + Materials.words(s.layers(), grid) + ")";
    return "; the model's slab is %s thick%s".formatted(grid.words(s.thickness()), made);
  }

  /** Joists commonly span the shorter way of a house: common practice, no published source. */
  private static Direction shorter(List<PlanRoom> rooms) {
    long west = rooms.stream().mapToLong(r -> r.outline().xRange().lo()).min().orElse(0);
    long east = rooms.stream().mapToLong(r -> r.outline().xRange().hi()).max().orElse(0);
    long south = rooms.stream().mapToLong(r -> r.outline().yRange().lo()).min().orElse(0);
    long north = rooms.stream().mapToLong(r -> r.outline().yRange().hi()).max().orElse(0);
    return east - west < north - south ? Direction.EAST_WEST : Direction.NORTH_SOUTH;
  }

  private List<Draft.Room> rooms(Floors floors) {
    List<Draft.Room> out = new ArrayList<>();
    Point2 start = floors.rooms().get(0).southWest();
    for (PlanRoom r : floors.rooms()) {
      PlanLevel level = floors.levels().get(r.level());
      Point2 at = r.southWest();
      Length raised = grid.length(r.floor() - level.floor());
      Length height = grid.length(Math.min(12_000, Math.max(1_000, r.ceiling() - r.floor())));
      boolean usual = Math.abs(height.toMm() - level.height()) < 1.5;
      List<String> notes = new ArrayList<>(r.notes());
      if (Spots.isGarage(r)) {
        notes.add("it is taken for a garage by its name");
      }
      out.add(
          new Draft.Room(
              r.name(),
              level.name(),
              r.outline().corners().stream().map(p -> p.plus(-at.x(), -at.y())).toList(),
              out.isEmpty() ? Optional.empty() : Optional.of(at.plus(-start.x(), -start.y())),
              Optional.of(raised).filter(l -> Math.abs(l.toMm()) > 1.5),
              Optional.of(height).filter(h -> !usual),
              Spots.isGarage(r),
              notes));
    }
    return out;
  }
}
