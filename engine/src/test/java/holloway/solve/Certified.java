package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.certify.Checker;
import holloway.certify.Question;
import holloway.certify.Verdict;
import holloway.plan.Certificate;
import holloway.plan.Plan;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Asks the checker about a plan's certificate, for tests. */
final class Certified {
  private Certified() {}

  static Verdict check(RouteGraph graph, Order order, Solved s) {
    return check(graph, order, s.plan(), s.bound());
  }

  static Verdict check(RouteGraph graph, Order order, Plan plan, Certificate c) {
    return Checker.check(graph, question(order, plan), c);
  }

  /** What is said of the proof with other shares in its first part; "accepted" if nothing. */
  static String refusal(RouteGraph graph, Order order, Solved s, List<Certificate.Share> shares) {
    Certificate c = s.bound();
    Certificate.Part p = c.parts().get(0);
    Certificate changed =
        new Certificate(
            c.profile(),
            c.bound(),
            c.grain(),
            c.paidByAll(),
            c.zones(),
            c.runs(),
            c.directed(),
            List.of(
                new Certificate.Part(p.prepaid(), p.shut(), p.bound(), p.impossible(), shares)));
    return check(graph, order, s.plan(), changed).refusal().orElse("accepted");
  }

  /** The proof with its first part's shares changed is refused in these words. */
  static void assertSees(
      RouteGraph graph,
      Order order,
      Solved s,
      String words,
      Consumer<List<Certificate.Share>> change) {
    List<Certificate.Share> list = new ArrayList<>(s.bound().parts().get(0).shares());
    change.accept(list);
    String said = refusal(graph, order, s, list);
    assertTrue(said.contains(words), said);
  }

  static Question question(Order order, Plan plan) {
    Set<String> routed = plan.runs().stream().map(Plan.PlannedRun::id).collect(Collectors.toSet());
    List<Question.Run> runs =
        order.runs().stream()
            .filter(r -> routed.contains(r.id()))
            .map(r -> new Question.Run(r.id(), r.from(), r.to(), r.cable()))
            .toList();
    return new Question(runs, order.profile().word(), order.bans(), order.pins());
  }
}
