package holloway.pipeline;

import holloway.certify.Checker;
import holloway.certify.Question;
import holloway.certify.Verdict;
import holloway.plan.Certificate;
import holloway.plan.Plan;
import holloway.routing.RouteGraph;
import holloway.solve.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts the checker's question for a plan and its certificate. */
final class Proofs {
  private Proofs() {}

  /** Sentences; empty when the plan's bound is proven. */
  static List<String> faults(RouteGraph graph, Plan plan, Certificate certificate, Order order) {
    Set<String> routed = plan.runs().stream().map(Plan.PlannedRun::id).collect(Collectors.toSet());
    List<Question.Run> runs =
        order.runs().stream()
            .filter(r -> routed.contains(r.id()))
            .map(r -> new Question.Run(r.id(), r.from(), r.to(), r.cable()))
            .toList();
    Question question = new Question(runs, plan.profile(), order.bans(), order.pins());
    Verdict verdict = Checker.check(graph, question, certificate);
    List<String> out = new ArrayList<>(verdict.refusal().stream().toList());
    Plan.Totals t = plan.totals();
    if (verdict.accepted() && t.bound() > verdict.bound()) {
      out.add(
          "the bound is not proven: the plan says %d, its certificate proves %d"
              .formatted(t.bound(), verdict.bound()));
    }
    if (verdict.accepted() && t.objective() < verdict.bound()) {
      out.add(
          "the plan costs %d, less than the %d that its certificate proves every plan to cost"
              .formatted(t.objective(), verdict.bound()));
    }
    return List.copyOf(out);
  }
}
