package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Spoiled;
import holloway.check.ToyPlan;
import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.plan.Plan;
import holloway.support.RandomHouseText;
import holloway.support.StagedPlan;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Nothing that is offered for boring breaks a rule of law, whatever the plan takes of it: each site
 * is judged with the widest bit offered for it. A plan is made of such sites only.
 */
class OfferedSitesAreLawfulTest {
  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "quince-ranch", "plumb-corner", "tin-street"})
  void ofTheSamples(String sample) {
    judge(Path.of("../samples/" + sample + ".yaml"));
  }

  @Test
  void ofRandomHouses() throws Exception {
    for (long seed = 1; seed <= 6; seed++) {
      Path house = Files.createTempFile("random", ".yaml");
      try {
        Files.writeString(house, RandomHouseText.of(RandomHouseText.Shape.of(seed)));
        judge(house);
      } finally {
        Files.delete(house);
      }
    }
  }

  private static void judge(Path file) {
    StagedPlan staged = new StagedPlan(file);
    HollowHouse house = staged.hollows;
    List<Plan.PlannedHole> holes =
        house.sites().stream()
            .filter(s -> !s.made() && s.platedBit() > 0)
            .map(OfferedSitesAreLawfulTest::widest)
            .toList();
    assertTrue(holes.size() > 5, "too few sites to judge: " + holes.size());
    Plan good = ToyPlan.good();
    Plan all = Spoiled.with(good, holes, good.works());
    List<Finding> broken =
        new BoredMember()
            .find(new Finished(all, house, staged.request)).stream()
                .filter(f -> f.broken() && f.severity() == Severity.LAW)
                .toList();
    assertEquals(List.of(), broken, file.toString());
    assertTrue(house.sites().stream().noneMatch(s -> inAir(s, house)), "a site into moving air");
  }

  private static Plan.PlannedHole widest(Site s) {
    return ToyPlan.hole(s.id(), "H1", s.middle(), s.hollowA(), List.of(), s.platedBit(), 1);
  }

  private static boolean inAir(Site s, HollowHouse house) {
    return List.of(s.hollowA(), s.hollowB()).stream()
        .anyMatch(
            h -> house.findHollow(h).map(x -> x.kind() == HollowKind.RETURN_AIR).orElse(false));
  }
}
