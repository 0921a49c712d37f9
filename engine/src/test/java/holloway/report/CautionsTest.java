package holloway.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.RulePlace;
import holloway.pipeline.Toy;
import holloway.plan.Plan;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A caution shows where it applies, and not where it does not. */
class CautionsTest {
  private static Set<String> names(Plan plan, RulePlace place, int built) {
    return Cautions.of(plan, Toy.placed(Toy.house(place, built))).stream()
        .map(Caution::name)
        .collect(Collectors.toSet());
  }

  @ParameterizedTest
  @CsvSource({
    "US, 1977, lead, true",
    "US, 1978, lead, false",
    "UK, 1991, lead, true",
    "UK, 1992, lead, false",
    "US, 1979, asbestos, true",
    "US, 1980, asbestos, false",
    "UK, 1999, asbestos, true",
    "UK, 2000, asbestos, false",
    "US, 1949, knob-and-tube, true",
    "US, 1950, knob-and-tube, false",
    "US, 1964, aluminium, false",
    "US, 1965, aluminium, true",
    "US, 1973, aluminium, true",
    "US, 1974, aluminium, false",
    "US, 1918, vermiculite, false",
    "US, 1919, vermiculite, true",
    "US, 1990, vermiculite, true",
    "US, 1991, vermiculite, false",
    "UK, 1960, vermiculite, false",
  })
  void theYearDecides(RulePlace place, int built, String name, boolean shown) {
    assertEquals(shown, names(Toy.bare(), place, built).contains(name));
  }

  @Test
  void standsAndHolesDecide() {
    Set<String> all = names(Toy.bare(), RulePlace.US, 2010);
    assertEquals(Set.of("attic", "power", "structure", "fire-separation"), all);
    Plan p = Toy.bare();
    Plan.Totals t = p.totals();
    Plan.Totals ladder =
        new Plan.Totals(1, 1, 0, 1, 0, 0, 1, 1, 0, t.money(), "USD", List.of("ladder outside"));
    Plan none =
        new Plan(
            1,
            p.house(),
            p.profile(),
            10_000,
            p.inputs(),
            ladder,
            p.runs(),
            List.of(),
            p.unrouted(),
            p.works(),
            p.findings(),
            p.materials(),
            p.survey());
    assertEquals(Set.of("ladder"), names(none, RulePlace.US, 2010));
    Plan.FindingLine ceiling =
        new Plan.FindingLine(
            "garage-separation", "law", Optional.empty(), "s", "t.", false, "H1", "", "", "");
    Plan bored =
        new Plan(
            1,
            p.house(),
            p.profile(),
            10_000,
            p.inputs(),
            ladder,
            p.runs(),
            List.of(),
            p.unrouted(),
            p.works(),
            List.of(ceiling),
            p.materials(),
            p.survey());
    assertEquals(Set.of("ladder", "fire-separation"), names(bored, RulePlace.US, 2010));
  }

  @Test
  void everyCautionHasASourceAndNoneGivesOrdersOverTheLaw() {
    for (Caution c : Cautions.of(Toy.bare(), Toy.placed())) {
      assertFalse(c.source().isBlank(), c.name());
      assertTrue(c.text().endsWith("."), c.name());
    }
  }

  private static Plan with(String cable, Optional<String> rule) {
    Plan p = Toy.bare();
    Plan.PlannedRun r = p.runs().get(0);
    var run =
        new Plan.PlannedRun(r.id(), r.from(), r.to(), cable, r.routeM(), r.cableM(), r.steps());
    List<Plan.FindingLine> found =
        rule.stream()
            .map(
                id ->
                    new Plan.FindingLine(
                        id, "practice", Optional.empty(), "s", "t.", false, "x", "", "", ""))
            .toList();
    return new Plan(
        1,
        p.house(),
        p.profile(),
        10_000,
        p.inputs(),
        p.totals(),
        List.of(run),
        p.holes(),
        p.unrouted(),
        p.works(),
        found,
        p.materials(),
        p.survey());
  }

  private static Caution entry(String cable, RulePlace place) {
    return Cautions.of(with(cable, Optional.empty()), Toy.placed(Toy.house(place, 2010))).stream()
        .filter(c -> c.name().equals("entry"))
        .findFirst()
        .orElseThrow();
  }

  /** There is nothing to bond in glass; its armour is another thing. */
  @Test
  void fibreFromOutsideIsNotBondedAsCopperIs() {
    assertTrue(
        entry("outdoor-cat6", RulePlace.US).text().startsWith("Cable from outside: bonding"));
    assertTrue(entry("outdoor-fibre", RulePlace.US).text().contains("nothing to bond"));
  }

  @Test
  void aCautionIsNotAFindingSaidTwice() {
    assertTrue(names(with("cat6", Optional.empty()), RulePlace.US, 1930).contains("vermiculite"));
    Set<String> told = names(with("cat6", Optional.of("vermiculite")), RulePlace.US, 1930);
    assertFalse(told.contains("vermiculite"));
    assertTrue(told.contains("knob-and-tube"));
    assertFalse(
        names(with("cat6", Optional.of("old-wiring")), RulePlace.US, 1930)
            .contains("knob-and-tube"));
  }

  /** No clause of another country, and the house's own unit first. */
  @Test
  void inTheUkNothingIsAsInTheUs() {
    for (Caution c :
        Cautions.of(
            with("outdoor-cat6", Optional.empty()), Toy.placed(Toy.house(RulePlace.UK, 1960)))) {
      assertFalse(c.source().matches(".*(OSHA|NEC|IRC|CFR).*"), c.toString());
      assertFalse(c.text().contains("(50 C)") || c.text().contains("(50 mm)"), c.text());
    }
    assertEquals(
        "common practice, no published source", entry("outdoor-cat6", RulePlace.UK).source());
  }
}
