package holloway.check.rules;

import holloway.check.ToyRequest;
import holloway.finding.Finding;
import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import java.util.List;

/** What the rules find in a plan for the toy house. */
final class Found {
  private Found() {}

  static List<Finding> find(Plan plan, HollowHouse house) {
    return PlanRules.find(plan, house, ToyRequest.of());
  }

  static List<Finding> of(String rule, List<Finding> findings) {
    return findings.stream().filter(f -> f.rule().equals(rule)).toList();
  }
}
