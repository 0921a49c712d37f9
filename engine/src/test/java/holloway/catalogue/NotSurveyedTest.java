package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Nothing is assumed in a room that nobody taped, behind glass, or beside a round window. */
@Feature("room not surveyed")
class NotSurveyedTest {
  /** Three rooms in a row and no roof space: the middle one lies between cabinet and desk. */
  private static final String ROW =
      """
      house: Row Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { kind: masonry, thickness: 10 in }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
      rooms:
        south store: { level: ground, size: 20 ft x 12 ft, plain: yes }
        hall: { level: ground, size: 20 ft x 6 ft, plain: yes, north-of: south store, align: west }
        north store: { level: ground, size: 20 ft x 12 ft, plain: yes, north-of: hall, align: west }
      walls:
        - { between: [south store, hall], name: low }
        - { between: [hall, north store], name: high }
      cabinet: { in: south store, wall: west, from: north 2 ft, height: 5 ft }
      outlets:
        - { name: desk, in: north store, wall: west, from: south 2 ft, height: 16 in, cables: [cat6] }
      """;

  private static final String CLOSED = ROW.replace("hall: {", "hall: { surveyed: no,");

  @Test
  void nobodyGoesThroughARoomNotSurveyed() {
    Plan open = WrittenHouse.of(ROW).plan("outside");
    // (set-up 4, board 1, void 1, board 1) + seal 2, twice
    assertEquals(List.of(9.0, 9.0), open.holes().stream().map(Plan.PlannedHole::minutes).toList());
    Plan closed = WrittenHouse.of(CLOSED).plan("outside");
    assertEquals(
        List.of("desk/cat6-1"), closed.unrouted().stream().map(Plan.Unrouted::id).toList());
    WrittenHouse house = WrittenHouse.of(CLOSED);
    assertTrue(house.hollows().stands().stream().noneMatch(s -> s.id().equals("room/hall")));
    // the walls beside it are still ours, to be opened from our side
    assertTrue(
        house.hollows().accesses().stream().anyMatch(a -> a.id().startsWith("low/"))
            && house.hollows().accesses().stream().noneMatch(a -> a.room().equals("hall")));
    List<String> says =
        Referee.check(open, house.hollows(), house.request()).refusals().stream()
            .map(Object::toString)
            .toList();
    assertTrue(
        says.stream().anyMatch(r -> r.contains("lies in hall, which was not surveyed")),
        says::toString);
  }

  @Test
  @Feature("glazed wall")
  void glassIsNoWay() {
    String glass = ROW.replace("name: high", "name: high, kind: glazed, thickness: 4 in");
    WrittenHouse house = WrittenHouse.of(glass);
    assertTrue(house.hollows().hollows().stream().noneMatch(h -> h.id().startsWith("high/")));
    Plan p = house.plan("outside");
    assertEquals(List.of("desk/cat6-1"), p.unrouted().stream().map(Plan.Unrouted::id).toList());
    Plan onIt =
        WrittenHouse.of(
                glass.replace("wall: west, from: south 2 ft", "wall: south, from: west 2 ft"))
            .plan();
    String why = onIt.unrouted().get(0).whyNot().toString();
    assertTrue(why.contains("the wall is glass"), why);
  }

  @Test
  @Feature("round window")
  void aRoundWindowIsFramedAsTheSquareRoundIt() {
    String round =
        ROW
            + "openings:\n  - { window, shape: round, between: [south store, hall], from: west 8 ft, width: 2 ft, sill: 3 ft }\n";
    String square =
        round.replace("shape: round, ", "").replace("sill: 3 ft", "sill: 3 ft, head: 5 ft");
    assertEquals(
        WrittenHouse.of(square).framed().members().toString(),
        WrittenHouse.of(round).framed().members().toString());
    assertTrue(
        WrittenHouse.of(round).framed().members().stream()
            .anyMatch(m -> m.id().startsWith("low/header")));
  }
}
