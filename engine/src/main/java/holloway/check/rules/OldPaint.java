package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.house.RulePlace;
import holloway.limits.EntryFigures;
import java.util.List;

/** E15: patches cut in old painted board. */
final class OldPaint implements PlanRule {
  @Override
  public String id() {
    return "old-paint";
  }

  @Override
  public String about() {
    return "The painted board that the plan's patches take out in a US house of before 1978, all"
        + " rooms together and a square foot each: more than the rule's 6 in one room is possible.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US, for paid work)", EntryFigures.PAINT_INSIDE.cited(), "6 sq ft (0.56 m2) a room");
  }

  @Override
  public List<Finding> find(Finished finished) {
    int built = finished.placed().house().built().value();
    int patches = finished.plan().totals().patches();
    double area = patches * EntryFigures.PATCH_AREA.value();
    boolean old = finished.place() == RulePlace.US && built < EntryFigures.PAINT_BEFORE.value();
    return old && area > EntryFigures.PAINT_INSIDE.value()
        ? List.of(finding(patches, area))
        : List.of();
  }

  private Finding finding(int patches, double area) {
    return say(
        Severity.LAW,
        Place.of("house"),
        EntryFigures.PAINT_INSIDE.cited().noting(" (for paid work; area of a patch is our guess)"),
        false,
        new Said(
            "%d patches take out about %.0f sq ft of old paint.".formatted(patches, area),
            Legs.number("%.0f sq ft", area),
            "6 sq ft a room",
            "Have the paint tested; for paid work in one room above the limit a certified"
                + " renovator is needed. Keep dust wet and children out."));
  }
}
