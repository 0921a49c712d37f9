package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.framing.Attic;
import holloway.geometry.Point2;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The end of a hip slopes down where a gable stands upright: a closet at the west end, the desk on
 * its wall. 6/12, 2x6 chords; the outer bearing face lies 101.6 mm outside the closet.
 */
@Feature("hip roof")
class HipEndTest {
  private static final String HOUSE =
      """
      house: Hip House
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      inner-walls: { studs: 2x4, every: 16 in }
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        closet: { level: main, size: DEEP x 9 m }
        den: { level: main, size: 6 m x 9 m, east-of: closet, align: south }
        store: { level: main, size: 4 m x 9 m, east-of: den, align: south, plain: yes }
      roof:
        - { name: main roof, over: main, shape: SHAPE, ridge: east-west, pitch: 6/12, frame: rafters, chord: 2x6,
            every: 24 in, insulation: 10 in loose, hatch: { in: store, at: [west 2 m, south 4.5 m], size: 22 in x 30 in } }
      cabinet: { in: store, wall: west, from: south 4.5 m, height: 1.5 m }
      outlets:
        - { name: desk, in: den, wall: west, from: south 4.5 m, height: 400 mm, cables: [cat6] }
      """;

  private static Chain house(String shape, String deep) {
    return Chain.of(HOUSE.replace("SHAPE", shape).replace("DEEP", deep));
  }

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  @Test
  void theHeadroomIsTheLeastOfFourSlopes() {
    Attic a = house("hip", "600 mm").framed().attics().get(0);
    long west = a.roofline().xRange().lo();
    long south = a.roofline().yRange().lo();
    // rafter underside over the plate: 6.35 + x 6/12; 1.5 m from the end, 2 m from the eave:
    // 1006.35;
    // the chord takes 139.7 of it
    assertEquals(
        616.65, a.headroom(new Point2(west + 1_500_000_000, south + 2_000_000_000)) / 1e6, 0.01);
    // and the other way round the eave is the nearer one
    assertEquals(
        616.65, a.headroom(new Point2(west + 2_000_000_000, south + 1_500_000_000)) / 1e6, 0.01);
  }

  @Test
  void theWallUnderTheEndSlopeIsOutOfReachByTheFigure() {
    // A body ends (600 + 139.7 - 6.35) x 12/6 = 1466.7 mm from the end, an arm at 866.7. Closet
    // 600 mm: the wall's middle is 101.6 + 600 + 57.15 = 758.75 mm from the face.
    assertEquals(1, plan(house("gable", "600 mm")).runs().size());
    Chain hip = house("hip", "600 mm");
    assertEquals(1, plan(hip).unrouted().size());
    assertTrue(
        hip.house().refused().stream()
            .anyMatch(
                r -> r.why().startsWith("out of arm's reach") && r.at().y() / 1_000_000 > 4_000));
    // Closet 750 mm: 908.75 mm, within it.
    assertEquals(1, plan(house("hip", "750 mm")).runs().size());
  }

  @Test
  void theRefereeMeasuresTheEndSlopeItself() {
    // The laying lines lie 50 mm apart from the middle of the attic, the nearest one at 664.3 mm,
    // 765.9 mm from the face:
    // 866.7 - 765.9
    Chain hip = house("hip", "600 mm");
    String faults =
        Referee.check(plan(house("gable", "600 mm")), hip.house(), hip.request())
            .refusals()
            .toString();
    assertTrue(faults.contains("101 mm further than an arm reaches under this roof"), faults);
  }
}
