package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.house.Fill;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A storey that reaches 1 m out over the outer wall of the storey below. */
@Feature("storey that overhangs")
class OverhangTest {
  private static final String TEXT =
      """
      house: Jetty House
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in, fill: empty }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: RUN }, ceiling-height: 8 ft }
      rooms:
        lounge: { level: ground, LOUNGE }
        study: { level: upper, size: 5 m x 6 m, above: lounge, align: south-west }
      cabinet: { in: lounge, wall: west, from: south 2 m, height: 400 mm }
      outlets:
        - { name: desk, in: study, wall: east, from: south 2 m, height: 400 mm, cables: [cat6] }
      """;

  private static Chain house(String run, String lounge) {
    return Chain.of(TEXT.replace("RUN", run).replace("LOUNGE", lounge));
  }

  private static final Chain BLOCKED = house("east-west", "size: 4 m x 6 m");
  private static final Chain CLEAR = house("east-west, blocks-over-walls: no", "size: 4 m x 6 m");

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  private static List<String> kinds(Plan p) {
    return p.holes().stream().map(Plan.PlannedHole::kind).sorted().toList();
  }

  /** How long the last leg between joists is, millimetres. */
  private static double lastInFloor(Plan p) {
    double mm = 0;
    for (Plan.PlanStep s : p.runs().get(0).steps()) {
      if (s.kind().equals("leg") && s.id().startsWith("upper/floor/")) {
        mm = 0;
        for (int i = 1; i < s.path().size(); i++) {
          mm += s.path().get(i - 1).distanceTo(s.path().get(i)) / 1e6;
        }
      }
    }
    return mm;
  }

  private static List<Hollow> bays(Chain c) {
    return c.house().hollows().stream().filter(h -> h.kind() == HollowKind.JOIST_BAY).toList();
  }

  @Test
  void theWayOutIsThroughTheBlock() {
    assertEquals(List.of("bottom plate", "top plate"), kinds(plan(CLEAR)));
    assertEquals(
        List.of("blocking between joists", "bottom plate", "top plate"),
        kinds(plan(BLOCKED)).stream().filter(k -> !k.contains("patch")).toList());
    // A patch in the ceiling beside the block 70, the bore (4 + 5) x 1.3 + 2 = 13.7, a second fish
    // 5, 38 mm less to fish at 1.2 a metre; beyond the block 4 a metre in place of 1.2, for nobody
    // knows what fills it: from 4158.75 + 19 east to the middle of the studs, 5158.75 from the
    // floor's edge, 981; up half a joist, 117.475; and aside to the bore.
    double beyond = lastInFloor(plan(BLOCKED));
    assertEquals(981 + 117.475, beyond, 160);
    assertEquals(
        70 + 13.7 + 5 - 0.0456 + beyond / 1000 * (4 - 1.2),
        plan(BLOCKED).totals().minutes() - plan(CLEAR).totals().minutes(),
        1e-3);
  }

  @Test
  void theRefereeKnowsTheWallByItself() {
    HollowHouse h = CLEAR.house();
    HollowHouse mixed =
        new HollowHouse(
            BLOCKED.framed(), h.hollows(), h.sites(), h.stands(), h.accesses(), h.refused());
    String says = Referee.check(plan(CLEAR), mixed, BLOCKED.request()).refusals().toString();
    assertTrue(says.contains("passes over the outer wall ground/lounge-outside/4"), says);
  }

  @Test
  void whatOverhangsIsASpaceOfItsOwn() {
    // The lounge is 4000 mm wide; then 12.7 of board and 88.9 of studs: the block's middle is at
    // 4057.15 from the lounge's west face, and the floor's edge lies 101.6 west of that face.
    long block = 101_600_000L + 4_000_000_000L + 12_700_000L + 44_450_000L;
    for (Hollow b : bays(BLOCKED)) {
      assertTrue(b.clear().x1() == block - 19_000_000L || b.clear().x0() == block + 19_000_000L);
      assertEquals(b.clear().x0() > block ? Fill.UNKNOWN : Fill.EMPTY, b.fill(), b::id);
      if (b.clear().x0() > block) {
        // 1000 mm less half a block, half the wall's studs out and as much in, and the rim's 38.
        assertEquals(
            1_000_000_000L - 19_000_000L + 44_450_000L - 38_000_000L, b.clear().x().length());
      }
    }
  }

  @Test
  void nobodyWorksFromUnderIt() {
    long out = 4_177_750_000L;
    List<String> beyond =
        bays(BLOCKED).stream().filter(b -> b.clear().x0() == out).map(Hollow::id).toList();
    assertEquals(15, beyond.size());
    assertTrue(BLOCKED.house().accesses().stream().noneMatch(a -> beyond.contains(a.hollow())));
  }

  @Test
  void alongTheWallNobodyKnowsHowItsJoistsRun() {
    Chain along = house("north-south", "size: 4 m x 6 m");
    for (Hollow b : bays(along)) {
      assertTrue(b.frame().toWorld(0, b.clear().y().mid(), 0).x() < 4_220_000_000L, b::id);
    }
    assertTrue(
        along.house().refused().stream().anyMatch(r -> r.why().contains("no room lies under it")));
  }

  @Test
  void anAngledWallIsBlockedToo() {
    Chain angled = house("east-west", "outline: [[0 m, 0 m], [4 m, 0 m], [3 m, 6 m], [0 m, 6 m]]");
    for (Hollow b : bays(angled)) {
      long x0 = b.frame().toWorld(b.clear().x0(), b.clear().y().mid(), 0).x();
      long x1 = b.frame().toWorld(b.clear().x1(), b.clear().y().mid(), 0).x();
      assertTrue(x1 - x0 < 4_200_000_000L, b::id);
    }
    assertEquals(2 * 15, bays(angled).size());
  }
}
