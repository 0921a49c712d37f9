package holloway.check.rules;

import holloway.finding.Finding;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import holloway.survey.Wall;
import holloway.survey.WallNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** B17: in a service layer cable lies right behind a lining that pictures and shelves hang on. */
final class ScrewsInTheWall extends BehindLining {
  @Override
  public String id() {
    return "screws-in-the-wall";
  }

  @Override
  public String about() {
    return "Cable in a service layer before a framed wall lies right behind its lining, level"
        + " battens let it go along the wall: what a screw passes before it meets the cable."
        + " Beside furring strips the same is law for power wiring (NEC 300.4(D)), good"
        + " practice for data cable.";
  }

  @Override
  public List<Finding> find(Finished finished) {
    Map<String, Plan.PlanStep> first = new TreeMap<>();
    for (Legs r : Legs.of(finished.plan())) {
      r.in(HollowKind.SERVICE_VOID).forEach(s -> first.putIfAbsent(s.id(), s));
      r.in(HollowKind.FURRED_BAY).stream()
          .filter(s -> wall(s, finished).filter(Wall::isFramed).isPresent())
          .forEach(s -> first.putIfAbsent(s.id(), s));
    }
    List<Finding> out = new ArrayList<>();
    first.values().forEach(s -> judge(s, finished).ifPresent(out::add));
    return out;
  }

  private Optional<Finding> judge(Plan.PlanStep s, Finished finished) {
    Optional<Wall> wall = wall(s, finished);
    return judge(
        s,
        wall.map(w -> lining(s, w, finished)).orElse(0.0),
        "Cable lies behind the board of the " + wall.map(w -> place(s, w)).orElse("wall") + ".",
        "Note on the plan of the house where it lies and how high; drive no screw, nail or hook into"
            + " that board along it.",
        finished);
  }

  private static String place(Plan.PlanStep s, Wall w) {
    return WallNames.at(w, w.frame().toLocal(Legs.start(s)).x());
  }

  private static Optional<Wall> wall(Plan.PlanStep s, Finished finished) {
    String owner = finished.house().findHollow(s.id()).map(Hollow::owner).orElse("");
    return finished.placed().walls().stream().filter(w -> w.id().equals(owner)).findFirst();
  }

  /** Millimetres from the nearer face to the void. */
  private static double lining(Plan.PlanStep s, Wall w, Finished finished) {
    var clear = finished.house().findHollow(s.id()).orElseThrow().clear();
    return Math.min(clear.y0(), w.thickness() - clear.y1()) / 1e6;
  }
}
