package holloway.schedule;

import holloway.geometry.Point3;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Cuts a run into its stretches. A crossing belongs to the stretch it leads into. */
final class StretchFinder {
  private final Places places;
  private final Map<String, Plan.PlannedHole> holes = new TreeMap<>();

  StretchFinder(Plan plan, Places places) {
    this.places = places;
    plan.holes().forEach(h -> holes.put(h.id(), h));
  }

  List<Stretch> of(Plan.PlannedRun run) {
    List<List<Plan.PlanStep>> parts = parts(run.steps());
    List<Stretch> out = new ArrayList<>();
    double metres = 0;
    WorkPlace at = places.end(run.from(), first(parts.get(0)));
    for (int i = 0; i < parts.size(); i++) {
      List<Plan.PlanStep> part = parts.get(i);
      boolean last = i + 1 == parts.size();
      WorkPlace to = last ? end(run, part) : between(part, parts.get(i + 1)).orElse(at);
      metres += part.stream().mapToDouble(Plan.PlanStep::m).sum();
      out.add(new Stretch(run, out.size(), fish(part).isPresent(), part, at, to, metres, last));
      at = to;
    }
    return joined(out);
  }

  /** What hands do without leaving their place is one stretch. */
  private static List<Stretch> joined(List<Stretch> parts) {
    List<Stretch> out = new ArrayList<>();
    for (Stretch s : parts) {
      Stretch before = out.isEmpty() ? null : out.get(out.size() - 1);
      boolean stays = before != null && before.isStill() && s.isStill();
      if (stays && before.to().equals(s.from())) {
        out.remove(out.size() - 1);
        List<Plan.PlanStep> steps = new ArrayList<>(before.steps());
        steps.addAll(s.steps());
        out.add(
            new Stretch(
                s.run(), before.number(), false, steps, s.from(), s.to(), s.firstM(), s.last()));
      } else {
        out.add(
            new Stretch(
                s.run(), out.size(), s.blind(), s.steps(), s.from(), s.to(), s.firstM(), s.last()));
      }
    }
    return out;
  }

  private static List<List<Plan.PlanStep>> parts(List<Plan.PlanStep> steps) {
    List<List<Plan.PlanStep>> out = new ArrayList<>();
    List<Plan.PlanStep> now = new ArrayList<>();
    Optional<Integer> fish = Optional.empty();
    boolean begun = false;
    List<Plan.PlanStep> waiting = new ArrayList<>();
    for (Plan.PlanStep s : steps) {
      waiting.add(s);
      if (!s.kind().equals("leg")) {
        continue;
      }
      boolean goesOn = begun && s.fish().isPresent() && s.fish().equals(fish);
      if (begun && !goesOn) {
        out.add(now);
        now = new ArrayList<>();
      }
      now.addAll(waiting);
      waiting.clear();
      fish = s.fish();
      begun = true;
    }
    now.addAll(waiting);
    out.add(now);
    return out;
  }

  private static Optional<Integer> fish(List<Plan.PlanStep> part) {
    return part.stream().flatMap(s -> s.fish().stream()).findFirst();
  }

  /** A cable that is laid in a zone is let down to its outlet from there. */
  private WorkPlace end(Plan.PlannedRun run, List<Plan.PlanStep> part) {
    return Optional.of(part)
        .filter(p -> fish(p).isEmpty())
        .flatMap(p -> places.hollow(lastLeg(p).id(), last(p)))
        .filter(WorkPlace::isZone)
        .orElseGet(() -> places.end(run.to(), last(part)));
  }

  /** Where hands hold the cable between two stretches. */
  private Optional<WorkPlace> between(List<Plan.PlanStep> a, List<Plan.PlanStep> b) {
    Plan.PlanStep before = lastLeg(a);
    Plan.PlanStep after = b.stream().filter(s -> s.kind().equals("leg")).findFirst().orElse(before);
    Point3 at = before.path().get(before.path().size() - 1);
    return places
        .hollow(before.id(), at)
        .or(() -> places.hollow(after.id(), at))
        .or(() -> crossing(b, at))
        .or(() -> crossing(a, at));
  }

  private Optional<WorkPlace> crossing(List<Plan.PlanStep> part, Point3 at) {
    return part.stream()
        .filter(s -> s.kind().equals("crossing"))
        .flatMap(
            s ->
                holes.containsKey(s.id())
                    ? Optional.of(places.hole(holes.get(s.id()))).stream()
                    : places.find(s.id(), at).stream())
        .findFirst();
  }

  private static Plan.PlanStep lastLeg(List<Plan.PlanStep> part) {
    Plan.PlanStep out = part.get(0);
    for (Plan.PlanStep s : part) {
      out = s.kind().equals("leg") ? s : out;
    }
    return out;
  }

  private static Point3 first(List<Plan.PlanStep> part) {
    return part.get(0).path().get(0);
  }

  private static Point3 last(List<Plan.PlanStep> part) {
    List<Point3> path = part.get(part.size() - 1).path();
    return path.get(path.size() - 1);
  }
}
