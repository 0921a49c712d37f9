package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A crawlspace with piers, and with too little height for a body. */
@Feature("piers and low crawlspaces")
class CrawlspaceTest {
  private static final String OPEN =
      """
      house: Pier Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in, fill: empty }
      levels:
        ground:
          floor:
            joists: 2x10
            every: 16 in
            run: north-south
            over: { crawlspace: { clearance: 600 mm, access: { floor-hatch: { in: store, at: [west 3 ft, south 6 ft], size: 24 in x 24 in } } } }
          ceiling-height: 8 ft
      rooms:
        store: { level: ground, size: 8 ft x 12 ft, plain: yes }
        den: { level: ground, size: 20 ft x 12 ft, east-of: store, align: south }
      obstacles:
      cabinet: { in: store, wall: west, from: south 5 ft, height: 16 in }
      outlets:
        - { name: desk, in: den, wall: east, from: south 5 ft, height: 16 in, cables: [cat6] }
      """;

  private static String with(String... piers) {
    StringBuilder list = new StringBuilder("obstacles:\n");
    for (String p : piers) {
      list.append("  - { pier, below-floor-of: den, ").append(p).append(" }\n");
    }
    return OPEN.replace("obstacles:\n", piers.length == 0 ? "" : list.toString());
  }

  private static Plan plan(String text) {
    return WrittenHouse.of(text).plan("attic", "surface", "outside");
  }

  private static List<String> unrouted(String text) {
    return plan(text).unrouted().stream().map(Plan.Unrouted::id).toList();
  }

  @Test
  void cableGoesUnderTheFloor() {
    Plan p = plan(with());
    assertEquals(List.of("crawlspace"), p.totals().zones());
    assertEquals(2, p.totals().holes());
  }

  @Test
  void itGoesRoundAPierAndTheRefereeSeesOne() {
    Plan straight = plan(with());
    // The cable runs 5 ft or so from the south: a pier of 4 ft stands across it.
    String pier = with("at: [west 10 ft, south 5 ft], size: 1 ft x 4 ft");
    Plan round = plan(pier);
    assertEquals(List.of(), round.unrouted());
    double more = round.totals().routeM() - straight.totals().routeM();
    assertTrue(more > 0.5, "longer by " + more);
    WrittenHouse house = WrittenHouse.of(pier);
    String says = Referee.check(straight, house.hollows(), house.request()).refusals().toString();
    assertTrue(says.contains("pier"), says);
  }

  @Test
  void aRowOfPiersShutsABodyOut() {
    // 12 ft from wall to wall; four of 1 ft every 36 in leave 24 in, enough for 460 mm (18.1 in).
    String[] row = new String[4];
    String[] close = new String[7];
    for (int i = 0; i < 4; i++) {
      row[i] = "at: [west 6 ft, south %d in], size: 1 ft x 1 ft".formatted(18 + 36 * i);
    }
    // Seven of 1 ft every 20 in leave 8 in.
    for (int i = 0; i < 7; i++) {
      close[i] = "at: [west 6 ft, south %d in], size: 1 ft x 1 ft".formatted(12 + 20 * i);
    }
    assertEquals(List.of(), unrouted(with(row)));
    assertEquals(List.of("desk/cat6-1"), unrouted(with(close)));
  }

  @Test
  void underEighteenInchesNobodyCrawls() {
    String low = with().replace("clearance: 600 mm", "clearance: 456 mm");
    WrittenHouse house = WrittenHouse.of(low);
    assertTrue(house.findRefused("crawlspace").orElseThrow().why().contains("a body needs 457 mm"));
    assertEquals(List.of("desk/cat6-1"), unrouted(low));
    assertEquals(List.of(), unrouted(low.replace("456 mm", "457 mm")));
  }

  @Test
  void aPartOverASlabHasNoSpaceUnderIt() {
    String slab =
        with()
            .replace(
                "east-of: store, align: south }", "east-of: store, align: south, floor: slab }");
    assertEquals(List.of("desk/cat6-1"), unrouted(slab));
  }
}
