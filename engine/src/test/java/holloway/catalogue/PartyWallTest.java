package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A wall shared with a neighbour is not bored, cut into, fixed in or crossed. */
@Feature("party wall")
class PartyWallTest {
  /** Two stores without a roof space: through the wall between them is the only way. */
  private static final String HOUSE =
      """
      house: Party Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
      rooms:
        south store: { level: ground, size: 20 ft x 12 ft, plain: yes }
        north store: { level: ground, size: 20 ft x 12 ft, plain: yes, north-of: south store, align: west }
      walls:
        - { between: [south store, north store], name: middle }
      cabinet: { in: south store, wall: west, from: north 2 ft, height: 5 ft }
      outlets:
        - { name: desk, in: north store, wall: DESK, from: south 2 ft, height: 16 in, cables: [cat6] }
      """
          .replace("DESK", "west");

  private static final String PARTY = HOUSE.replace("name: middle", "name: middle, party: yes");

  @Test
  void throughTheWallUnlessItIsShared() {
    Plan open = WrittenHouse.of(HOUSE).plan("outside");
    assertEquals(1, open.totals().holes());
    // set-up 4, board 1, void 1, board 1, seal 2
    assertEquals(9, open.holes().get(0).minutes(), 1e-9);
    Plan shut = WrittenHouse.of(PARTY).plan("outside");
    assertEquals(List.of("desk/cat6-1"), shut.unrouted().stream().map(Plan.Unrouted::id).toList());
    String why = shut.unrouted().get(0).whyNot().toString();
    assertTrue(why.contains("middle: it is shared with somebody else"), why);
  }

  @Test
  void theRefereeRefusesThePlanThatWentThrough() {
    Plan open = WrittenHouse.of(HOUSE).plan("outside");
    WrittenHouse shared = WrittenHouse.of(PARTY);
    List<String> says =
        Referee.check(open, shared.hollows(), shared.request()).refusals().stream()
            .map(Object::toString)
            .toList();
    assertTrue(
        says.stream().anyMatch(r -> r.contains("cuts into middle, a wall shared with")),
        says::toString);
  }

  @Test
  void noBoxIsCutIntoItNorCableClippedToIt() {
    String onIt =
        PARTY.replace(
            "in: north store, wall: west, from: south 2 ft",
            "in: south store, wall: north, from: west 8 ft");
    Plan shut = WrittenHouse.of(onIt).plan();
    String why = shut.unrouted().get(0).whyNot().toString();
    assertTrue(why.contains("party wall"), why);
    Plan open = WrittenHouse.of(onIt.replace(", party: yes", "")).plan();
    assertEquals(List.of(), open.unrouted());
  }

  @Test
  void cableGoesRoundTheRoomTheOtherWay() {
    // From the west wall to the east wall of one store, both near its north wall.
    String both =
        HOUSE.replace(
            "in: north store, wall: west, from: south 2 ft",
            "in: south store, wall: east, from: north 2 ft");
    Plan along = WrittenHouse.of(both).plan("outside");
    Plan round =
        WrittenHouse.of(both.replace("name: middle", "name: middle, party: yes")).plan("outside");
    assertEquals(List.of(), round.unrouted());
    // 2 ft at both ends becomes 10 ft: 16 ft more along the walls
    assertEquals(16 * 0.3048, round.totals().routeM() - along.totals().routeM(), 0.01);
  }

  @Test
  void whatLiesBehindItIsNoOutside() {
    String edge =
        HOUSE
            .replace(
                "walls:\n", "walls:\n  - { side: south store west, name: gable, party: yes }\n")
            .replace(
                "in: south store, wall: west, from: north 2 ft",
                "in: south store, wall: east, from: north 2 ft");
    assertFalse(edge.equals(HOUSE));
    WrittenHouse h = WrittenHouse.of(edge);
    assertTrue(
        h.hollows().sites().stream().noneMatch(s -> s.id().startsWith("gable/")),
        h.hollows().sites()::toString);
    assertTrue(
        WrittenHouse.of(edge.replace(", party: yes", "")).hollows().sites().stream()
            .anyMatch(s -> s.id().startsWith("gable/")));
  }
}
