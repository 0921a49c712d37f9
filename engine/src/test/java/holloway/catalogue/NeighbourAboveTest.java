package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The shared wall lies elsewhere upstairs: the room over the den is a neighbour's. */
@Feature("neighbour above, shared line elsewhere upstairs")
class NeighbourAboveTest {
  private static final String DESK =
      "{ name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }";
  private static final String CEILING =
      "{ name: point, in: den, ceiling: [west 5 ft, south 6 ft], cables: [cat6] }";
  private static final String OURS = TwoStoreys.with(DESK, CEILING, "bearing: yes", "bearing: no");
  private static final String THEIRS =
      OURS.replace("bedroom: { level: upper,", "bedroom: { ours: no, level: upper,")
          .replace("hatch: { in: bedroom, at: [west 2 ft,", "hatch: { in: office, at: [west 6 ft,");

  @Test
  void theirFloorIsNotFished() {
    Plan open = WrittenHouse.of(OURS).plan("surface", "outside");
    assertEquals(1, open.totals().holes());
    Plan shut = WrittenHouse.of(THEIRS).plan("surface", "outside");
    assertEquals(List.of("point/cat6-1"), shut.unrouted().stream().map(Plan.Unrouted::id).toList());
  }

  @Test
  void theRefereeSaysWhoseItIs() {
    Plan open = WrittenHouse.of(OURS).plan("surface", "outside");
    WrittenHouse theirs = WrittenHouse.of(THEIRS);
    List<String> says =
        Referee.check(open, theirs.hollows(), theirs.request()).refusals().stream()
            .map(Object::toString)
            .toList();
    assertTrue(
        says.stream().anyMatch(r -> r.contains("under or in bedroom, which is somebody else's")),
        says::toString);
  }

  @Test
  @Feature("neighbour's attic")
  void theirAtticIsNotEntered() {
    WrittenHouse theirs = WrittenHouse.of(THEIRS);
    var bedroom = theirs.placed().getRoom("bedroom").outline().xRange();
    var attic =
        theirs.hollows().hollows().stream()
            .filter(h -> h.id().startsWith("attic/"))
            .findFirst()
            .orElseThrow();
    assertTrue(attic.area().orElseThrow().xRange().hi() <= bedroom.lo(), attic::toString);
    assertTrue(
        WrittenHouse.of(OURS).hollows().hollows().stream()
            .filter(h -> h.id().startsWith("attic/"))
            .anyMatch(h -> h.area().orElseThrow().xRange().hi() > bedroom.lo() + 1_000_000_000L));
  }

  @Test
  void onlyTheirPartOfALongWallIsShared() {
    // The outer wall in the south stands along both the office and their bedroom.
    var walls = WrittenHouse.of(THEIRS).placed().walls();
    assertTrue(
        walls.stream()
            .filter(w -> w.id().contains("office-bedroom") || w.id().equals("high wall"))
            .allMatch(w -> w.isParty()));
    for (String room : List.of("office", "bedroom")) {
      assertEquals(
          List.of(room.equals("bedroom")),
          walls.stream()
              .filter(w -> w.faces().stream().allMatch(f -> f.room().equals(room)))
              .map(w -> w.isParty())
              .distinct()
              .toList());
    }
  }

  @Test
  @Feature("neighbour's attic")
  void theirHatchIsNoWayIn() {
    WrittenHouse theirs =
        WrittenHouse.of(
            OURS.replace("bedroom: { level: upper,", "bedroom: { ours: no, level: upper,"));
    assertTrue(
        theirs.findRefused("attic").orElseThrow().why().contains("nobody works in that room"));
  }
}
