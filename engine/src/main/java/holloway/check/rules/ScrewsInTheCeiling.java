package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.limits.Figure;
import holloway.limits.RuleKey;
import holloway.limits.TimberFigures;
import holloway.plan.Plan;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** B17: over a strapped ceiling cable lies on its lining, where any screw finds it. */
final class ScrewsInTheCeiling implements PlanRule {
  @Override
  public String id() {
    return "screws-in-the-ceiling";
  }

  @Override
  public String about() {
    return "Cable in the void over a strapped ceiling lies on its lining: what a screw passes before"
        + " it meets the cable. Beside straps the same is law for power wiring (NEC 300.4(D)),"
        + " good practice for data cable.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "practice",
        TimberFigures.PLATE_EDGE.from().noting(" (asked for power wiring)"),
        "1-1/4 in (32 mm)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    Map<String, Plan.PlanStep> first = new TreeMap<>();
    for (Legs r : Legs.of(finished.plan())) {
      r.in(HollowKind.BATTEN_VOID)
          .forEach(s -> room(s, finished).ifPresent(p -> first.putIfAbsent(p.name(), s)));
    }
    List<Finding> out = new ArrayList<>();
    first.values().forEach(s -> judge(s, finished).ifPresent(out::add));
    return out;
  }

  private Optional<Finding> judge(Plan.PlanStep s, Finished finished) {
    Figure figure = finished.figure(RuleKey.NAIL_PLATE_EDGE, TimberFigures.PLATE_EDGE);
    PlacedRoom room = room(s, finished).orElseThrow();
    double lining = (foot(s, finished) - room.ceilingZ()) / 1e6;
    return lining >= figure.length().toMm()
        ? Optional.empty()
        : Optional.of(
            say(
                finished.severity(RuleKey.NAIL_PLATE_EDGE, Severity.PRACTICE),
                Place.of(s.id(), Legs.start(s)),
                NailPlate.source(finished),
                false,
                new Said(
                    "Cable lies on the lining of the ceiling of " + room.name() + ".",
                    Legs.number("%.1f mm", lining),
                    figure.said(),
                    "Note on the plan of the house where it lies; drive no screw, hook or lamp"
                        + " fixing into that ceiling along it, and none at the sides of the"
                        + " straps there.")));
  }

  private static long foot(Plan.PlanStep s, Finished finished) {
    Hollow h = finished.house().findHollow(s.id()).orElseThrow();
    return h.frame().origin().z() + h.clear().z0();
  }

  /** The room whose ceiling lies right under the leg. */
  private static Optional<PlacedRoom> room(Plan.PlanStep s, Finished finished) {
    return finished.placed().rooms().stream()
        .filter(r -> r.outline().contains(Legs.start(s).plan()))
        .filter(r -> r.ceilingZ() <= foot(s, finished))
        .max(Comparator.comparingLong(PlacedRoom::ceilingZ));
  }
}
