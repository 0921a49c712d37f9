package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * An opening between two attics stands over the higher of the two ceilings and under both slopes;
 * where the house leaves no such place it is not believed.
 */
@Feature("attics joined at two heights")
class AtticsAtTwoHeightsTest {
  private static final String HOUSE =
      """
      house: Two Heights
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      inner-walls: { studs: 2x4, every: 16 in }
      levels: { main: { ceiling-height: 2.4 m, floor: slab } }
      rooms:
        store: { level: main, size: 3.8 m x 9 m, plain: yes }
        den: { level: main, size: 3.7 m x 9 m, east-of: store, align: south, ceiling-height: HIGH }
        study: { level: main, size: 3 m x 9 m, east-of: den, align: south, ceiling-height: HIGH }
      roof:
        - { name: main roof, over: [store], shape: gable, ridge: RIDGE, FRAME,
            hatch: { in: store, at: [west 1.9 m, south 4.5 m], size: 22 in x 30 in },
            joins: [{ to: wing, size: OPENING }] }
        - { name: wing, over: [den, study], shape: gable, ridge: east-west, FRAME,
            hatch: { in: den, at: [east 1 m, south 4.5 m], size: 22 in x 30 in } }
      cabinet: { in: store, wall: west, from: south 4.5 m, height: 1.5 m }
      outlets:
        - { name: desk, in: den, wall: east, from: south 4.5 m, height: 400 mm, cables: [cat6] }
      """;

  private static final String FRAME =
      "pitch: 8/12, frame: rafters, chord: 2x6, every: 24 in, insulation: 10 in loose";

  private static Chain house(String high, String ridge, String opening) {
    return Chain.of(
        HOUSE
            .replace("HIGH", high)
            .replace("RIDGE", ridge)
            .replace("OPENING", opening)
            .replace("FRAME", FRAME));
  }

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  private static Site opening(Chain c) {
    return c.house().findSite("attic/main roof/way-to-wing").orElseThrow();
  }

  private static void isShut(Chain c, String why) {
    assertEquals(1, plan(c).unrouted().size());
    assertEquals(
        1,
        c.house().refused().stream()
            .filter(r -> r.what().equals("opening from attic main roof into wing"))
            .filter(r -> r.why().contains(why))
            .count());
  }

  /** 600 mm up from one ceiling to the other: the way through lies over the higher joists. */
  @Test
  void theOpeningStandsOverTheHigherCeiling() {
    Chain c = house("3 m", "east-west", "8 in x 8 in");
    Site s = opening(c);
    assertEquals(s.a().z(), s.b().z());
    long wing =
        c.framed().attics().stream()
            .filter(a -> a.id().equals("wing"))
            .findFirst()
            .get()
            .chordTopZ();
    assertEquals(wing + 25_000_000, s.a().z());
    Plan level = plan(house("2.4 m", "east-west", "8 in x 8 in"));
    assertEquals(
        1,
        plan(c).runs().size(),
        () ->
            plan(c).unrouted()
                + " "
                + c.house().refused().stream().filter(r -> !r.what().startsWith("top")).toList());
    // up to the higher ceiling beside the opening, in the main attic, and 0.6 m more down to the
    // desk; nothing else differs
    assertEquals(1.2, plan(c).totals().routeM() - level.totals().routeM(), 0.02);
  }

  /** A room's wall stands between attics that lie 1.1 m apart in height. */
  @Test
  void anOpeningOutOfReachIsNotBelieved() {
    isShut(house("3.5 m", "east-west", "8 in x 8 in"), "over the joists on one side");
  }

  /**
   * The main roof comes down to the wall between: at its eave the slope is 6.35 mm x 2/3 of the way
   * above the joists, so that no opening of 200 mm stands there.
   */
  @Test
  void anOpeningAboveASlopeIsNotBelieved() {
    isShut(house("2.4 m", "north-south", "8 in x 8 in"), "the slope leaves");
  }

  /**
   * East-west ridge, 9 m and two walls: 4.6 m from eave to ridge at 2/3 is some 3 m over the
   * joists; an opening of 4 m is higher than the roof.
   */
  @Test
  void anOpeningHigherThanTheRoofIsNotBelieved() {
    isShut(house("2.4 m", "east-west", "8 in x 4 m"), "the slope leaves");
  }

  @Test
  void theRefereeMeasuresTheHeights() {
    Chain sound = house("2.4 m", "east-west", "8 in x 8 in");
    Plan p = plan(sound);
    // the same opening under a roof that comes down to it
    Chain slope = house("2.4 m", "north-south", "8 in x 8 in");
    assertTrue(
        against(p, sound, slope).contains("above the slope of main roof"),
        () -> against(p, sound, slope));
    // and where one ceiling lies higher than the way through
    Chain higher = house("3 m", "east-west", "8 in x 8 in");
    assertTrue(
        against(p, sound, higher).contains("below the ceiling joists of wing"),
        () -> against(p, sound, higher));
  }

  /** What the referee says of a way of one house in another. */
  private static String against(Plan p, Chain from, Chain to) {
    HollowHouse h = from.house();
    HollowHouse mixed =
        new HollowHouse(to.framed(), h.hollows(), h.sites(), h.stands(), h.accesses(), h.refused());
    return Referee.check(p, mixed, from.request()).refusals().toString();
  }
}
