package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A skylight's shaft: cable goes round it in an attic, and bays between joists end at it. */
@Feature("skylight shaft")
class SkylightTest {
  private static final String HOUSE =
      """
      house: Skylight House
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      inner-walls: { studs: 2x4, every: 16 in, bearing: no }
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        store: { level: main, size: 3 m x 9 m, plain: yes }
        hall: { level: main, size: 4 m x 9 m, east-of: store, align: south }
        den: { level: main, size: 3 m x 9 m, east-of: hall, align: south }
        study: { level: main, size: 2 m x 9 m, east-of: den, align: south }
      roof:
        - { name: top, over: main, ROOF LIGHT }
      cabinet: { in: store, wall: west, from: south 4.5 m, height: 1.5 m }
      outlets:
        - { OUTLET, cables: [cat6] }
      """;

  private static final String ATTIC =
      "shape: gable, ridge: east-west, pitch: 8/12, frame: rafters, chord: 2x6, every: 16 in,"
          + " insulation: none, hatch: { in: store, at: [west 1 m, south 4.5 m] }";
  private static final String FLAT =
      "shape: flat, run: east-west, frame: rafters, chord: 2x8, every: 16 in, insulation: none";
  private static final String DESK =
      "name: desk, in: den, wall: east, from: south 4.5 m, height: 400 mm";

  /** Across the middle of the hall, from 1 m north of its south wall to 1 m short of its north. */
  private static final String WIDE =
      ", skylights: [{ in: hall, at: [west 2 m, south 4.5 m], size: 600 mm x 2 m }]";

  private static Chain house(String roof, String light, String outlet) {
    return Chain.of(HOUSE.replace("ROOF", roof).replace(" LIGHT", light).replace("OUTLET", outlet));
  }

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  private static double laid(Plan p) {
    return p.runs().get(0).steps().stream()
        .filter(s -> s.id().startsWith("attic/") && s.kind().equals("leg"))
        .mapToDouble(Plan.PlanStep::m)
        .sum();
  }

  @Test
  void cableGoesRoundItInTheAttic() {
    Plan straight = plan(house(ATTIC, "", DESK));
    Plan round = plan(house(ATTIC, WIDE, DESK));
    assertEquals(0, straight.unrouted().size() + round.unrouted().size());
    // The opening is 2 m along north-south round 4.5 m, and 102 mm of framing and board stand round
    // it: from 3398 to 5602 mm. Lines lie every 50 mm: from the one at 4550 mm to 5650 and back to
    // 4650, 1100 + 1000 mm, less 100 that the straight way makes too.
    assertEquals(2.0, laid(round) - laid(straight), 1e-6);
    for (Plan.PlanStep s : round.runs().get(0).steps()) {
      for (int i = 0; s.id().startsWith("attic/") && i + 1 < s.path().size(); i++) {
        assertTrue(passes(s.path().get(i), s.path().get(i + 1)), s.path()::toString);
      }
    }
  }

  /** True unless a stretch laid square enters the shaft, x 4712.3 to 5516.3, y 3398 to 5602 mm. */
  private static boolean passes(Point3 a, Point3 b) {
    boolean beside =
        Math.max(a.x(), b.x()) <= 4_712_300_000L || Math.min(a.x(), b.x()) >= 5_516_300_000L;
    return beside
        || Math.max(a.y(), b.y()) <= 3_398_000_000L
        || Math.min(a.y(), b.y()) >= 5_602_000_000L;
  }

  @Test
  void baysOfAFlatRoofEndAtItsHeaders() {
    // The hall begins 3000 + 114.3 mm east of the store's west wall, the roof's joists 101.6 mm
    // west of that: the opening's middle lies at 5215.9 mm along them and shaft and headers take
    // 402 mm to both sides. Across, the opening lies from 3500 + 101.6 to 5500 + 101.6 mm; each bay
    // that it touches is shut from joist to joist.
    for (Hollow h : house(FLAT, WIDE, DESK).house().hollows()) {
      if (h.id().startsWith("top/roof-bay-")) {
        boolean met = h.clear().y1() > 3_601_600_000L && h.clear().y0() < 5_601_600_000L;
        boolean west = met && h.clear().x1() == 4_813_900_000L;
        boolean east = met && h.clear().x0() == 5_617_900_000L;
        boolean whole = !met && h.clear().x().contains(5_215_900_000L);
        assertTrue(west || east || whole, h.id() + h.clear());
      }
    }
  }

  @Test
  void fromWallToWallItPartsAFlatRoof() {
    String parting =
        ", skylights: [{ in: hall, at: [west 2 m, south 4.5 m], size: 600 mm x 8.9 m }]";
    Plan parted = plan(house(FLAT, parting, DESK));
    // No bay leads past it any more: what is left is stud by stud within the outer wall.
    assertEquals(0, studs(plan(house(FLAT, "", DESK))));
    assertTrue(studs(parted) >= 2, parted.holes()::toString);
  }

  private static long studs(Plan p) {
    return p.holes().stream()
        .filter(h -> h.id().contains("/outside-") && h.id().contains("/stud/"))
        .count();
  }

  @Test
  void noCeilingOutletInTheOpening() {
    assertEquals(0, point("west 1 m, south 4.5 m", WIDE).unrouted().size());
    assertEquals(1, point("west 2 m, south 4.5 m", WIDE).unrouted().size());
    assertEquals(0, point("west 2 m, south 4.5 m", "").unrouted().size());
  }

  private static Plan point(String at, String light) {
    return plan(house(ATTIC, light, "name: point, in: hall, ceiling: [" + at + "]"));
  }

  @Test
  void theRefereeSeesItByItself() {
    Chain without = house(ATTIC, "", DESK);
    Plan p = plan(without);
    Chain with = house(ATTIC, WIDE, DESK);
    HollowHouse h = without.house();
    HollowHouse mixed =
        new HollowHouse(
            with.framed(), h.hollows(), h.sites(), h.stands(), h.accesses(), h.refused());
    String faults = Referee.check(p, mixed, with.request()).refusals().toString();
    assertTrue(faults.contains("goes through the skylight of hall"), faults);
  }
}
