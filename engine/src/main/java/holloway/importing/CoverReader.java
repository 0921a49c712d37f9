package holloway.importing;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.housefile.draft.Draft;
import holloway.step.StepEntity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;

/** Roofs (IfcRoof and what it is made of, and slabs that are roofs), and the rooms under them. */
final class CoverReader {
  private static final double NM = 1e6;

  private final Model model;
  private final Shapes shapes;
  private final Tree tree;
  private final Floors floors;
  private final Move move;
  private final Remarks remarks;

  CoverReader(Model model, Shapes shapes, Tree tree, Floors floors, Move move, Remarks remarks) {
    this.model = model;
    this.shapes = shapes;
    this.tree = tree;
    this.floors = floors;
    this.move = move;
    this.remarks = remarks;
  }

  List<Draft.Cover> read() {
    List<Draft.Cover> out = new ArrayList<>();
    Set<String> covered = new TreeSet<>();
    groups()
        .forEach(
            (head, parts) ->
                remarks.attempt("roof", head, () -> cover(parts, covered)).ifPresent(out::add));
    return out;
  }

  /** A roof and its parts; loose roof slabs of one storey are one roof. */
  private Map<StepEntity, List<StepEntity>> groups() {
    Map<StepEntity, List<StepEntity>> out = new LinkedHashMap<>();
    model.all("IFCROOF").forEach(r -> out.put(r, new ArrayList<>(List.of(r))));
    Map<Long, StepEntity> firsts = new TreeMap<>();
    for (StepEntity slab : model.all(FloorSlabs.TYPES)) {
      Optional<StepEntity> roof = tree.within(slab, "IFCROOF").filter(out::containsKey);
      if (roof.isPresent()) {
        out.get(roof.get()).add(slab);
      } else if (Model.word(slab, 8).equals("ROOF")) {
        long storey = tree.storey(slab).map(StepEntity::id).orElse(0L);
        StepEntity head = firsts.computeIfAbsent(storey, k -> slab);
        out.computeIfAbsent(head, k -> new ArrayList<>()).add(slab);
      }
    }
    return out;
  }

  private Draft.Cover cover(List<StepEntity> parts, Set<String> covered) {
    List<List<Vec>> faces = new ArrayList<>();
    for (StepEntity part : parts) {
      shapes.find(part).ifPresent(s -> faces.addAll(s.moved(move).faces()));
    }
    Shape whole = new Shape(faces, Set.of());
    Slopes.Told told = new Slopes(whole.faces()).tell();
    List<PlanRoom> under = under(whole, covered);
    if (under.isEmpty()) {
      throw new Unreadable("no room of the model lies right under it");
    }
    under.forEach(r -> covered.add(r.name()));
    PlanLevel level = floors.levels().get(under.get(0).level());
    boolean all = under.size() == floors.rooms(under.get(0).level()).size();
    return new Draft.Cover(
        all ? Optional.of(level.name()) : Optional.empty(),
        all ? List.of() : under.stream().map(PlanRoom::name).toList(),
        told.shape(),
        told.ridge(),
        told.lowSide(),
        Math.rint(told.degrees() * 10) / 10,
        List.of(
            "trusses or rafters (frame: trusses is a guess; they are never bored), every, eaves,"
                + " insulation and the hatch of this roof"));
  }

  /** Rooms under the roof with no other room over them, of the highest such level. */
  private List<PlanRoom> under(Shape roof, Set<String> covered) {
    List<PlanRoom> out = new ArrayList<>();
    Polygon2 shadow = polygon(roof.shadow().corners());
    for (PlanRoom r : floors.rooms()) {
      boolean free = !covered.contains(r.name()) && r.floor() < roof.top();
      if (free && holds(shadow, r) && isTopmost(r, roof)) {
        out.add(r);
      }
    }
    int highest = out.stream().mapToInt(PlanRoom::level).max().orElse(0);
    return out.stream().filter(r -> r.level() == highest).toList();
  }

  private boolean isTopmost(PlanRoom r, Shape roof) {
    return floors.rooms().stream()
        .noneMatch(o -> o.level() > r.level() && o.floor() < roof.top() && holds(o.outline(), r));
  }

  private static boolean holds(Polygon2 around, PlanRoom r) {
    Point inside = r.outline().toJts().getInteriorPoint();
    Coordinate c = inside.getCoordinate();
    return around.contains(new Point2(Math.round(c.x * NM), Math.round(c.y * NM)));
  }

  private static Polygon2 polygon(List<Vec> corners) {
    return new Polygon2(
            corners.stream()
                .map(v -> new Point2(Math.round(v.x() * NM), Math.round(v.y() * NM)))
                .toList())
        .counterClockwise();
  }
}
