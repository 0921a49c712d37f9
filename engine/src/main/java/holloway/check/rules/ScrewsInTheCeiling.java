package holloway.check.rules;

import holloway.finding.Finding;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** B17: over a strapped ceiling cable lies on its lining, where any screw finds it. */
final class ScrewsInTheCeiling extends BehindLining {
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
    PlacedRoom room = room(s, finished).orElseThrow();
    return judge(
        s,
        (foot(s, finished) - room.ceilingZ()) / 1e6,
        "Cable lies on the lining of the ceiling of " + room.name() + ".",
        "Note on the plan of the house where it lies; drive no screw, hook or lamp fixing into that"
            + " ceiling along it, and none at the sides of the straps there.",
        finished);
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
