package holloway.check.rules;

import static holloway.check.rules.Found.find;
import static holloway.check.rules.Found.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Spoiled;
import holloway.check.ToyHouse;
import holloway.check.ToyPlan;
import holloway.finding.Finding;
import holloway.house.Fill;
import holloway.plan.Plan;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What holds of every rule and its findings, and where a layout is assumed. */
class PlanRulesTest {
  @Test
  void anAssumedLayoutSaysFindTheStudFirst() {
    Plan good = ToyPlan.good();
    Plan.PlannedHole h = good.holes().get(0);
    Plan.PlannedHole unsure =
        new Plan.PlannedHole(
            h.id(),
            h.label(),
            h.kind(),
            h.diameterMm(),
            h.depthMm(),
            h.at(),
            h.between(),
            h.method(),
            h.stand(),
            h.works(),
            h.minutes(),
            h.runs(),
            true,
            h.otherMethods(),
            h.bores(),
            h.axis(),
            h.through());
    Plan plan = Spoiled.with(good, List.of(unsure, good.holes().get(1)), good.works());
    assertEquals(1, of("find-the-stud-first", find(plan, ToyHouse.build())).size());
    assertEquals(0, of("find-the-stud-first", find(good, ToyHouse.build())).size());
  }

  @Test
  void everyRuleHasItsOwnIdAndSaysWhatItIsAbout() {
    Set<String> ids = new HashSet<>();
    for (PlanRule rule : PlanRules.all()) {
      assertTrue(ids.add(rule.id()), rule.id());
      assertTrue(rule.id().matches("[a-z]+(-[a-z]+)*"), rule.id());
      assertTrue(rule.about().length() > 40 && rule.about().endsWith("."), rule.id());
    }
    assertEquals(ids, PlanRules.about().keySet());
  }

  @Test
  void everyFindingOfAPlanSaysWhereFromWhatAndWhatToDo() {
    for (Finding f : find(Spoiled.withBit(38), ToyHouse.build(Fill.EMPTY, true))) {
      assertFalse(f.source().isBlank());
      assertTrue(f.text().endsWith("."), f.text());
      assertTrue(f.place().at().isPresent(), f.rule());
    }
  }
}
