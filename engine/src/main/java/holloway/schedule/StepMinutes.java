package holloway.schedule;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * The plan's minutes laid on the steps of the work: boring on the step that bores, getting set up
 * on the first step in a zone, legs on the pulls of their run by length. Steps that the plan has no
 * minutes for (measuring, marking, ends, tests) have none.
 */
public final class StepMinutes {
  private final List<Step> steps;
  private final Map<String, Double> out = new TreeMap<>();

  private StepMinutes(List<Step> steps) {
    this.steps = steps;
  }

  /** By step id; all of them add up to the minutes of the plan's works and legs. */
  public static Map<String, Double> of(Plan plan, WorkSchedule work) {
    StepMinutes m = new StepMinutes(work.steps());
    if (!work.steps().isEmpty()) {
      plan.works().forEach(w -> m.work(plan, w));
      plan.runs().forEach(r -> m.legs(r, work.pulls()));
    }
    return m.out;
  }

  private void work(Plan plan, Plan.PlannedWork w) {
    List<Step> whose =
        switch (w.kind()) {
          case "zone" -> first(s -> s.at().id().equals(zone(w)) || isOther(s, zone(w)));
          case "bore" ->
              plan.holes().stream()
                  .filter(h -> h.works().contains(w.id()))
                  .flatMap(h -> first(s -> drills(s, h.id())).stream())
                  .limit(1)
                  .toList();
          default -> steps.stream().filter(s -> s.subject().equals(w.id())).toList();
        };
    share(whose, w.minutes(), s -> 1);
  }

  private static String zone(Plan.PlannedWork w) {
    return w.id().replaceFirst("^set-up/", "");
  }

  private static boolean isOther(Step s, String zone) {
    return s.other().map(o -> o.id().equals(zone)).orElse(false);
  }

  private static boolean drills(Step s, String hole) {
    return s.kind() == Step.Kind.DRILL && s.subject().equals(hole);
  }

  private List<Step> first(Predicate<Step> which) {
    return steps.stream().filter(which).limit(1).toList();
  }

  private void legs(Plan.PlannedRun run, List<Pull> pulls) {
    Map<String, Double> metres = new HashMap<>();
    List<Step> mine = new ArrayList<>();
    for (Pull p : pulls) {
      if (p.runs().contains(run.id())) {
        metres.put(p.id(), Math.max(0.01, p.metres()));
        mine.addAll(first(s -> s.kind() == Step.Kind.PULL && s.subject().equals(p.id())));
      }
    }
    double minutes = run.steps().stream().mapToDouble(s -> s.minutes().orElse(0.0)).sum();
    share(mine, minutes, s -> metres.get(s.subject()));
  }

  /** To the last step of all where nobody does it, so that nothing is lost. */
  private void share(List<Step> among, double minutes, ToDoubleFunction<Step> by) {
    List<Step> to = among.isEmpty() ? List.of(steps.get(steps.size() - 1)) : among;
    double all = among.isEmpty() ? 1 : to.stream().mapToDouble(by).sum();
    for (Step s : to) {
      double part = among.isEmpty() ? 1 : by.applyAsDouble(s) / all;
      out.merge(s.id(), minutes * part, Double::sum);
    }
  }
}
