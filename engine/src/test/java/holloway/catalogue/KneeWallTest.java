package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A storey and a half: three rooms in a row under one roof, knee walls north and south, the eaves
 * behind them. The cable runs along the north side attic from the west room to the east one.
 */
@Feature("knee wall and side attic")
class KneeWallTest {

  private static Chain house(String height, String behind) {
    return Chain.of(HalfStorey.text(height, behind, ""));
  }

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  @Test
  void alongTheEavesFromRoomToRoom() {
    Chain c = house("1.2 m", "bare");
    Plan p = plan(c);
    assertEquals(1, p.runs().size());
    assertEquals(0, p.totals().holes());
    assertEquals(List.of("set-up/attic/top roof north side"), zones(p));
    // Room face at 6 m, 8/12. Joists lie 18.3 mm under the floor: a body of 600 mm fits up to
    // (1200 + 18.3 - 600) x 12 / 8 = 927.45 mm behind the face, an arm 600 mm further.
    Hollow attic = c.house().findHollow("attic/top roof north side").orElseThrow();
    assertEquals(6000 + 927.45 + 600, attic.area().orElseThrow().yRange().hi() / 1e6, 0.01);
    assertEquals(12_000, attic.area().orElseThrow().xRange().length() / 1e6, 0.01);
    // Laid from the bay behind the cabinet, at 2946.4, to the one at 9855.2 mm, up 111.3 mm to the
    // bays and 17.9 mm from the line on both sides: (6908.8 + 2 x 129.2) x 0.9 minutes a metre.
    assertEquals(6.4505, attic(p).minutes().orElseThrow(), 0.001);
  }

  private static Plan.PlanStep attic(Plan p) {
    return p.runs().get(0).steps().stream()
        .filter(s -> s.id().startsWith("attic/"))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> zones(Plan p) {
    return p.works().stream().map(w -> w.id()).filter(w -> w.startsWith("set-up")).toList();
  }

  private static boolean goesBehind(Chain c) {
    // else by patches and bores through one floor joist after another
    return plan(c).totals().holes() == 0;
  }

  @Test
  void aBoardedBackShutsIt() {
    assertTrue(goesBehind(house("1.2 m", "bare")));
    assertFalse(goesBehind(house("1.2 m", "boarded")));
  }

  private static Chain withoutDoor() {
    return Chain.of(
        HalfStorey.text("1.2 m", "bare", "")
            .replaceFirst("  - \\{ opening, side: west north.*\\n", ""));
  }

  @Test
  void withoutADoorNobodyGetsIn() {
    Chain shut = withoutDoor();
    assertFalse(goesBehind(shut));
    assertEquals(
        "no door or opening is stated in the knee wall before it",
        why(shut, "attic top roof north side"));
  }

  @Test
  void aWallTooLowForAPitchIsNotBelieved() {
    // 8/12 over 2000 + 101.6 mm falls 1401 mm; 800 + 18.3 + 234.95 mm over the joists' undersides
    // is 348 mm too little: the rafters would meet the plate 522 mm inside.
    Chain c = house("800 mm", "bare");
    assertTrue(c.framed().attics().isEmpty());
    assertTrue(
        why(c, "side attics of top roof").contains("522 mm inside"),
        why(c, "side attics of top roof"));
  }

  @Test
  void wallsAcrossTheRoomEndUnderTheSlope() {
    Chain c = house("1.2 m", "bare");
    // Bays of the end walls: at the knee wall they end at its 1.2 m, less 50 for board and cut.
    String across =
        c.placed().walls().stream()
            .filter(w -> w.faces().stream().anyMatch(f -> f.room().equals("middle")))
            .filter(w -> w.faces().stream().anyMatch(f -> f.room().equals("west")))
            .filter(w -> w.faces().stream().noneMatch(f -> f.roomSide().runsEastWest()))
            .findFirst()
            .orElseThrow()
            .id();
    List<Hollow> bays =
        c.house().hollows().stream()
            .filter(h -> h.kind() == HollowKind.STUD_BAY && h.owner().equals(across))
            .toList();
    assertFalse(bays.isEmpty());
    for (Hollow h : bays) {
      for (long s : new long[] {h.clear().x0(), h.clear().x1()}) {
        double y = h.frame().toWorld(s, 0, 0).y() / 1e6;
        double slope = 1200 + Math.min(y - 2000, 6000 - y) * 8 / 12.0;
        assertTrue(h.clear().z1() / 1e6 <= slope - 49, h.id());
      }
    }
  }

  @Test
  void nothingComesFromOutsideThroughIt() {
    Chain c = house("1.2 m", "bare");
    assertTrue(
        c.placed().walls().stream()
            .filter(w -> w.level().equals("upper"))
            .filter(w -> w.faces().stream().anyMatch(f -> f.roomSide().runsEastWest()))
            .noneMatch(w -> w.isOuter()));
    // between the sloping boards of the rooms a rafter stands over each knee wall
    assertTrue(c.members("top roof").stream().anyMatch(m -> m.id().contains("rafter")));
  }

  @Test
  void theRefereeSeesItByItself() {
    Chain open = house("1.2 m", "bare");
    Plan p = plan(open);
    assertSays(p, open, house("1.2 m", "boarded"), "which is not said to be bare");
    assertSays(p, open, withoutDoor(), "which no door in a knee wall leads into");
    // 7.6 m is 1600 mm behind the face, an arm ends at 1527.45; rafters over 6.15 m lie at 1.1 m
    assertSays(moved(p, 1_450_000_000, 0), open, open, "further than an arm reaches");
    assertSays(moved(p, 0, 1_100_000_000), open, open, "above the rafters");
    assertSays(moved(p, -1_000_000_000, 0), open, open, "behind no knee wall that was stated");
  }

  /** The plan with its leg in the attic moved north and up. */
  private static Plan moved(Plan p, long north, long up) {
    Plan.PlannedRun r = p.runs().get(0);
    List<Plan.PlanStep> steps =
        r.steps().stream()
            .map(
                s ->
                    !s.id().startsWith("attic/")
                        ? s
                        : new Plan.PlanStep(
                            s.kind(),
                            s.id(),
                            s.hollow(),
                            s.label(),
                            s.path().stream()
                                .map(q -> new Point3(q.x(), q.y() + north, q.z() + up))
                                .toList(),
                            s.m(),
                            s.feed(),
                            s.fish(),
                            s.minutes()))
            .toList();
    Plan.PlannedRun changed =
        new Plan.PlannedRun(r.id(), r.from(), r.to(), r.cable(), r.routeM(), r.cableM(), steps);
    return p.withRuns(List.of(changed), p.totals());
  }

  /** The hollows and crossings of one house in another. */
  private static void assertSays(Plan p, Chain open, Chain other, String what) {
    HollowHouse h = open.house();
    HollowHouse mixed =
        new HollowHouse(
            other.framed(), h.hollows(), h.sites(), h.stands(), h.accesses(), h.refused());
    String faults = Referee.check(p, mixed, other.request()).refusals().toString();
    assertTrue(faults.contains(what), faults);
  }

  private static String why(Chain c, String what) {
    return c.house().refused().stream()
        .filter(r -> r.what().equals(what))
        .map(r -> r.why())
        .findFirst()
        .orElse("");
  }
}
