package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.limits.CablingFigures;
import holloway.request.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A3-1, A3-5: how far 10GBASE-T goes on Cat 6, and what Cat 5e carries of 5GBASE-T. */
final class TenGigabitReach implements PlanRule {
  @Override
  public String id() {
    return "ten-gigabit-reach";
  }

  @Override
  public String about() {
    return "A Cat 6 cable too long for 10GBASE-T to be expected on it. Where a slower speed"
        + " is stated (job: speed) there is nothing to do; where 5 or 10 Gbit/s are, Cat 5e is told"
        + " too.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", CablingFigures.TEN_CAT6.cited(), "37 m; 100 m of Cat 6A");
  }

  @Override
  public List<Finding> find(Finished finished) {
    Optional<Job.Speed> asked = finished.job().speed();
    if (asked.filter(s -> s == Job.Speed.G5).isPresent()) {
      return Legs.of(finished.plan()).stream()
          .filter(r -> r.run().cable().equals("cat5e"))
          .map(this::leaks)
          .toList();
    }
    if (asked.filter(s -> s != Job.Speed.G10).isPresent()) {
      return List.of();
    }
    List<Finding> out = new ArrayList<>();
    for (Legs r : Legs.of(finished.plan())) {
      boolean six = r.run().cable().endsWith("cat6");
      if (six && r.run().cableM() > CablingFigures.TEN_CAT6.value()) {
        out.add(finding(r, asked.isPresent()));
      } else if (r.run().cable().equals("cat5e") && asked.isPresent()) {
        out.add(notMade(r));
      }
    }
    return out;
  }

  private Finding finding(Legs r, boolean asked) {
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
            asked
                ? "10 Gbit/s are asked of it: pull Cat 6A or fibre."
                : "If 10 Gbit/s are wanted there, pull Cat 6A or fibre; slower links are not"
                    + " touched. No speed is stated (job: speed)."));
  }

  private Finding leaks(Legs r) {
    return say(
        Severity.STANDARD,
        r.place(),
        Source.anywhere("IEEE 802.3bz; TIA TSB-5021"),
        false,
        new Said(
            r.run().id()
                + " is Cat 5e, and 5 Gbit/s are asked of it: that hangs on what the cables beside it"
                + " leak.",
            "Cat 5e",
            "Cat 6 or better to 100 m",
            "Pull Cat 6; or count on 2.5 Gbit/s, which Cat 5e carries to 100 m."));
  }

  private Finding notMade(Legs r) {
    return say(
        Severity.STANDARD,
        r.place(),
        CablingFigures.TEN_CAT6.cited(),
        true,
        new Said(
            r.run().id() + " is Cat 5e, and 10 Gbit/s are asked of it.",
            "Cat 5e",
            "Cat 6 up to 37 m, Cat 6A to 100 m",
            "Pull Cat 6A or fibre: 10GBASE-T is not made for Cat 5e."));
  }
}
