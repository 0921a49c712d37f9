package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Minutes;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import org.junit.jupiter.api.Test;

/** A loose old cable draws a new one in; one that is stapled, or may be, draws nothing. */
@Feature("old cable as pull line")
class OldCableTest {
  private static final String LOOSE =
      """
      house: Old Cable Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in, fill: foam }
      outer-walls: { studs: 2x4, every: 16 in }
      levels: { ground: { floor: slab, ceiling-height: 8 ft } }
      rooms:
        store: { level: ground, size: 8 ft x 12 ft, plain: yes }
        hall: { level: ground, size: 6 ft x 12 ft, east-of: store, align: south, plain: yes }
        lounge: { level: ground, size: 12 ft x 12 ft, east-of: hall, align: south, plain: yes }
      hollows:
        - old-cable: tv lead
          from: { in: store, wall: east, from: south 6 ft, height: 5 ft }
          to: { in: lounge, wall: east, from: south 6 ft, height: 16 in }
          length: 10 m
          hole: 13 mm
          stapled: no
      cabinet: { in: store, wall: east, from: south 5 ft, height: 5 ft }
      outlets:
        - { name: desk, in: lounge, wall: east, from: south 5 ft, height: 16 in, cables: [cat6] }
      """;
  private static final String STAPLED = LOOSE.replace("stapled: no", "stapled: yes");
  private static final String UNKNOWN = LOOSE.replace("    stapled: no\n", "");

  private static Plan plan(String text) {
    return WrittenHouse.of(text).plan("outside");
  }

  @Test
  void itIsTheWholeWay() {
    Plan p = plan(LOOSE);
    // Cut-out 10; a foot open on each side, 0.3048 m at 2; tie on 5, 10 m at 0.6.
    Minutes.total(p, 10 + 2 * 0.6096 + 5 + 6);
    assertEquals(0, p.totals().holes());
    assertEquals("old cable", Minutes.leg(p, "conduit/tv lead").hollow().orElseThrow());
  }

  @Test
  void stapledOrUnknownItIsNotUsed() {
    for (String text : new String[] {STAPLED, UNKNOWN}) {
      Plan p = plan(text);
      assertEquals(2, p.totals().holes());
      // Through both walls at 9 each, 10.8168 m in the open.
      Minutes.total(p, 10 + 2 * 9 + 2 * 10.8168);
      String why = WrittenHouse.of(text).findRefused("old cable tv lead").orElseThrow().why();
      assertTrue(why.contains("stapled"), why);
    }
  }

  @Test
  void itDrawsNoMoreThanItsNarrowestHoleTakes() {
    // 13 mm takes one cat6 (53 %), not two (31 %): see SharedHoleTest.
    Plan p = plan(LOOSE.replace("[cat6]", "[cat6, cat6]"));
    long drawn =
        p.runs().stream()
            .filter(r -> r.steps().stream().anyMatch(s -> s.id().equals("conduit/tv lead")))
            .count();
    assertEquals(1, drawn);
  }

  @Test
  void theRefereeRefusesAStapledOneAndTooMany() {
    Plan one = plan(LOOSE);
    String stapled = Spoiled.refused(one, WrittenHouse.of(STAPLED));
    assertTrue(stapled.contains("draws nothing in"), stapled);
    Plan two = plan(LOOSE.replace("[cat6]", "[cat6, cat6]").replace("13 mm", "16 mm"));
    String narrow = Spoiled.refused(two, WrittenHouse.of(LOOSE.replace("[cat6]", "[cat6, cat6]")));
    assertTrue(narrow.contains("2 cables do not pass where it is 13 mm wide"), narrow);
  }
}
