package holloway.scene;

import holloway.catalog.Cable;
import holloway.framing.Member;
import holloway.geometry.Point3;
import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The doorway: shapes of a house and of one plan for it. */
public final class SceneMaker {
  /** Width drawn for a cable that the catalogue does not have. */
  private static final double USUAL_MM = 6;

  private final HollowHouse house;
  private final Plan plan;

  private SceneMaker(HollowHouse house, Plan plan) {
    this.house = house;
    this.plan = plan;
  }

  public static Scene of(HollowHouse house, Plan plan) {
    SceneMaker m = new SceneMaker(house, plan);
    return new Scene(plan.house(), m.solids(), m.glows(), m.tubes(), m.pins(), m.flags());
  }

  private List<Scene.Solid> solids() {
    List<Scene.Solid> out = new ArrayList<>();
    for (Member m : house.framed().members()) {
      Brick brick = Brick.of(m.frame(), m.box());
      if (brick.isSolid()) {
        out.add(
            new Scene.Solid(
                m.id(),
                Layer.of(m.kind()),
                level(house.framed().placed(), brick.middle().z()),
                m.kind().word(),
                brick,
                m.assumed()));
      }
    }
    out.sort(Comparator.comparing(Scene.Solid::id));
    return out;
  }

  /** The highest level whose floor is not above; what lies deeper belongs to the lowest. */
  private static String level(Placed placed, double zMm) {
    String name = placed.levels().get(0).name();
    for (PlacedLevel l : placed.levels()) {
      if (l.floorZ() / 1e6 <= zMm) {
        name = l.name();
      }
    }
    return name;
  }

  private List<Scene.Glow> glows() {
    Map<String, List<String>> runs = new TreeMap<>();
    for (Plan.PlannedRun run : plan.runs()) {
      run.steps().stream()
          .filter(s -> s.kind().equals("leg"))
          .map(Plan.PlanStep::id)
          .distinct()
          .forEach(id -> runs.computeIfAbsent(id, k -> new ArrayList<>()).add(run.id()));
    }
    List<Scene.Glow> out = new ArrayList<>();
    runs.forEach(
        (id, through) ->
            house
                .findHollow(id)
                .filter(h -> h.blind() && h.area().isEmpty() && !h.kind().isDrawn())
                .map(
                    h ->
                        new Scene.Glow(
                            id, h.kind().word(), Brick.of(h.frame(), h.clear()), through))
                .filter(g -> g.brick().isSolid())
                .ifPresent(out::add));
    return out;
  }

  private List<Scene.Tube> tubes() {
    List<Plan.PlannedRun> runs = new ArrayList<>(plan.runs());
    runs.sort(Comparator.comparing(Plan.PlannedRun::id));
    Map<String, Integer> slots = Fan.slots(runs);
    double widest = runs.stream().mapToDouble(SceneMaker::width).max().orElse(USUAL_MM);
    List<Scene.Tube> out = new ArrayList<>();
    for (Plan.PlannedRun run : runs) {
      int i = out.size();
      out.add(
          new Scene.Tube(
              run.id(),
              "%s, %s to %s".formatted(run.cable(), run.from(), run.to()),
              path(run),
              Fan.aside(slots.get(run.id()), widest),
              width(run),
              i % Palette.RUNS.size(),
              i / Palette.RUNS.size() % Palette.DASHES));
    }
    return out;
  }

  private static double width(Plan.PlannedRun run) {
    return Cable.find(run.cable()).map(c -> c.outside().toMm()).orElse(USUAL_MM);
  }

  private static List<Vec> path(Plan.PlannedRun run) {
    List<Vec> out = new ArrayList<>();
    Point3 last = null;
    for (Plan.PlanStep step : run.steps()) {
      for (Point3 p : step.path()) {
        if (!p.equals(last)) {
          out.add(Vec.of(p));
        }
        last = p;
      }
    }
    return out;
  }

  private List<Scene.Pin> pins() {
    List<Scene.Pin> out = new ArrayList<>();
    for (Plan.PlannedHole h : plan.holes()) {
      boolean axis = h.axis().size() >= 2;
      Point3 from = axis ? h.axis().get(0) : h.at();
      Point3 to = axis ? h.axis().get(h.axis().size() - 1) : h.at();
      String words = "%s, %d mm, %s".formatted(h.kind(), h.diameterMm(), h.method());
      out.add(
          new Scene.Pin(
              h.id(), h.label(), words, Vec.of(from), Vec.of(to), h.diameterMm(), h.runs()));
    }
    out.sort(Comparator.comparing(Scene.Pin::id));
    return out;
  }

  private List<Scene.Flag> flags() {
    List<Scene.Flag> out = new ArrayList<>();
    for (Plan.FindingLine f : plan.findings()) {
      f.at().ifPresent(p -> out.add(new Scene.Flag(f.rule(), f.severity(), f.text(), Vec.of(p))));
    }
    return out;
  }
}
