package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A storey that ends half-way over a room; a flat roof lies beside its wall. */
@Feature("storey that sets back")
class SetBackTest {
  private static final String TEXT =
      """
      house: Set-back House
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in, fill: foam }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 8 ft }
      rooms:
        store: { level: ground, size: 2 m x 6 m }
        lounge: { level: ground, size: 4 m x 6 m, east-of: store, align: south }
        den: { level: ground, size: 2 m x 6 m, east-of: lounge, align: south }
        study: { level: upper, size: WIDE x 6 m, above: lounge, align: south-west }
      roof:
        - { name: low, over: ground, shape: flat, run: east-west, frame: rafters, chord: 2x8, every: 16 in, insulation: none }
      cabinet: { in: lounge, wall: west, from: south 2 m, height: 400 mm }
      outlets:
        - { name: desk, in: lounge, wall: east, from: south 2 m, height: 400 mm, cables: [cat6] }
      """;

  private static final Chain WHOLE = Chain.of(TEXT.replace("WIDE", "6 m"));
  private static final Chain BACK = Chain.of(TEXT.replace("WIDE", "2 m"));

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  @Test
  void betweenFloorAndRoofNothingRunsOn() {
    // Under a storey that reaches past the lounge one bay leads from wall to wall. The
    // outer walls are foamed, or there would be a way down into one and up again.
    assertEquals(1, plan(WHOLE).runs().size());
    assertEquals(1, plan(BACK).unrouted().size());
  }

  @Test
  void bothEndUnderTheUpperWall() {
    // The lounge's west face at 2000 + 114.3, the study's east face 2000 further, 12.7 of board,
    // 88.9 of studs: there the floor's rim ends, and the roof's joists begin with a block of 38.
    long edge = 2_114_300_000L + 2_000_000_000L + 12_700_000L + 88_900_000L;
    int floor = 0;
    int roof = 0;
    for (Hollow h : BACK.house().hollows()) {
      if (h.kind() != HollowKind.JOIST_BAY) {
        continue;
      }
      long x0 = h.frame().toWorld(h.clear().x0(), h.clear().y0(), 0).x();
      long x1 = h.frame().toWorld(h.clear().x1(), h.clear().y1(), 0).x();
      assertTrue(x1 <= edge - 38_000_000L || x0 >= edge + 38_000_000L, h::id);
      floor += x1 == edge - 38_000_000L ? 1 : 0;
      roof += x0 == edge + 38_000_000L ? 1 : 0;
    }
    assertEquals(floor, roof);
    assertTrue(floor > 10);
  }
}
