package holloway.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import java.util.List;

/** What the referee says of a plan for the toy house, one fault a plan. */
final class Judged {
  private Judged() {}

  static List<Refusal> judge(Plan plan) {
    return Referee.check(plan, ToyHouse.build(), ToyRequest.of()).refusals();
  }

  static void assertRefused(Plan plan, int step, String text) {
    says(Referee.check(plan, ToyHouse.build(), ToyRequest.of()), step, text);
  }

  /** {@code step} counts from 1; 0 for what is no single step's fault. */
  static void says(Verdict verdict, int step, String text) {
    assertTrue(
        verdict.refusals().stream().anyMatch(r -> r.step() == step && r.text().contains(text)),
        () -> "expected '" + text + "' at step " + step + ", got " + verdict.refusals());
  }
}
