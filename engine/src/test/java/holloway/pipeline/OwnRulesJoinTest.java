package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.support.TwoRooms;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Rules of one's own rule file: nothing against them is offered, and a plan against them is told.
 */
class OwnRulesJoinTest {
  private static final String HOUSE =
      TwoRooms.UNDER_ONE_ROOF
          + """
      things:
        - { light, in: study, wall: east, from: south 9 ft, height: 7 ft }
      cabinet: { in: den, wall: west, from: south 2 ft, height: 5 ft }
      job: { listings: { om4: ofnp, cat6: cm } }
      wishes: { bans: [outside] }
      outlets:
        - { name: desk, in: study, wall: east, from: south 9 ft, height: 16 in, cables: [cat6, om4] }
      """;

  @TempDir Path folder;

  private Path house(String own) throws Exception {
    Files.writeString(folder.resolve("town.yaml"), "rules: Brookfield\nbased-on: us\nown:\n" + own);
    return Files.writeString(folder.resolve("house.yaml"), HOUSE + "rules: town.yaml\n");
  }

  private Plan plan(String own) throws Exception {
    Answers.Planned p = new Pipeline(Progress.SILENT).plan(house(own), PlanSettings.USUAL);
    assertEquals(List.of(), p.refusals());
    assertEquals(List.of(), broken(p.plan()), "the planner kept to them");
    return p.plan();
  }

  private static List<Plan.FindingLine> broken(Plan plan) {
    return plan.findings().stream().filter(f -> f.rule().equals("own-rule-broken")).toList();
  }

  private static Set<String> spaces(Plan plan, String cable) {
    return plan.runs().stream()
        .filter(r -> r.cable().equals(cable))
        .flatMap(r -> r.steps().stream())
        .flatMap(s -> s.hollow().stream())
        .collect(Collectors.toSet());
  }

  private static final String NO_ATTIC =
      "  - { no-cable-in: attic, unless-listed: riser, source: by-law 4, severity: law }\n";

  @Test
  void aCableKeepsOutOfASpaceThatAnotherMayUse() throws Exception {
    Plan plan = plan(NO_ATTIC);
    assertFalse(spaces(plan, "cat6").contains("attic"), spaces(plan, "cat6").toString());
    assertTrue(spaces(plan, "om4").contains("attic"), spaces(plan, "om4").toString());
  }

  @Test
  void whatIsNotListedForTheOnlyWayHasNone() throws Exception {
    String all =
        "  - { no-cable-in: [attic, room-surface, stud-bay], unless-listed: plenum, source: x }\n";
    Plan plan = plan(all);
    assertEquals(1, plan.unrouted().size());
    assertTrue(plan.unrouted().get(0).id().contains("cat6"));
    String why = plan.unrouted().get(0).whyNot().toString();
    assertTrue(why.contains("no cat6 that is not listed plenum may lie there"), why);
    assertTrue(why.contains("local rules of Brookfield: x"), why);
  }

  @Test
  void aMemberIsNotBoredWiderThanTheFileSays() throws Exception {
    Plan free = plan("  - { no-bore: rim, source: x }\n");
    assertTrue(free.holes().stream().anyMatch(h -> h.kind().equals("top plate")), "bored else");
    Plan none = plan("  - { no-bore: [top-plate, bottom-plate], source: x }\n");
    assertFalse(none.holes().stream().anyMatch(h -> h.kind().equals("top plate")), "not bored");
    Plan slim = plan("  - { no-bore: top-plate, wider-than: 13 mm, source: x }\n");
    assertTrue(
        slim.holes().stream()
            .filter(h -> h.kind().equals("top plate"))
            .allMatch(h -> h.diameterMm() <= 13));
  }

  /** The light stands under the bay of the outlet, 1 ft and some inches below its top plate. */
  @Test
  void aHoleKeepsOffAThing() throws Exception {
    Set<String> near = plates(plan("  - { keep-off: light, by: 4 in, source: x }\n"));
    Set<String> far = plates(plan("  - { keep-off: [light, tap], by: 2 ft, source: x }\n"));
    assertTrue(near.stream().anyMatch(h -> !far.contains(h)), near + " and " + far);
  }

  private static Set<String> plates(Plan plan) {
    return plan.holes().stream().map(Plan.PlannedHole::id).collect(Collectors.toSet());
  }

  @Test
  void anOldPlanIsToldThatItBreaksThem() throws Exception {
    Plan free = plan("  - { no-bore: rim, source: x }\n");
    Path file = Files.writeString(folder.resolve("old.json"), PlanJson.write(free));
    Pipeline p = new Pipeline(Progress.SILENT);
    List<Plan.FindingLine> told = p.referee(house(NO_ATTIC), file).findings();
    List<Plan.FindingLine> own =
        told.stream().filter(f -> f.rule().equals("own-rule-broken")).toList();
    assertEquals(1, own.size(), told.toString());
    assertTrue(own.get(0).breaksLaw());
    assertEquals("local rules of Brookfield: by-law 4", own.get(0).source());
    // What is not offered any more is no hole of this house.
    String bored = "  - { no-bore: top-plate, source: y }\n";
    assertFalse(p.referee(house(bored), file).refusals().isEmpty());
  }
}
