package holloway.importing;

import holloway.geometry.Polygon2;
import holloway.step.StepEntity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Storeys and rooms in the squared plan, the lowest storey first. */
final class Floors {
  /** Storeys nearer to one another than this are parts of one level, millimetres. */
  private static final double SPLIT = 1_000;

  private final Grid grid;
  private final Move move;
  private final Remarks remarks;
  private final List<PlanLevel> levels = new ArrayList<>();
  private final List<PlanRoom> rooms = new ArrayList<>();

  private Floors(Grid grid, Move move, Remarks remarks) {
    this.grid = grid;
    this.move = move;
    this.remarks = remarks;
  }

  static Floors of(List<RawRoom> raw, Grid grid, Move move, Remarks remarks) {
    Floors floors = new Floors(grid, move, remarks);
    Map<RawRoom, Polygon2> outlines = floors.outlines(raw);
    if (outlines.isEmpty()) {
      throw new ModelFault("no space of the model has an outline that a room can have");
    }
    floors.build(outlines);
    return floors;
  }

  List<PlanLevel> levels() {
    return levels;
  }

  /** By level, then as in the model. */
  List<PlanRoom> rooms() {
    return rooms;
  }

  List<PlanRoom> rooms(int level) {
    return rooms.stream().filter(r -> r.level() == level).toList();
  }

  private Map<RawRoom, Polygon2> outlines(List<RawRoom> raw) {
    Map<RawRoom, Polygon2> out = new LinkedHashMap<>();
    Outliner outliner = new Outliner(grid);
    for (RawRoom r : raw) {
      remarks
          .attempt(
              "space",
              r.space(),
              () -> checked(outliner.outline(r.corners().stream().map(move::apply).toList()), r))
          .ifPresent(p -> out.put(r, p));
    }
    return out;
  }

  private static Polygon2 checked(Polygon2 outline, RawRoom r) {
    if (r.ceiling() - r.floor() < 300) {
      throw new Unreadable("it is only %.0f mm high".formatted(r.ceiling() - r.floor()));
    }
    return outline;
  }

  private void build(Map<RawRoom, Polygon2> outlines) {
    Map<StepEntity, List<RawRoom>> byStorey = new LinkedHashMap<>();
    outlines
        .keySet()
        .forEach(r -> byStorey.computeIfAbsent(r.storey(), k -> new ArrayList<>()).add(r));
    List<StepEntity> storeys = new ArrayList<>(byStorey.keySet());
    Map<StepEntity, Double> floor = new LinkedHashMap<>();
    storeys.forEach(s -> floor.put(s, most(byStorey.get(s), outlines, false)));
    storeys.sort(
        Comparator.comparing((StepEntity s) -> floor.get(s)).thenComparing(StepEntity::id));
    Titles levelNames = new Titles("attic");
    Titles roomNames = new Titles();
    double last = Double.NEGATIVE_INFINITY;
    for (StepEntity s : storeys) {
      String name = levelName(s, levelNames);
      if (floor.get(s) - last < SPLIT) {
        remarks.add(
            "storey '%s' lies less than %.0f mm over '%s', so its rooms are written on that level"
                .formatted(name, SPLIT, levels.get(levels.size() - 1).name()));
      } else {
        double height = Math.min(12_000, Math.max(1_000, most(byStorey.get(s), outlines, true)));
        levels.add(new PlanLevel(name, floor.get(s), height));
        last = floor.get(s);
      }
      byStorey.get(s).forEach(r -> rooms.add(room(r, outlines.get(r), roomNames)));
    }
  }

  private static String levelName(StepEntity storey, Titles names) {
    String said = Model.text(storey, 2).or(() -> Model.text(storey, 7)).orElse("level");
    return names.unique(said, "", "level");
  }

  private PlanRoom room(RawRoom r, Polygon2 outline, Titles names) {
    String number = Model.text(r.space(), 2).orElse("");
    String name = names.unique(SpaceReader.title(r.space()), number, "room");
    return new PlanRoom(name, levels.size() - 1, outline, r.floor(), r.ceiling(), r.notes());
  }

  /** The floor (or clear height) with the most area, to the millimetre. */
  private static double most(List<RawRoom> rooms, Map<RawRoom, Polygon2> outlines, boolean height) {
    Map<Long, Double> area = new TreeMap<>();
    Map<Long, Double> exact = new TreeMap<>();
    for (RawRoom r : rooms) {
      double value = height ? r.ceiling() - r.floor() : r.floor();
      area.merge(Math.round(value), outlines.get(r).signedAreaMm2(), Double::sum);
      exact.putIfAbsent(Math.round(value), value);
    }
    long best = area.keySet().iterator().next();
    for (Map.Entry<Long, Double> e : area.entrySet()) {
      best = e.getValue() > area.get(best) ? e.getKey() : best;
    }
    return exact.get(best);
  }
}
