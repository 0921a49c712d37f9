package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Source;
import holloway.framing.MemberKind;
import holloway.limits.FireFigures;
import java.util.List;

/** C3-7: a fire block that is bored must go on stopping fire. */
final class FireBlockCrossed implements PlanRule {
  @Override
  public String id() {
    return "fire-block-crossed";
  }

  @Override
  public String about() {
    return "A hole through a fire block must be closed so that the block keeps its worth.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US), standard (UK), practice elsewhere",
        Source.us("IRC E3402.3").and(FireFigures.BLOCK_SOURCE),
        "sealed round the cables");
  }

  @Override
  public List<Finding> find(Finished finished) {
    FireDuty duty =
        FireDuty.of(finished.place(), Source.us("IRC E3402.3").and(FireFigures.BLOCK_SOURCE));
    return finished.holes().stream()
        .filter(m -> finished.pierces(m.site(), MemberKind.FIRE_BLOCK))
        .map(
            m ->
                say(
                    duty.severity(),
                    Place.of(m.hole().id(), m.hole().at()),
                    duty.source(),
                    false,
                    new Said(
                        m.hole().label() + " goes through a fire block.",
                        SealAtPlate.bored(m),
                        "no open gap",
                        "Close the gap round the cables with fire caulk so that the block stays"
                            + " whole. The local code decides.")))
        .toList();
  }
}
