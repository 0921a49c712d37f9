package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.limits.CablingFigures;
import java.util.List;

/** A3-1: how far 10GBASE-T goes on Cat 6. */
final class TenGigabitReach implements PlanRule {
  @Override
  public String id() {
    return "ten-gigabit-reach";
  }

  @Override
  public String about() {
    return "A Cat 6 cable too long for 10GBASE-T to be expected on it. What speed is wanted is not"
        + " asked: at 1 and 2.5 Gbit/s there is nothing to do.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", CablingFigures.TEN_CAT6.cited(), "37 m; 100 m of Cat 6A");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return Legs.of(finished.plan()).stream()
        .filter(r -> r.run().cable().endsWith("cat6"))
        .filter(r -> r.run().cableM() > CablingFigures.TEN_CAT6.value())
        .map(this::finding)
        .toList();
  }

  private Finding finding(Legs r) {
    double m = r.run().cableM();
    boolean far = m > CablingFigures.TEN_CAT6_MOST.value();
    String what =
        "%s is Cat 6, and so long that 10GBASE-T %s."
            .formatted(
                r.run().id(),
                far ? "is not to be expected on it" : "hangs on what the cables beside it leak");
    return say(
        Severity.PRACTICE,
        r.place(),
        CablingFigures.TEN_CAT6.cited(),
        false,
        new Said(
            what,
            Legs.metres(m),
            Legs.metres(CablingFigures.TEN_CAT6.value()),
            "If 10 Gbit/s are wanted there, pull Cat 6A or fibre; slower links are not touched."));
  }
}
