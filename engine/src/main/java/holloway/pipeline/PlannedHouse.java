package holloway.pipeline;

import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.schedule.HoleCard;
import holloway.schedule.Tapes;
import holloway.survey.Placed;
import holloway.units.UnitSystem;
import java.util.Map;

/**
 * A house with its plan as they are drawn.
 *
 * @param cards by hole id; {@code tapes} where their lines lie
 */
public record PlannedHouse(
    HollowHouse hollows,
    Request request,
    Plan plan,
    Map<String, HoleCard> cards,
    Map<String, Tapes> tapes,
    UnitSystem units) {
  public Placed placed() {
    return hollows.framed().placed();
  }

  /** The same in other units; the cards' own texts stay as they are. */
  public PlannedHouse in(UnitSystem other) {
    return new PlannedHouse(hollows, request, plan, cards, tapes, other);
  }
}
