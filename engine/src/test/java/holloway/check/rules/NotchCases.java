package holloway.check.rules;

import holloway.finding.Finding;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;

/**
 * Notches in a 2x10 of a floor and in the 2x4 of a wall, at their limit and just past it; and a
 * hole planned before anybody knew of the notch beside it.
 */
final class NotchCases {
  private static final String JOIST =
      "notches: [{ below-floor-of: bedroom, at: [west 2 ft, south 5 ft], edge: top,"
          + " depth: %s, length: %s }]";
  private static final String STUD =
      "notches: [{ side: office south, from: west 4 ft, height: 4 ft, depth: %s, length: 2 in }]";

  private NotchCases() {}

  static List<HoleCases.Both> all() {
    WrittenHouse bare = WrittenHouse.of(TwoStoreys.TEXT);
    Plan plan = bare.plan();
    return List.of(
        // 9.25 in: a sixth is 1.5417 in, a third 3.0833
        both(plan, JOIST.formatted("1.55 in", "3 in"), JOIST.formatted("1.54 in", "3 in")),
        both(plan, JOIST.formatted("1 in", "3.09 in"), JOIST.formatted("1 in", "3.08 in")),
        // an outer stud of 3.5 in: a quarter is 0.875 in
        both(plan, STUD.formatted("0.88 in"), STUD.formatted("0.87 in")),
        // nothing is known outside the spacing of a joist
        both(
            plan,
            JOIST
                .formatted("1 in", "1 in")
                .replace("below-floor-of: bedroom", "below-floor-of: den"),
            JOIST.formatted("1 in", "1 in")));
  }

  private static HoleCases.Both both(Plan plan, String over, String at) {
    return new HoleCases.Both(found(plan, over), found(plan, at));
  }

  private static List<Finding> found(Plan plan, String notches) {
    WrittenHouse house = WrittenHouse.of(TwoStoreys.TEXT, notches + "\n");
    return PlanRules.find(plan, house.hollows(), house.request());
  }
}
