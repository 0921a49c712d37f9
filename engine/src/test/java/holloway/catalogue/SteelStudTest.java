package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Steel studs are passed where they are punched and bored nowhere. */
@Feature("steel studs")
class SteelStudTest {
  /** Cabinet and desk in neighbouring bays, the stud between them at 64 in. */
  private static final String WOOD =
      ToyAttic.TEXT
          .replace("from: west 4 ft, height: 5 ft", "from: west 4 ft 8 in, height: 5 ft")
          .replace("from: west 12 ft,", "from: west 6 ft,");

  private static final String STEEL =
      WOOD.replace(
          "name: middle",
          "name: middle, bearing: no, studs: steel 3-1/2 in, knockouts: [12 in, 36 in]");

  @Test
  void theKnockoutSavesTheBore() {
    Plan wood = WrittenHouse.of(WOOD).plan();
    assertEquals(List.of("stud"), wood.holes().stream().map(Plan.PlannedHole::kind).toList());
    // (set-up 4 + stud 3) x 2.2 through the cut-out, seal 2
    assertEquals(17.4, wood.holes().get(0).minutes(), 1e-9);
    WrittenHouse house = WrittenHouse.of(STEEL);
    Plan steel = house.plan();
    assertEquals(0, steel.totals().holes());
    assertTrue(
        WrittenHouse.way(steel, "desk/cat6-1").stream().anyMatch(s -> s.contains("/knockout/")),
        steel.runs()::toString);
    assertTrue(
        steel.findings().stream().anyMatch(f -> f.rule().equals("grommet-in-steel")),
        steel.findings()::toString);
    assertTrue(steel.findings().stream().noneMatch(f -> f.rule().equals("nail-plate")));
  }

  @Test
  void withoutAKnockoutInTheBayTheAtticIsTheWay() {
    // Punched only over the ceiling: no stud is bored, both tracks are, from above.
    Plan p =
        WrittenHouse.of(STEEL.replace("knockouts: [12 in, 36 in]", "knockouts: [9 ft]")).plan();
    assertEquals(List.of("attic"), p.totals().zones());
    assertEquals(
        List.of("top plate", "top plate"), p.holes().stream().map(Plan.PlannedHole::kind).toList());
    // One track each: (4 + 2.5) x 1.5 + 2
    p.holes().forEach(h -> assertEquals(11.75, h.minutes(), 1e-9));
  }

  @Test
  void aTrackThatCarriesIsNotBored() {
    Plan p =
        WrittenHouse.of(
                STEEL
                    .replace("knockouts: [12 in, 36 in]", "knockouts: [9 ft]")
                    .replace("bearing: no", "bearing: yes"))
            .plan("surface", "outside");
    assertEquals(List.of("desk/cat6-1"), p.unrouted().stream().map(Plan.Unrouted::id).toList());
    String why = p.unrouted().get(0).whyNot().toString();
    assertTrue(why.contains("Never bore the track of a bearing"), why);
  }

  @Test
  void aKnockoutHoldsItsSizeOnly() {
    // 38 mm: 1134 mm2, 40 % of it is 453.6; a cat6 of 6.1 mm takes 29.2: fifteen fit.
    Plan p =
        WrittenHouse.of(
                STEEL
                    .replace("[12 in, 36 in]", "[12 in]")
                    .replace(
                        "cables: [cat6]",
                        "cables: [" + String.join(", ", Collections.nCopies(16, "cat6")) + "]"))
            .plan("surface", "outside");
    assertTrue(p.totals().holes() > 0, p.holes()::toString);
  }

  @Test
  void theRefereeRefusesABoredSteelStud() {
    Plan wood = WrittenHouse.of(WOOD).plan();
    WrittenHouse steel = WrittenHouse.of(STEEL);
    List<String> says =
        Referee.check(wood, steel.hollows(), steel.request()).refusals().stream()
            .map(Object::toString)
            .toList();
    assertTrue(
        says.stream().anyMatch(r -> r.contains("goes through a steel stud of middle")),
        says::toString);
  }
}
