package holloway.scene;

import holloway.catalog.Cable;
import holloway.geometry.Point3;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The shapes of a plan. */
final class PlanShapes {
  /** Width drawn for a cable that the catalogue does not have, millimetres. */
  private static final double USUAL = 6;

  /** Points nearer than this are one, millimetres. */
  private static final double SAME = 0.1;

  private final Plan plan;
  private final Map<String, Air> air;
  private final Set<String> guessed;

  /**
   * @param air of a room or before the outer walls, by the id of the hollow
   * @param guessed ids of hollows that nobody knows the way of
   */
  PlanShapes(Plan plan, Map<String, Air> air, Set<String> guessed) {
    this.plan = plan;
    this.air = air;
    this.guessed = guessed;
  }

  /** Ids of the runs that lie in a hollow, by the hollow's id. */
  Map<String, List<String>> runsByHollow() {
    Map<String, List<String>> out = new LinkedHashMap<>();
    for (Plan.PlannedRun run : plan.runs()) {
      run.steps().stream()
          .filter(s -> s.kind().equals("leg"))
          .map(Plan.PlanStep::id)
          .distinct()
          .forEach(id -> out.computeIfAbsent(id, k -> new ArrayList<>()).add(run.id()));
    }
    return out;
  }

  List<Scene.End> ends() {
    Map<String, Scene.End> out = new LinkedHashMap<>();
    for (Plan.PlannedRun r : plan.runs()) {
      if (!r.steps().isEmpty()) {
        List<Point3> first = r.steps().get(0).path();
        List<Point3> last = r.steps().get(r.steps().size() - 1).path();
        end(out, r.from(), first.get(0));
        end(out, r.to(), last.get(last.size() - 1));
      }
    }
    return List.copyOf(out.values());
  }

  private static void end(Map<String, Scene.End> to, String name, Point3 at) {
    to.putIfAbsent(name, new Scene.End(name, Vec.of(at), name.equals("cabinet")));
  }

  /** A run on its true way. */
  private record Way(Plan.PlannedRun run, int number, List<Vec> path, List<Integer> steps) {
    double width() {
      return Cable.find(run.cable()).map(c -> c.outside().toMm()).orElse(USUAL);
    }
  }

  List<Scene.Tube> tubes() {
    List<Way> ways = new ArrayList<>();
    for (int n = 0; n < plan.runs().size(); n++) {
      Way way = way(n);
      if (way.path.size() > 1) {
        ways.add(way);
      }
    }
    List<Lanes.Laid> laid =
        Lanes.of(
            ways.stream()
                .map(w -> new Lanes.Line(w.path, w.steps, w.width(), air(w.run)))
                .toList());
    List<Scene.Tube> out = new ArrayList<>();
    for (int i = 0; i < ways.size(); i++) {
      Way w = ways.get(i);
      String words = "%s, %s to %s".formatted(w.run.cable(), w.run.from(), w.run.to());
      out.add(
          new Scene.Tube(
              w.run.id(),
              w.number,
              words,
              w.path,
              w.steps,
              guessed(w.run),
              laid.get(i),
              w.width(),
              w.run.routeM()));
    }
    return out;
  }

  private Set<Integer> guessed(Plan.PlannedRun run) {
    return IntStream.range(0, run.steps().size())
        .filter(s -> guessed.contains(run.steps().get(s).id()))
        .boxed()
        .collect(Collectors.toSet());
  }

  private Map<Integer, Air> air(Plan.PlannedRun run) {
    Map<Integer, Air> out = new HashMap<>();
    for (int s = 0; s < run.steps().size(); s++) {
      Air own = air.get(run.steps().get(s).id());
      if (own != null) {
        out.put(s, own);
      }
    }
    return out;
  }

  private Way way(int number) {
    Plan.PlannedRun run = plan.runs().get(number);
    List<Vec> path = new ArrayList<>();
    List<Integer> steps = new ArrayList<>();
    for (int s = 0; s < run.steps().size(); s++) {
      for (Point3 p : run.steps().get(s).path()) {
        Vec v = Vec.of(p);
        if (path.isEmpty() || path.get(path.size() - 1).minus(v).length() > SAME) {
          path.add(v);
          steps.add(s);
        }
      }
    }
    return new Way(run, number, path, steps);
  }

  List<Scene.Pin> pins() {
    Set<String> unlawful =
        plan.findings().stream()
            .filter(Plan.FindingLine::breaksLaw)
            .map(Plan.FindingLine::place)
            .collect(Collectors.toSet());
    List<Scene.Pin> out = new ArrayList<>();
    for (Plan.PlannedHole h : plan.holes()) {
      boolean axis = !h.axis().isEmpty();
      Point3 from = axis ? h.axis().get(0) : h.at();
      Point3 to = axis ? h.axis().get(h.axis().size() - 1) : h.at();
      String words = "%s, %d mm, %s".formatted(h.kind(), h.diameterMm(), h.method());
      out.add(
          new Scene.Pin(
              h.id(),
              h.label(),
              words,
              Vec.of(from),
              Vec.of(to),
              h.diameterMm(),
              h.runs(),
              unlawful.contains(h.id())));
    }
    return out;
  }

  List<Scene.Flag> flags() {
    List<Scene.Flag> out = new ArrayList<>();
    for (Plan.FindingLine f : plan.findings()) {
      f.at().ifPresent(p -> out.add(new Scene.Flag(f.rule(), f.severity(), f.text(), Vec.of(p))));
    }
    return out;
  }
}
