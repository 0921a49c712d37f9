package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import java.util.List;

/** A hole whose place hangs on a layout that nobody has found yet. */
final class FindTheStudFirst implements PlanRule {
  @Override
  public String id() {
    return "find-the-stud-first";
  }

  @Override
  public String about() {
    return "Where studs or joists are assumed, find them before the hole is bored, and tell the house"
        + " file.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", Source.PRACTICE, "members found, not assumed");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return finished.holes().stream()
        .filter(m -> m.hole().assumed())
        .map(
            m ->
                say(
                    Severity.PRACTICE,
                    Place.of(m.hole().id(), m.hole().at()),
                    Source.PRACTICE,
                    false,
                    new Said(
                        m.hole().label() + " hangs on an assumed layout.",
                        "assumed",
                        "measured or opened up",
                        "Find the studs or joists on both sides of it first; if they stand"
                            + " elsewhere, write where and plan again.")))
        .toList();
  }
}
