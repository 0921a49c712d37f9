package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.survey.CavityGap;
import holloway.survey.Wall;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Brick, gap, block: a bore goes through both leaves, and nothing ever goes along between them. */
@Feature("cavity wall")
class CavityWallTest {
  private static final String HOUSE =
      """
      house: Cavity Toy
      place: uk
      built: 1985
      outer-walls: { KIND, thickness: 300 mm }
      inner-walls: { kind: masonry, thickness: 126 mm }
      levels: { ground: { floor: slab, ceiling-height: 2.4 m } }
      rooms:
        room: { level: ground, size: 5 m x 4 m, finish: plaster, plain: yes }
      cabinet: { in: room, wall: south, from: west 2 m, height: 600 mm }
      outlets:
        - { name: feed, outside: room south, from: west 3 m, height: 600 mm, cables: [outdoor-fibre], feed: yes }
      """;

  private static final String LEAVES = "kind: cavity, leaves: [102.5 mm, 75 mm, 100 mm]";

  private static WrittenHouse house(String kind) {
    return WrittenHouse.of(HOUSE.replace("KIND", kind));
  }

  private static double bored(Plan p) {
    assertEquals(1, p.holes().size());
    return p.works().stream()
        .filter(w -> w.id().startsWith(p.holes().get(0).id()))
        .mapToDouble(Plan.PlannedWork::minutes)
        .sum();
  }

  @Test
  void aBoreGoesThroughBothLeaves() {
    // Set-up 4, plaster 1.5, seal 2; masonry 8 minutes for 100 mm: 300 - 13 of plaster, or 75 less
    // of the gap, which is 1 minute.
    assertEquals(4 + 1.5 + 2 + 2.87 * 8, bored(house("kind: masonry").plan()), 1e-3);
    Plan p = house(LEAVES).plan();
    assertEquals(4 + 1.5 + 2 + 2.12 * 8 + 1, bored(p), 1e-3);
    String asked =
        p.findings().stream()
            .filter(f -> f.rule().equals("outer-wall-hole"))
            .map(Plan.FindingLine::text)
            .findFirst()
            .orElse("");
    assertTrue(asked.contains("one sleeve right through both leaves"), asked);
  }

  @Test
  void theLeavesStandAsTheyWereMeasured() {
    for (Wall w : house(LEAVES).placed().walls()) {
      Interval gap = CavityGap.of(w).orElseThrow();
      assertEquals(75_000_000, gap.length());
      long outer = w.outside() == 0 ? gap.lo() - w.core().lo() : w.core().hi() - gap.hi();
      assertEquals(102_500_000, outer);
      assertEquals(287_000_000, w.core().length());
    }
    // Not measured: brick 102.5 and block 100 leave 84.5 mm.
    Wall usual = house("kind: cavity").placed().walls().get(0);
    assertEquals(84_500_000, CavityGap.of(usual).orElseThrow().length());
    // 227 - 13 - 202.5 = 11.5 mm are no gap: taken as solid.
    String thin = HOUSE.replace("KIND", "kind: cavity").replace("300 mm", "227 mm");
    assertTrue(CavityGap.of(WrittenHouse.of(thin).placed().walls().get(0)).isEmpty());
  }

  @Test
  void noSpaceLiesInTheGap() {
    for (String kind :
        List.of(LEAVES, LEAVES + ", inside: dabbed", "kind: cavity, inside: furred")) {
      WrittenHouse house = house(kind);
      for (Wall w : house.placed().walls()) {
        Interval gap = CavityGap.of(w).orElseThrow();
        for (Hollow h : house.hollows().hollows()) {
          boolean meets =
              h.owner().equals(w.id()) && h.clear().y0() < gap.hi() && h.clear().y1() > gap.lo();
          assertFalse(meets, h.id());
        }
      }
    }
  }

  @Test
  void itsInsideMayBeBoardBeforeAVoid() {
    assertEquals(0, count("kind: cavity", HollowKind.DAB_VOID));
    assertTrue(count("kind: cavity, inside: dabbed", HollowKind.DAB_VOID) > 0);
    assertTrue(count("kind: cavity, inside: furred", HollowKind.FURRED_BAY) > 0);
  }

  private static long count(String kind, HollowKind of) {
    return house(kind).hollows().hollows().stream().filter(h -> h.kind() == of).count();
  }

  @Test
  void aWallOfAnotherKindHasNone() {
    String solid = HOUSE.replace("KIND", LEAVES) + "walls: [{ side: room north, kind: masonry }]\n";
    List<Wall> walls = WrittenHouse.of(solid).placed().walls();
    assertEquals(3, walls.stream().filter(w -> CavityGap.of(w).isPresent()).count());
  }

  @Test
  void theRefereeFindsCableInTheGap() {
    WrittenHouse house = house(LEAVES);
    Plan p = house.plan();
    assertEquals("[]", Spoiled.refused(p, house));
    // The wall's outside is at -300 mm, its gap from -197.5 to -122.5: a leg moved there.
    Plan.PlannedRun r = p.runs().get(0);
    List<Plan.PlanStep> steps =
        r.steps().stream().map(s -> s.kind().equals("leg") ? along(s) : s).toList();
    Plan.PlannedRun moved =
        new Plan.PlannedRun(r.id(), r.from(), r.to(), r.cable(), r.routeM(), r.cableM(), steps);
    String said = Spoiled.refused(p.withRuns(List.of(moved), p.totals()), house);
    assertTrue(said.contains("lies in the cavity of"), said);
    // In a solid wall the same leg is refused for the masonry, not for a cavity.
    String other = Spoiled.refused(p.withRuns(List.of(moved), p.totals()), house("kind: masonry"));
    assertFalse(other.contains("lies in the cavity of"), other);
  }

  private static Plan.PlanStep along(Plan.PlanStep s) {
    List<Point3> path = s.path().stream().map(q -> new Point3(q.x(), -160_000_000, q.z())).toList();
    return new Plan.PlanStep(
        s.kind(), s.id(), s.hollow(), s.label(), path, s.m(), s.feed(), s.fish(), s.minutes());
  }
}
