package holloway.check;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The steps of a run, each knowing what stands before and after it. */
final class Walk {
  private Walk() {}

  /** A step of a run by its index. */
  record At(Plan.PlannedRun run, int index) {
    Plan.PlanStep step() {
      return run.steps().get(index);
    }

    boolean isLeg() {
      return step().kind().equals("leg");
    }

    boolean isCrossing() {
      return step().kind().equals("crossing");
    }

    /** Id of the hollow a leg lies in; empty for a crossing. */
    String hollow() {
      return isLeg() ? step().id() : "";
    }

    Optional<At> before() {
      return index == 0 ? Optional.empty() : Optional.of(new At(run, index - 1));
    }

    Optional<At> after() {
      return index + 1 == run.steps().size()
          ? Optional.empty()
          : Optional.of(new At(run, index + 1));
    }

    Mm start() {
      return Mm.of(step().path().get(0));
    }

    Mm end() {
      return Mm.of(step().path().get(step().path().size() - 1));
    }

    /** Consecutive pairs of the path. */
    List<Span> spans() {
      List<Span> out = new ArrayList<>();
      for (int i = 0; i + 1 < step().path().size(); i++) {
        out.add(new Span(Mm.of(step().path().get(i)), Mm.of(step().path().get(i + 1))));
      }
      return out;
    }

    boolean isBlind() {
      return step().feed().orElse("").equals("blind");
    }

    double pathMm() {
      return spans().stream().mapToDouble(Span::length).sum();
    }
  }

  static List<At> of(Plan.PlannedRun run) {
    List<At> out = new ArrayList<>();
    for (int i = 0; i < run.steps().size(); i++) {
      out.add(new At(run, i));
    }
    return out;
  }
}
