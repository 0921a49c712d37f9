package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.limits.FireFigures;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;

/** C3-9: the ceiling of a garage with a room above it is 5/8 in Type X, and stays so. */
final class GarageCeiling implements PlanRule {
  @Override
  public String id() {
    return "garage-ceiling";
  }

  @Override
  public String about() {
    return "A hole in the ceiling of a garage that has a room above it: board of that kind"
        + " goes back, and the hole is sealed.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US), standard (UK), practice elsewhere",
        FireFigures.GARAGE_CEILING.cited(),
        "5/8 in (15.9 mm) Type X");
  }

  @Override
  public List<Finding> find(Finished finished) {
    FireDuty duty = FireDuty.of(finished.place(), FireFigures.GARAGE_CEILING.cited());
    List<Finding> out = new ArrayList<>();
    for (Finished.Made made : finished.holes()) {
      finished.pierced(made.site()).stream()
          .filter(m -> m.kind() == MemberKind.LINING && finished.isGarage(m.owner()))
          .filter(m -> floorAbove(made, finished) || roomAbove(m, made, finished))
          .findFirst()
          .ifPresent(m -> out.add(finding(made, finished, duty.severity(), duty.source())));
    }
    return out;
  }

  /** A bore that ends in a chase or a wall of the storey above comes out in no room of it. */
  private static boolean floorAbove(Finished.Made made, Finished finished) {
    return finished.pierces(made.site(), MemberKind.SUBFLOOR);
  }

  private static boolean roomAbove(Member ceiling, Finished.Made made, Finished finished) {
    long top = made.site().middle().z();
    for (PlacedRoom r : finished.placed().rooms()) {
      if (r.floorZ() >= top - 50_000_000L && r.outline().contains(made.hole().at().plan())) {
        return !r.name().equals(ceiling.owner());
      }
    }
    return false;
  }

  /** All the sheets that the hole goes through, nanometres. */
  private static long thickness(Finished.Made made, Finished finished) {
    return finished.pierced(made.site()).stream()
        .filter(m -> m.kind() == MemberKind.LINING && finished.isGarage(m.owner()))
        .mapToLong(m -> m.box().z().length())
        .sum();
  }

  private Finding finding(Finished.Made made, Finished finished, Severity severity, Source source) {
    double board = thickness(made, finished) / 1e6;
    return say(
        severity,
        Place.of(made.hole().id(), made.hole().at()),
        source,
        false,
        new Said(
            made.hole().label() + " goes through the ceiling of a garage with a room above.",
            Legs.number(board % 1 == 0 ? "%.0f mm of lining" : "%.1f mm of lining", board),
            "15.9 mm (5/8 in) Type X",
            "Bore it no wider than the cables need and seal it round them; if a piece of board is"
                + " cut out, Type X board as thick as the ceiling's goes back. The local code"
                + " decides."));
  }
}
