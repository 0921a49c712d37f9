package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Two rooms that meet without a wall, under the ceiling or under a header. */
@Feature("rooms that meet without a wall")
class OpenSideTest {
  private static final String WALLED =
      """
      house: Open Toy
      place: us
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { above: ground, floor: { joists: 2x10, run: east-west }, ceiling-height: 8 ft }
      rooms:
        kitchen: { level: ground, size: 10 ft x 10 ft }
        diner: { level: ground, size: 10 ft x 10 ft, east-of: kitchen, align: south }
        loft: { level: upper, size: 20 ft x 10 ft, above: kitchen, align: south-west }
      roof:
        - { over: upper, shape: gable, ridge: east-west, pitch: 6/12, eaves: 16 in, frame: trusses }
      cabinet: { in: kitchen, wall: north, from: west 4 ft, height: 16 in }
      outlets:
        - { name: desk, in: diner, wall: north, from: east 4 ft, height: 16 in, cables: [cat6] }
      """;

  private static final String OPEN =
      WALLED.replace("roof:", "walls:\n  - { between: [kitchen, diner], kind: open }\nroof:");

  private static final String HEADED = OPEN.replace("kind: open", "kind: open, header: 10 in");

  private static Plan inSight(String text) {
    return WrittenHouse.of(text).plan("attic", "joist-bays", "under-floor", "outside");
  }

  private static double metres(Plan p) {
    return p.runs().get(0).routeM();
  }

  @Test
  void theFacesAreOneLine() {
    WrittenHouse open = WrittenHouse.of(OPEN);
    long east = open.placed().getRoom("kitchen").outline().xRange().hi();
    assertEquals(3_048_000_000L, east);
    assertEquals(east, open.placed().getRoom("diner").outline().xRange().lo());
    assertTrue(
        open.placed().walls().stream()
            .filter(w -> w.level().equals("ground"))
            .noneMatch(w -> w.id().contains("diner-kitchen")));
    // under a header there is a wall's thickness between them: 3-1/2 in and two boards
    WrittenHouse headed = WrittenHouse.of(HEADED);
    assertEquals(
        3_048_000_000L + 114_300_000, headed.placed().getRoom("diner").outline().xRange().lo());
    assertEquals(
        List.of("header"),
        headed.framed().membersOf("ground/diner-kitchen/1").stream()
            .filter(m -> m.kind().isTimber())
            .map(m -> m.kind().word())
            .toList());
  }

  @Test
  void cableRunsOnWithoutAHole() {
    Plan walled = inSight(WALLED);
    assertEquals(1, walled.totals().holes());
    Plan open = inSight(OPEN);
    assertEquals(0, open.totals().holes());
    // 2 x (10 ft - 4 ft) along the wall, from 406 mm down to the skirting at 60 mm and up again,
    // and from 12 mm before the face through 12.7 mm of board to the middle of the bay; the desk
    // stands a little aside of a stud.
    assertEquals(12 * 0.3048 + 2 * 0.3464 + 0.0692, metres(open), 0.03);
    assertTrue(
        WrittenHouse.way(open, "desk/cat6-1").stream().anyMatch(s -> s.startsWith("open/")),
        open.runs()::toString);
    Plan headed = inSight(HEADED);
    assertEquals(0, headed.totals().holes());
    assertEquals(metres(open) + 0.1143, metres(headed), 0.002);
  }

  @Test
  void theJoistBayRunsOnOverBoth() {
    List<Hollow> bays =
        WrittenHouse.of(OPEN).hollows().hollows().stream()
            .filter(h -> h.kind() == HollowKind.JOIST_BAY)
            .toList();
    assertTrue(
        bays.stream().allMatch(h -> h.clear().x().length() > 6_000_000_000L),
        () -> bays.stream().map(h -> h.id() + " " + h.clear().x().length()).toList().toString());
    // A bearing wall there has blocks over it, and each bay is two.
    String bearing = OPEN.replace("kind: open", "bearing: yes");
    assertTrue(
        WrittenHouse.of(bearing).hollows().hollows().stream()
            .filter(h -> h.kind() == HollowKind.JOIST_BAY)
            .allMatch(h -> h.clear().x().length() < 3_300_000_000L));
  }

  @Test
  void nothingGoesUpOrAcrossInTheAir() {
    // From the south side of one to the south side of the other: round by the wall or over the
    // ceiling, never across the open floor. The walled house's plan would do just that.
    for (String text : List.of(OPEN, HEADED)) {
      String south =
          text.replace(
              "in: diner, wall: north, from: east 4 ft", "in: diner, wall: south, from: east 4 ft");
      assertEquals(List.of(), inSight(south).unrouted());
    }
    WrittenHouse walled =
        WrittenHouse.of(
            WALLED
                .replace(
                    "in: diner, wall: north, from: east 4 ft",
                    "in: kitchen, wall: south, from: east 8 in")
                .replace(
                    "in: kitchen, wall: north, from: west 4 ft",
                    "in: kitchen, wall: north, from: east 8 in"));
    Plan up = walled.plan("attic", "joist-bays", "under-floor", "outside");
    WrittenHouse open = WrittenHouse.of(OPEN);
    List<String> says =
        Referee.check(up, open.hollows(), walled.request()).refusals().stream()
            .map(Object::toString)
            .filter(r -> r.contains("hangs in the air"))
            .toList();
    assertTrue(!says.isEmpty(), up.runs()::toString);
  }

  @Test
  void nothingIsFixedOnAnOpenSide() {
    Stream.of(OPEN, HEADED)
        .forEach(
            text -> {
              String on =
                  text.replace(
                      "in: diner, wall: north, from: east", "in: diner, wall: west, from: north");
              AssertionError e =
                  assertThrows(AssertionError.class, () -> planned(on), "an outlet in the air");
              assertTrue(e.getMessage().contains("wall"), e.getMessage());
            });
  }

  private static void planned(String text) {
    var house = WrittenHouse.of(text);
    var problems = holloway.routing.Ends.of(house.placed(), house.request()).problems();
    if (!problems.isEmpty()) {
      throw new AssertionError(problems.toString());
    }
  }

  @Test
  void roomsThatDoNotMeetAreNotOpenToEachOther() {
    Exception e =
        assertThrows(
            RuntimeException.class,
            () ->
                WrittenHouse.of(
                    OPEN.replace(
                            "east-of: kitchen, align: south }",
                            "east-of: kitchen, align: south }\n  pantry: { level: ground, size: 10 ft x 4 ft, north-of: kitchen, align: west }")
                        .replace("[kitchen, diner], kind", "[pantry, diner], kind")));
    assertTrue(e.getMessage().contains("nothing is open between"), e.getMessage());
  }
}
