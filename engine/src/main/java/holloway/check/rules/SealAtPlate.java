package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.framing.MemberKind;
import holloway.hollow.SiteKind;
import holloway.limits.FireFigures;
import java.util.List;

/** C3-4: holes through plates, floors and ceilings open a way for fire from space to space. */
final class SealAtPlate implements PlanRule {
  @Override
  public String id() {
    return "seal-at-plate";
  }

  @Override
  public String about() {
    return "A hole through a plate, a floor or a ceiling opens a way for fire from one space to the"
        + " next and must be closed round the cables. Of holes in a garage's separation that rule"
        + " speaks.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US), standard (UK), practice elsewhere",
        FireFigures.BLOCK_SOURCE,
        "sealed round the cables");
  }

  @Override
  public List<Finding> find(Finished finished) {
    FireDuty duty = FireDuty.of(finished.place(), FireFigures.BLOCK_SOURCE);
    return finished.holes().stream()
        .filter(m -> parts(m, finished) && !GarageSeparation.through(m, finished))
        .map(
            m ->
                say(
                    duty.severity(),
                    Place.of(m.hole().id(), m.hole().at()),
                    duty.source(),
                    false,
                    new Said(
                        m.hole().label() + " opens a way for fire from one space to the next.",
                        bored(m),
                        "no open gap",
                        "Close it round the cables with fire caulk, or mineral wool held in place,"
                            + " when all cables are in. The local code decides.")))
        .toList();
  }

  /** Plates, floors, and the ceiling of a room under an attic or joists. */
  private static boolean parts(Finished.Made m, Finished finished) {
    return m.site().kind() == SiteKind.CEILING
        || finished.pierces(
            m.site(), MemberKind.TOP_PLATE, MemberKind.BOTTOM_PLATE, MemberKind.SUBFLOOR);
  }

  /** The hole's diameter and what fills it, as a finding's measured value. */
  static String bored(Finished.Made made) {
    int cables = made.hole().runs().size();
    return "%d mm round %d cable%s"
        .formatted((long) made.hole().diameterMm(), cables, cables == 1 ? "" : "s");
  }
}
