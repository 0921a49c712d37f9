package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.rules.PlanRules;
import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.framing.Notch;
import holloway.framing.Notches;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Two points of the den's ceiling 2 ft apart, one joist of the floor with lifted boards between
 * them, and a notch that somebody cut into it for a pipe.
 */
@Feature("notch that was found")
class NotchTest {
  private static final String FLOOR =
      TwoStoreys.with(
          "run: east-west, from: south 16 in",
          "run: east-west, from: south 16 in, boards: yes",
          "- { name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }",
          """
          - { name: one, in: den, ceiling: [west 5 ft, south 4 ft], cables: [] }
            - { name: two, in: den, ceiling: [west 5 ft, south 6 ft], cables: [] }
          links:
            - { from: one, to: two, cable: cat6 }""");

  private static String notch(String place, String deep, String run) {
    return "notches: [{ %s, depth: %s, length: %s }]\n".formatted(place, deep, run);
  }

  private static Plan.PlannedHole joist(WrittenHouse house) {
    Plan p = house.plan("outside", "surface");
    List<Plan.PlannedHole> all = p.holes().stream().filter(h -> h.kind().equals("joist")).toList();
    assertEquals(1, all.size(), p.holes()::toString);
    return all.get(0);
  }

  @Test
  void theHoleKeepsTwoInchesOfWoodFromIt() {
    Plan.PlannedHole before = joist(WrittenHouse.of(FLOOR));
    // Where the hole would be: the wood there is cut away to a third of its depth, 6 in along.
    double west = before.at().x() / 25.4e6 - outdoor(WrittenHouse.of(FLOOR));
    String there = "below-floor-of: bedroom, at: [west %.2f in, south 5 ft], edge: top";
    String found = notch(there.formatted(west), "3 in", "6 in");
    WrittenHouse house = WrittenHouse.of(FLOOR, found);
    Notch n = Notches.of(house.framed()).cut().get(0);
    assertTrue(n.member().id().contains("joist"), n.toString());
    Plan.PlannedHole after = joist(house);
    long radius = after.diameterMm() * 500_000L;
    long clear = n.clear(n.member().frame().toLocal(after.at()), radius);
    // IRC R502.8.1: 2 in of wood between a hole and a notch.
    assertTrue(clear >= 50_800_000L, clear + " nm");
    long was = n.clear(n.member().frame().toLocal(before.at()), radius);
    assertTrue(was < 50_800_000L, was + " nm");
    assertEquals(List.of(), broken(house.plan("outside", "surface"), house));
    // 3 in wider than it may be: whoever bores that goes against the law of the place.
    Plan wide = Spoiled.widened(house.plan("outside", "surface"), after.id(), 152);
    List<Finding> broken = broken(wide, house);
    assertEquals(1, broken.size());
    assertEquals(Severity.LAW, broken.get(0).severity());
  }

  private static List<Finding> broken(Plan plan, WrittenHouse house) {
    return PlanRules.find(plan, house.hollows(), house.request()).stream()
        .filter(f -> f.rule().equals("notched-member") && f.broken())
        .toList();
  }

  /** Inches from the world's origin to the bedroom's west face. */
  private static double outdoor(WrittenHouse house) {
    return house.placed().getRoom("bedroom").outline().xRange().lo() / 25.4e6;
  }

  @Test
  void aJoistCutAllAlongIsNotBored() {
    String found =
        notch("below-floor-of: bedroom, at: [west 5 ft, south 5 ft], edge: top", "4 in", "20 ft");
    Plan p = WrittenHouse.of(FLOOR, found).plan("outside", "surface");
    assertEquals(
        Optional.empty(),
        p.holes().stream().filter(h -> h.kind().equals("joist")).findFirst(),
        p.holes()::toString);
  }

  @Test
  void theStudSeenFromTheRoomIsCutOnThatSide() {
    String where = "side: office east, from: south 6 ft, height: 4 ft";
    WrittenHouse house = WrittenHouse.of(TwoStoreys.TEXT, notch(where, "1 in", "2 in"));
    Notch n = Notches.of(house.framed()).cut().get(0);
    assertTrue(n.upright());
    assertEquals(25_400_000L, n.cut().y().length());
    assertEquals(50_800_000L, n.run().length());
    // Office is west of the wall: what is gone lies nearer to it than what is left.
    double gone = n.member().frame().toWorld(0, n.cut().y().mid(), 0).x();
    double whole = n.member().frame().toWorld(0, n.member().box().y().mid(), 0).x();
    assertTrue(gone < whole, gone + " " + whole);
    // studs-from: south 8 in of the wall between them, every 16: the nearest to 6 ft is 72 in.
    assertEquals(72, n.member().box().x().mid() / 25.4e6, 8);
  }
}
