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
 * @param judged the rules and the referee have looked at the plan; one that is only sketched has
 *     neither cards nor tapes nor findings, and is never printed
 */
public record PlannedHouse(
    HollowHouse hollows,
    Request request,
    Plan plan,
    Map<String, HoleCard> cards,
    Map<String, Tapes> tapes,
    UnitSystem units,
    boolean judged) {
  /** With a plan that was judged. */
  public PlannedHouse(
      HollowHouse hollows,
      Request request,
      Plan plan,
      Map<String, HoleCard> cards,
      Map<String, Tapes> tapes,
      UnitSystem units) {
    this(hollows, request, plan, cards, tapes, units, true);
  }

  /** With a plan that nobody has judged. */
  static PlannedHouse sketched(HollowHouse hollows, Request request, Plan plan, UnitSystem units) {
    return new PlannedHouse(hollows, request, plan, Map.of(), Map.of(), units, false);
  }

  public Placed placed() {
    return hollows.framed().placed();
  }

  /** The same in other units; the cards' own texts stay as they are. */
  public PlannedHouse in(UnitSystem other) {
    return new PlannedHouse(hollows, request, plan, cards, tapes, other, judged);
  }
}
