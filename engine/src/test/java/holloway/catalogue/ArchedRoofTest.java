package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.Attic;
import holloway.framing.Member;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Under a curve there is height near the eaves where a slope as high in the middle leaves none: a
 * wall 1.2 m from the eaves' wall is bored from above.
 *
 * <p>Bearing faces lie 101.6 mm outside the rooms, 8203.2 mm apart. Joists are 139.7 mm; the arch
 * springs 6.35 mm over the plates and rises to 1200 + 139.7 = 1339.7: by 1333.35 over a half span
 * of 4101.6, so that its radius is (4101.6^2 + 1333.35^2) / (2 x 1333.35) = 6975.3 mm.
 */
@Feature("arched roof")
class ArchedRoofTest {
  private static final String HOUSE =
      """
      house: Arch House
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
        - { name: top, over: main, SHAPE, ridge: east-west, frame: rafters, chord: 2x6, every: 16 in,
            insulation: none, hatch: { in: store, at: [west 2 m, south 4 m] } }
      cabinet: { in: store, wall: west, from: south 4 m, height: 1.5 m }
      outlets:
        - { name: desk, in: den, wall: north, from: west 2.1 m, height: 400 mm, cables: [cat6] }
      """;

  private static final String ARCH = "shape: arched, rise: 1200 mm";

  private static Chain house(String shape) {
    return Chain.of(HOUSE.replace("SHAPE", shape));
  }

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  private static double reach(Chain c) {
    return c.house().findHollow("attic/top").orElseThrow().area().orElseThrow().yRange().lo() / 1e6;
  }

  @Test
  void thereIsHeightNearItsEaves() {
    // a slope as high in the middle: 1333.35 in 4101.6 is near 3.9/12
    assertEquals(1, plan(house("shape: gable, pitch: 39/120")).unrouted().size());
    Plan p = plan(house(ARCH));
    assertEquals(List.of(), p.unrouted());
    assertTrue(
        p.holes().stream()
            .anyMatch(h -> h.kind().equals("top plate") && h.stand().startsWith("attic")));
  }

  @Test
  void theHeadroomIsThatOfACircle() {
    Chain c = house(ARCH);
    Attic a = c.framed().attics().get(0);
    long south = a.roofline().yRange().lo();
    // in the middle 1200 over the joists; 2000 from the eave: 2101.6 from the middle, where the
    // circle lies sqrt(6975.3^2 - 2101.6^2) = 6651.2 over its centre, 324.1 lower
    assertEquals(1200, headroom(a, south, 4_101_600_000L), 0.1);
    assertEquals(1200 - 324.1, headroom(a, south, 2_000_000_000L), 0.2);
    // 600 over the joists lie 600 under the crown: sqrt(6975.3^2 - 6375.3^2) = 2830.3 from the
    // middle, 1271.3 from the eave; an arm reaches 600 further
    assertEquals(671.3 - 101.6, reach(c), 0.3);
    assertTrue(house("shape: arched, rise: 590 mm").house().findHollow("attic/top").isEmpty());
  }

  private static double headroom(Attic a, long south, long in) {
    return a.headroom(new Point2(a.roofline().xRange().mid(), south + in)) / 1e6;
  }

  @Test
  void itsRibsTouchTheCircleFromOutside() {
    Chain c = house(ARCH);
    Attic a = c.framed().attics().get(0);
    List<Member> ribs = c.members("top").stream().filter(m -> m.id().contains("/rib-")).toList();
    assertEquals(a.chords().size() * 12, ribs.size());
    for (Member m : ribs) {
      long whole = m.box().x1();
      assertEquals(0, over(a, m, whole / 2), 0.01, m::id);
      assertTrue(over(a, m, whole / 10) > 0 && over(a, m, whole - whole / 10) > 0, m::id);
    }
  }

  /** Millimetres from the arch up to the underside of a piece, so far along it. */
  private static double over(Attic a, Member m, long along) {
    Point3 p = m.frame().toWorld(along, 0, 0);
    return (p.z() - a.slopeUnderside(p.plan())) / 1e6;
  }

  @Test
  void oneHigherThanHalfACircleIsNotBelieved() {
    // half the span is 4101.6; 6.35 and 139.7 aside
    Chain c = house("shape: arched, rise: 4 m");
    assertTrue(c.house().findHollow("attic/top").isEmpty());
    assertEquals(1, plan(c).unrouted().size());
    assertTrue(house("shape: arched, rise: 3.9 m").house().findHollow("attic/top").isPresent());
  }

  @Test
  void theRefereeMeasuresItByItself() {
    Chain own = house(ARCH);
    Plan p = plan(own);
    assertSays(p, own, house("shape: arched, rise: 800 mm"), "further than an arm reaches");
    assertSays(p, own, house("shape: arched, rise: 4 m"), "further than an arm reaches");
    assertSays(p, own, house("shape: gable, pitch: 39/120"), "further than an arm reaches");
  }

  private static void assertSays(Plan p, Chain own, Chain other, String what) {
    String faults = Spoiled.saidIn(other, own, p);
    assertTrue(faults.contains(what), faults);
  }
}
