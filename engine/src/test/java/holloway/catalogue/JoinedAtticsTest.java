package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Two roofs on one house: from one attic into the other only where an opening is stated. */
@Feature("several roofs, attics joined")
class JoinedAtticsTest {
  private static final String HOUSE =
      """
      house: Two Roofs
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      inner-walls: { studs: 2x4, every: 16 in }
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        store: { level: main, size: 3.8 m x 9 m, plain: yes }
        den: { level: main, size: 3.7 m x 9 m, east-of: store, align: south }
        study: { level: main, size: 3 m x 9 m, east-of: den, align: south }
      roof:
      ROOFS
      cabinet: { in: store, wall: west, from: south 4.5 m, height: 1.5 m }
      outlets:
        - { name: desk, in: den, wall: east, from: south 4.5 m, height: 400 mm, cables: [cat6] }
      """;

  private static final String FRAME =
      "shape: gable, ridge: east-west, pitch: 8/12, frame: rafters, chord: 2x6, every: 24 in, insulation: 10 in loose";
  private static final String HATCH =
      ", hatch: { in: store, at: [west 1 m, south 4.5 m], size: 22 in x 30 in }";
  private static final String IN_DEN =
      ", hatch: { in: den, at: [east 1 m, south 4.5 m], size: 22 in x 30 in }";

  private static Chain one() {
    return Chain.of(HOUSE.replace("ROOFS", "  - { over: main, " + FRAME + HATCH + " }"));
  }

  private static Chain two(String joins, String wing) {
    String roofs =
        "  - { name: main roof, over: [store], %s%s%s }\n  - { name: wing, over: [den, study], %s%s }"
            .formatted(FRAME, HATCH, joins, FRAME, wing);
    return Chain.of(HOUSE.replace("ROOFS", roofs));
  }

  private static String join(String size, String from) {
    return ", joins: [{ to: wing, size: %s%s }]".formatted(size, from);
  }

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  @Test
  void withoutAnOpeningThereIsNoWayThoughBothAtticsAreEntered() {
    assertEquals(1, plan(two("", IN_DEN)).unrouted().size());
    assertEquals(1, plan(two(join("8 in x 8 in", ""), IN_DEN)).runs().size());
  }

  @Test
  @Feature("roof over some rooms")
  void aRoofOverSomeRoomsEndsWithThem() {
    // Store 3.8 m and its wall of 4-1/2 in; 101.6 mm outside: not along the outer walls to the
    // study.
    var x = two("", "").framed().attics().get(0).roofline().xRange();
    assertEquals(3800 + 114.3 + 101.6, x.length() / 1e6, 0.1);
  }

  @Test
  void aBodyGoesOnThroughAnOpeningOfItsSize() {
    // The way as under one roof, and 20 minutes to set up in the second attic. The 114.3 mm of wall
    // and 50 each side are passed, not laid; the lines, which lie 50 mm apart from the middle of
    // each
    // attic, are left and met again 10 mm on:
    // 20 - 0.9 x (0.2143 - 2 x 0.0100)
    Plan joined = plan(two(join("30 in x 40 in", ""), ""));
    assertEquals(19.8251, joined.totals().minutes() - plan(one()).totals().minutes(), 0.002);
    // 13 in is 330 mm, under the 350 that a body needs: nobody gets into the wing.
    assertEquals(1, plan(two(join("13 in x 40 in", ""), "")).unrouted().size());
  }

  @Test
  void anOpeningAsideCostsTheWayThere() {
    // 0.6 m wide, its near side 2.0016 m from the outer south face, 101.6 mm outside the room: its
    // middle is 2.2 m north of the room's south wall, 2.3 m aside: twice that at 0.9 a metre.
    Plan aside = plan(two(join("600 mm x 1 m", ", from: south 2001.6 mm"), ""));
    Plan straight = plan(two(join("600 mm x 1 m", ""), ""));
    assertEquals(4.14, aside.totals().minutes() - straight.totals().minutes(), 0.05);
  }

  /** Sheathing left in under the roof that runs onto it, or a boarded end: somebody looked. */
  @Test
  @Feature("attics stated shut to each other")
  void whatIsStatedShutIsNoWay() {
    Plan shut = plan(two(", joins: [{ to: wing, shut: yes }]", IN_DEN));
    assertEquals(List.of("desk/cat6-1"), shut.unrouted().stream().map(u -> u.id()).toList());
  }

  @Test
  void theRefereeAsksForTheOpening() {
    Chain open = two(join("8 in x 8 in", ""), IN_DEN);
    Chain shut = two("", IN_DEN);
    Chain elsewhere = two(join("8 in x 8 in", ", from: south 2 m"), IN_DEN);
    HollowHouse h = open.house();
    Chain looked = two(", joins: [{ to: wing, shut: yes }]", IN_DEN);
    for (Chain other : List.of(shut, elsewhere, looked)) {
      HollowHouse mixed =
          new HollowHouse(
              other.framed(), h.hollows(), h.sites(), h.stands(), h.accesses(), h.refused());
      String faults = Referee.check(plan(open), mixed, open.request()).refusals().toString();
      assertTrue(faults.contains("where no opening is stated"), faults);
    }
  }
}
