package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Minutes;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Three studs to bore: a box that is there already saves the patch in the bay between. */
@Feature("existing low-voltage box")
class ExistingBoxTest {
  private static final String BARE =
      """
house: Box Toy
place: us
built: 1994
inner-walls: { studs: 2x4, every: 16 in }
outer-walls: { studs: 2x4, every: 16 in }
levels: { ground: { floor: slab, ceiling-height: 8 ft } }
rooms:
  south room: { level: ground, size: 20 ft x 12 ft }
  north room: { level: ground, size: 20 ft x 12 ft, north-of: south room, align: west }
walls:
  - { between: [south room, north room], name: middle, studs-from: west 16 in }
cabinet: { in: south room, wall: north, from: west 4 ft 1 in, height: 16 in }
outlets:
  - { name: desk, in: north room, wall: south, from: west 8 ft 8 in, height: 16 in, cables: [cat6] }
""";

  private static String with(String kind) {
    return BARE
        + "things: [{ "
        + kind
        + ", in: south room, wall: north, from: west 6 ft, height: 16 in }]\n";
  }

  private static Plan plan(String text) {
    return WrittenHouse.of(text).plan("surface", "outside");
  }

  /** A patch, two bores through it and one from the desk's cut-out. */
  private static final double PATCHED =
      20 + 55 + 2 * 11.1 + 17.4 + 0.47 + 2 * 0.221 + 5.442 + 0.2791;

  @Test
  void aLowVoltageBoxIsOpened() {
    Minutes.total(plan(BARE), PATCHED);
    // Plate off 4; three studs bored blind through boxes at (4 + 3) x 2.2 + 2.
    Minutes.total(plan(with("data-box")), 20 + 4 + 3 * 17.4 + 0.47 + 3 * 0.2791 + 5.442);
  }

  /** A range takes the box that hangs within it: 4 minutes instead of a cut-out of 10. */
  @Test
  void aRangeEndsAtTheBoxThatIsThere() {
    String range =
        BARE.replace(
            "in: north room, wall: south, from: west 8 ft 8 in",
            "in: south room, wall: north, from: west 5 ft 6 in, to: 8 ft");
    double cut = plan(range).totals().minutes();
    Plan there =
        plan(
            range
                + "things: [{ data-box, in: south room, wall: north, from: west 6 ft 2 in, height:"
                + " 16 in }]\n");
    assertEquals(List.of(), there.unrouted());
    assertTrue(
        there.works().stream().anyMatch(w -> w.id().equals("desk/cut-out") && w.minutes() == 4),
        there.works()::toString);
    assertTrue(there.totals().minutes() < cut, "at " + there.totals().minutes());
  }

  @Test
  @Feature("register")
  void aRegisterIsOpened() {
    Minutes.total(plan(with("register")), 20 + 6 + 3 * 17.4 + 0.47 + 3 * 0.2791 + 5.442);
  }

  @ParameterizedTest
  @ValueSource(strings = {"socket", "switch", "light", "panel"})
  void aBoxWithPowerInItIsNever(String kind) {
    WrittenHouse house = WrittenHouse.of(with(kind));
    assertEquals(
        List.of(),
        house.hollows().accesses().stream().filter(a -> !a.id().contains("patch")).toList());
    Minutes.total(house.plan("surface", "outside"), PATCHED);
  }

  @Test
  @Feature("return grille")
  void aReturnGrilleOpensOnAirAndIsNoWay() {
    Plan p = plan(with("return-grille"));
    assertTrue(p.works().stream().noneMatch(w -> w.id().contains("return")), p.works()::toString);
    assertTrue(
        p.runs().stream()
            .flatMap(r -> r.steps().stream())
            .noneMatch(s -> s.id().equals("middle/bay-1660")));
  }

  /** E1: flexible-shaft bits of 1/2, 3/4 and 1 in; two cables need 16 mm, ten need 32. */
  @Test
  void aFlexibleBitIsMadeInThreeSizes() {
    Plan two = plan(with("data-box").replace("[cat6]", "[cat6, cat6]"));
    assertEquals(3, two.holes().size(), two.holes().toString());
    assertTrue(two.holes().stream().allMatch(h -> h.diameterMm() == 19), two.holes().toString());
    String many = String.join(", ", java.util.Collections.nCopies(10, "cat6"));
    Plan ten = plan(with("data-box").replace("[cat6]", "[" + many + "]"));
    assertEquals(List.of(), ten.unrouted());
    for (Plan.PlannedHole h : ten.holes()) {
      boolean arm = h.method().startsWith("from a patch") || h.method().matches("from the .* room");
      assertTrue(arm || List.of(13, 19, 25).contains(h.diameterMm()), h.toString());
    }
  }

  @Test
  void theRefereeKnowsThatNoOtherSizeIsMade() {
    WrittenHouse house = WrittenHouse.of(with("data-box").replace("[cat6]", "[cat6, cat6]"));
    Plan p = house.plan("surface", "outside");
    List<Plan.PlannedHole> narrow = p.holes().stream().map(ExistingBoxTest::narrower).toList();
    String said = Spoiled.refused(p.withWork(narrow, p.works(), p.totals().minutes()), house);
    assertTrue(said.contains("no flexible bit of 16 mm is made"), said);
  }

  private static Plan.PlannedHole narrower(Plan.PlannedHole h) {
    return new Plan.PlannedHole(
        h.id(),
        h.label(),
        h.kind(),
        16,
        h.depthMm(),
        h.at(),
        h.between(),
        h.method(),
        h.stand(),
        h.works(),
        h.minutes(),
        h.runs(),
        h.assumed(),
        h.otherMethods(),
        h.bores(),
        h.axis(),
        h.through());
  }

  @Test
  void theRefereeKnowsThePriceAndTheBox() {
    WrittenHouse house = WrittenHouse.of(with("data-box"));
    Plan p = house.plan("surface", "outside");
    String box = "middle/bay-1660/data-box-1840-z410";
    assertTrue(Spoiled.refused(Spoiled.halved(p, box), house).contains("it is 4.00"));
    assertTrue(Spoiled.refused(p, WrittenHouse.of(with("socket"))).contains("opens nothing"));
  }
}
