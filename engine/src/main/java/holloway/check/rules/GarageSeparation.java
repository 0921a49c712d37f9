package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.limits.FireFigures;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** C3-8 to C3-14: holes and boxes in the board between a garage and the house or attic. */
final class GarageSeparation implements PlanRule {
  private static final String SEAL =
      "Fill the gap round the cables with a material that resists the free passage of flame (fire"
          + " caulk, or mineral wool held in place) and leave the garage's board whole otherwise."
          + " The local code decides.";

  @Override
  public String id() {
    return "garage-separation";
  }

  @Override
  public String about() {
    return "A hole or a box cut through the wall or ceiling between a garage and the house or attic"
        + " must be sealed so that fire does not pass.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US), standard (UK), practice elsewhere",
        FireFigures.GARAGE_SOURCE,
        "sealed round the cables");
  }

  @Override
  public List<Finding> find(Finished finished) {
    FireDuty duty = FireDuty.of(finished.place(), FireFigures.GARAGE_SOURCE);
    List<Finding> out = new ArrayList<>();
    for (Finished.Made made : finished.holes()) {
      if (through(made, finished)) {
        out.add(
            say(
                duty.severity(),
                Place.of(made.hole().id(), made.hole().at()),
                duty.source(),
                false,
                new Said(
                    made.hole().label() + " goes through the garage separation.",
                    SealAtPlate.bored(made),
                    "no open gap",
                    SEAL)));
      }
    }
    boxes(finished, duty, out);
    return out;
  }

  /** A hole to the outside parts the garage from nothing of the house. */
  static boolean through(Finished.Made made, Finished finished) {
    return !OuterWallHole.isOutside(finished, made.site())
        && finished.pierced(made.site()).stream().anyMatch(m -> isSeparation(m, finished));
  }

  private static boolean isSeparation(Member m, Finished finished) {
    if (m.kind() != MemberKind.LINING && m.kind() != MemberKind.MASONRY) {
      return false;
    }
    return finished.isGarage(m.owner())
        || finished.wall(m.owner()).map(finished::separates).orElse(false);
  }

  /** Boxes cut into a separation wall: the first leg of a run lies in that wall's bay. */
  private void boxes(Finished finished, FireDuty duty, List<Finding> out) {
    TreeSet<String> done = new TreeSet<>();
    for (Plan.PlannedRun run : finished.plan().runs()) {
      List<Plan.PlanStep> legs = run.steps().stream().filter(s -> s.kind().equals("leg")).toList();
      if (!legs.isEmpty()) {
        box(finished, duty, run.from(), legs.get(0), true, done, out);
        box(finished, duty, run.to(), legs.get(legs.size() - 1), false, done, out);
      }
    }
  }

  private void box(
      Finished finished,
      FireDuty duty,
      String end,
      Plan.PlanStep leg,
      boolean atStart,
      TreeSet<String> done,
      List<Finding> out) {
    boolean cut =
        finished
            .house()
            .findHollow(leg.id())
            .filter(h -> h.blind())
            .flatMap(h -> finished.wall(h.owner()))
            .map(finished::separates)
            .orElse(false);
    if (cut && facesGarage(finished, end) && done.add(end)) {
      var at = leg.path().get(atStart ? 0 : leg.path().size() - 1);
      String text = "The box for " + end + " is cut into the garage separation.";
      out.add(
          say(
              duty.severity(),
              Place.of(end, at),
              duty.source(),
              false,
              new Said(text, "one box", "no open gap", SEAL)));
    }
  }

  private static boolean facesGarage(Finished finished, String end) {
    if (end.equals("cabinet")) {
      return finished.isGarage(finished.request().cabinet().at().face().room());
    }
    Optional<Outlet> outlet =
        finished.request().outlets().stream().filter(o -> o.name().equals(end)).findFirst();
    return outlet.isPresent()
        && outlet.get().spots().stream()
            .anyMatch(s -> s instanceof Spot.OnWall w && finished.isGarage(w.at().face().room()));
  }
}
