package holloway.check;

import holloway.geometry.SiteFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Collects refusals while the rules go over a plan. */
final class Charge {
  private final SiteFrame site;
  private final List<Refusal> refusals = new ArrayList<>();

  /** {@code site}: whose coordinates the plan is written in, and points are told in. */
  Charge(SiteFrame site) {
    this.site = site;
  }

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
    Object[] told = Stream.of(values).map(v -> v instanceof Mm p ? p.in(site) : v).toArray();
    refusals.add(new Refusal(run, step, place, String.format(java.util.Locale.ROOT, text, told)));
  }

  Verdict verdict() {
    return new Verdict(refusals);
  }
}
