package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.Attic;
import holloway.framing.Dormers;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.framing.PlacedDormer;
import holloway.geometry.Box;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.house.Roof;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A low roof: nobody gets near its eaves, but a dormer over them gives the height to bore the
 * plates of a wall below it.
 */
@Feature("dormer over an attic")
class DormerTest {
  private static final String HOUSE =
      """
      house: Dormer House
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      inner-walls: { studs: 2x4, every: 16 in, bearing: no }
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        store: { level: main, size: 4 m x 8 m, plain: yes }
        hall: { level: main, size: 4 m x 6685.7 mm, east-of: store, align: north }
        den: { level: main, size: 4 m x 1200 mm, south-of: hall, align: west }
      roof:
        - { name: top, over: main, shape: gable, ridge: east-west, pitch: 4/12, frame: rafters, chord: 2x6, every: 16 in,
            insulation: none, hatch: { in: store, at: HATCH } DORMER }
      cabinet: { in: store, wall: west, from: south 4 m, height: 1.5 m }
      outlets:
        - { name: desk, in: den, wall: north, from: west 2.1 m, height: 400 mm, cables: [cat6] }
      """;

  private static final String MIDDLE = "[west 2 m, south 4 m]";

  /** Over the den and the wall between it and the hall, a metre in from the eave. */
  private static final String DORMER =
      ", dormers: [{ side: south, shape: COVER, from: west 5 m, width: 2.5 m, back: 1 m, height: 1.1 m }]";

  private static Chain house(String hatch, String dormer) {
    return Chain.of(
        HOUSE.replace("HATCH", hatch).replace(" DORMER", dormer.replace("COVER", "shed")));
  }

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  /** The bore into the wall between den and hall comes down from the attic. */
  private static boolean fromAbove(Plan p) {
    return p.holes().stream()
        .anyMatch(
            h ->
                h.kind().equals("top plate")
                    && h.stand().startsWith("attic")
                    && h.at().x() > 4_114_300_000L
                    && h.at().y() < 1_314_300_000L);
  }

  private static Polygon2 area(Chain c) {
    return c.house().findHollow("attic/top").orElseThrow().area().orElseThrow();
  }

  @Test
  void itsHeightLetsSomebodyBoreBelowIt() {
    // The studs' outside is 101.6 mm south of the room. Underside of the rafters x from there:
    // 6.35 mm + x / 3 over the plates, joists are 139.7 mm. 600 mm over the joists are first clear
    // (600 + 139.7 - 6.35) x 3 = 2200.05 mm in, an arm reaches 1600.05 mm: the wall at 1200 mm does
    // not see it. Below the dormer a body goes to its front at 1000, an arm 600 mm further.
    Chain low = house(MIDDLE, "");
    Chain high = house(MIDDLE, DORMER);
    assertEquals(1600.05 - 101.6, area(low).yRange().lo() / 1e6, 0.1);
    assertEquals(400 - 101.6, area(high).yRange().lo() / 1e6, 0.1);
    assertEquals(1, plan(low).unrouted().size());
    Plan p = plan(high);
    assertTrue(fromAbove(p));
    assertEquals(0, p.unrouted().size());
  }

  @Test
  void aHatchBelowItLetsSomebodyIn() {
    // 1001.6 mm from the eave the rafters leave 6.35 + 333.87 - 139.7 = 200 mm over the joists.
    String corner = "[west 2 m, south 900 mm]";
    String over = DORMER.replace("west 5 m", "west 1 m").replace("back: 1 m", "back: 400 mm");
    assertTrue(house(corner, "").house().findHollow("attic/top").isEmpty());
    Chain c = house(corner, over);
    assertTrue(c.house().findHollow("attic/top").isPresent());
    // As wide as a body, not less.
    String slit = over.replace("width: 2.5 m", "width: 340 mm").replace("west 1 m", "west 1.9 m");
    assertTrue(house(corner, slit).house().findHollow("attic/top").isEmpty());
    // A front of 590 mm is too low for a body, and so is what lies behind it.
    String lower = over.replace("height: 1.1 m", "height: 590 mm");
    assertTrue(house(corner, lower).house().findHollow("attic/top").isEmpty());
  }

  @Test
  void raftersEndAtItsHeaders() {
    for (String cover : List.of("shed", "gable")) {
      Chain c = house(MIDDLE, DORMER.replace("COVER", cover));
      Attic attic = c.framed().attics().get(0);
      PlacedDormer d = attic.dormers().get(0);
      // The roof begins 101.6 mm west of the room: from 5 m there. The slope is 1.1 m over the
      // joists at (1100 + 139.7 - 6.35) x 3 = 3700.05 mm from the eave, the front at 1000.
      assertEquals(5000 - 101.6, d.clear().x0() / 1e6, 0.1);
      assertEquals(1000 - 101.6, d.clear().y0() / 1e6, 0.1);
      assertEquals(3700.05 - 101.6, d.clear().y1() / 1e6, 0.1);
      List<Member> cut = c.members("top").stream().filter(m -> m.id().endsWith("-a-low")).toList();
      // Rafters every 406.4 mm from the west: those at 5080 mm (12.5 of them) to 7500 mm.
      assertEquals(6, cut.size(), cut::toString);
      for (Member m : cut) {
        double cos = 1 / Math.hypot(1, 1 / 3.0);
        assertEquals((1000 - 2 * 38.1) / cos, m.box().x1() / 1e6, 0.1);
      }
      for (Member m : c.members("top")) {
        if (m.id().contains("/dormer-1/")) {
          lowest(m).forEach(p -> assertTrue(p.z() >= attic.slopeUnderside(p.plan()) - 100, m::id));
        }
      }
      assertEquals(4, count(c, MemberKind.HEADER) + count(c, MemberKind.POST));
    }
  }

  private static long count(Chain c, MemberKind kind) {
    return c.members("top").stream()
        .filter(m -> m.id().contains("/dormer-1/") && m.kind() == kind)
        .count();
  }

  private static List<Point3> lowest(Member m) {
    Box b = m.box();
    List<Point3> out = new ArrayList<>();
    for (long x : new long[] {b.x0(), b.x1()}) {
      for (long y : new long[] {b.y0(), b.y1()}) {
        out.add(m.frame().toWorld(x, y, b.z0()));
      }
    }
    return out;
  }

  @Test
  void oneThatCannotStandThereIsNotBelieved() {
    assertTrouble("past the end of the roof", DORMER.replace("west 5 m", "west 6 m"));
    assertTrouble("already as high as its front", DORMER.replace("back: 1 m", "back: 3.7 m"));
    assertTrouble("higher than the ridge", DORMER.replace("height: 1.1 m", "height: 1.4 m"));
  }

  private static void assertTrouble(String why, String dormer) {
    Chain c = house(MIDDLE, dormer);
    Roof roof = c.placed().house().roofs().get(0);
    String said =
        Dormers.trouble(c.framed().attics(), roof, roof.dormers().get(0)).orElse("believed");
    assertTrue(said.contains(why), said);
    assertEquals(1600.05 - 101.6, area(c).yRange().lo() / 1e6, 0.1);
  }

  @Test
  void theRefereeMeasuresItByItself() {
    Chain with = house(MIDDLE, DORMER);
    Plan p = plan(with);
    assertSays(p, with, house(MIDDLE, ""), "further than an arm reaches under this roof");
    // moved along the eave, or lower than a body, it does not help
    assertSays(p, with, house(MIDDLE, DORMER.replace("west 5 m", "west 2 m")), "further than");
    assertSays(p, with, house(MIDDLE, DORMER.replace("1.1 m", "590 mm")), "further than");
  }

  private static void assertSays(Plan p, Chain own, Chain other, String what) {
    String faults = Spoiled.saidIn(other, own, p);
    assertTrue(faults.contains(what), faults);
  }
}
