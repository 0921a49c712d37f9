package holloway.check;

import java.util.ArrayList;
import java.util.List;

/** Collects refusals while the rules go over a plan. */
final class Charge {
  private final List<Refusal> refusals = new ArrayList<>();

  void plan(String place, String text, Object... values) {
    step("", 0, place, text, values);
  }

  void run(String run, String place, String text, Object... values) {
    step(run, 0, place, text, values);
  }

  /** {@code index} counts steps from 0 as lists do; the refusal counts from 1 as people do. */
  void step(Walk.At at, String text, Object... values) {
    step(at.run().id(), at.index() + 1, at.step().id(), text, values);
  }

  private void step(String run, int step, String place, String text, Object... values) {
    refusals.add(new Refusal(run, step, place, String.format(java.util.Locale.ROOT, text, values)));
  }

  Verdict verdict() {
    return new Verdict(refusals);
  }
}
