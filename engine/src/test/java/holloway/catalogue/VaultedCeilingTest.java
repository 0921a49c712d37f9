package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Cabinet in the store, desk on the wall of den and study, a lounge and a hall between: over a
 * vaulted lounge there is no attic to go through.
 */
@Feature("vaulted ceiling")
class VaultedCeilingTest {
  private static final String HOUSE =
      """
      house: Vaulted House
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      inner-walls: { studs: 2x4, every: 16 in }
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        store: { level: main, size: 2 m x 9 m, plain: yes }
        lounge: { level: main, size: 4 m x LOUNGE, CEILING east-of: store, align: south }
        HALL
        den: { level: main, size: 3.7 m x 9 m, east-of: lounge, align: south }
        study: { level: main, size: 3 m x 9 m, east-of: den, align: south }
      roof:
        - { name: main roof, over: main, shape: gable, ridge: east-west, pitch: 8/12, frame: rafters, chord: 2x6,
            every: 24 in, insulation: 10 in loose, hatch: { in: store, at: [west 1 m, south 4.5 m], size: 22 in x 30 in } }
      cabinet: { in: store, wall: west, from: south 4.5 m, height: 1.5 m }
      outlets:
        - { name: desk, in: den, wall: DESK, height: 400 mm, cables: [cat6] }
      """;

  private static Chain house(boolean across, boolean vaulted, String desk) {
    return Chain.of(
        HOUSE
            .replace("LOUNGE", across ? "9 m" : "5 m")
            .replace("CEILING", vaulted ? "ceiling: vaulted," : "")
            .replace(
                "HALL",
                across
                    ? ""
                    : "hall: { level: main, size: 4 m x 3.9 m, north-of: lounge, align: west }")
            .replace("DESK", desk));
  }

  private static final String FAR = "east, from: south 3 m";

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  @Test
  void aVaultAcrossTheHouseCutsTheAtticInTwo() {
    assertEquals(1, plan(house(true, false, FAR)).runs().size());
    Chain vaulted = house(true, true, FAR);
    assertEquals(
        1, vaulted.house().hollows().stream().filter(h -> h.kind() == HollowKind.ATTIC).count());
    assertEquals("no hatch or other way in is stated", why(vaulted, "attic main roof-2"));
    assertEquals(1, plan(vaulted).unrouted().size());
  }

  @Test
  void aVaultBesideTheHallIsGoneRound() {
    Plan free = plan(house(false, false, FAR));
    Plan round = plan(house(false, true, FAR));
    assertEquals(free.totals().holes(), round.totals().holes());
    // The lounge's north wall, 4-1/2 in, ends at 5 + 0.1143 m; the next laying line is 5.15 m. From
    // 4.5 m there and back is 2 x 0.65 = 1.3 m more of laying at 0.9 minutes a metre.
    assertEquals(1.17, round.totals().minutes() - free.totals().minutes(), 0.002);
  }

  @Test
  void nothingDropsIntoAWallOfTheVaultedRoom() {
    String near = "west, from: south 3 m";
    assertEquals(1, plan(house(false, false, near)).runs().size());
    Chain vaulted = house(false, true, near);
    assertEquals(1, plan(vaulted).unrouted().size());
    assertTrue(
        vaulted.house().refused().stream()
            .anyMatch(
                r ->
                    r.why()
                        .equals(
                            "the ceiling of the lounge is vaulted: no attic lies over this wall")));
  }

  /** Also where the attic beside it reaches over the wall, under a roof that ends there. */
  @Test
  void norFromTheAtticOfTheRoofBesideIt() {
    String flat =
        HOUSE
            .replace("LOUNGE", "9 m")
            .replace("CEILING", "")
            .replace("HALL", "")
            .replace("DESK", "east, from: south 3 m");
    String own =
        flat.replace("study: { level: main,", "study: { level: main, ceiling: vaulted,")
            .replace("over: main,", "over: [store, lounge, den],")
            .replace(
                "cabinet:",
                "  - { over: [study], shape: shed, low-side: east, pitch: 3/12, frame: rafters }\ncabinet:");
    assertEquals(1, plan(Chain.of(flat)).runs().size());
    assertEquals(1, plan(Chain.of(own)).unrouted().size());
  }

  @Test
  void theRefereeSeesItByItself() {
    Chain open = house(false, false, FAR);
    Chain vaulted = house(false, true, FAR);
    String faults =
        Referee.check(plan(open), vaulted.house(), vaulted.request()).refusals().toString();
    assertTrue(faults.contains("lies over the lounge, whose ceiling is vaulted"), faults);
  }

  @Test
  void theRefereeSeesADropIntoItsWall() {
    String near = "west, from: south 3 m";
    Chain open = house(false, false, near);
    Chain vaulted = house(false, true, near);
    // the crossings of the house without the vault, in the house with it
    HollowHouse h = open.house();
    HollowHouse mixed =
        new HollowHouse(
            vaulted.framed(), h.hollows(), h.sites(), h.stands(), h.accesses(), h.refused());
    String faults = Referee.check(plan(open), mixed, vaulted.request()).refusals().toString();
    assertTrue(
        faults.contains("drops into a wall of the lounge, whose ceiling is vaulted"), faults);
  }

  @Test
  void boardOnBothSlopesInsteadOfALevelCeiling() {
    List<Member> lounge = house(true, true, FAR).members("lounge");
    assertTrue(lounge.stream().noneMatch(m -> m.id().startsWith("lounge/ceiling")));
    List<Member> slopes = lounge.stream().filter(m -> m.id().startsWith("lounge/vault")).toList();
    assertEquals(2, slopes.size());
    assertTrue(slopes.stream().allMatch(m -> m.kind() == MemberKind.LINING));
    // 4.5 m of the room on each slope, on 8/12: 4500 x sqrt(12^2 + 8^2) / 12 = 5408.3 mm of board
    slopes.forEach(m -> assertEquals(5408.3e6, m.box().x().length(), 1e5));
  }

  private static String why(Chain c, String what) {
    return c.house().refused().stream()
        .filter(r -> r.what().equals(what))
        .map(r -> r.why())
        .findFirst()
        .orElse("");
  }
}
