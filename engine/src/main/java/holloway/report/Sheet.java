package holloway.report;

import holloway.plan.Plan;
import holloway.request.Request;
import holloway.schedule.HoleCard;
import holloway.survey.Placed;
import holloway.units.UnitSystem;
import java.util.Map;
import java.util.Optional;

/**
 * All that the text of a plan is written from.
 *
 * @param cards tape dimensions by hole id; a hole without a card says so
 * @param steps one line for every leg and crossing
 */
public record Sheet(
    Plan plan,
    Placed placed,
    Request request,
    Map<String, HoleCard> cards,
    boolean steps,
    UnitSystem system,
    Ink ink) {
  public Sheet {
    cards = Map.copyOf(cards);
  }

  Optional<HoleCard> findCard(String holeId) {
    return Optional.ofNullable(cards.get(holeId));
  }

  /** Minutes of the plan that are no work but the wished dislike of cable in sight. */
  double dislike() {
    return plan.totals().visibleM() * request.wishes().visibleMetre();
  }

  UnitWords units() {
    return new UnitWords(system);
  }

  PlainWords words() {
    return new PlainWords(placed, request, units());
  }
}
