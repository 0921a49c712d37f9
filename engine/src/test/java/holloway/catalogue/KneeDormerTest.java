package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.KneeDormers;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.house.Roof;
import holloway.housefile.HouseWriter;
import holloway.housefile.Reading;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import holloway.support.Turned;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A storey and a half: three rooms in a row, knee walls north and south. The cable runs behind the
 * north knee wall from the west room to the east one, unless a room between goes out into a dormer.
 */
@Feature("dormer of a room with knee walls")
class KneeDormerTest {

  /** 1.5 m wide in the middle room, its front on the outer wall, which is 2101.6 mm out. */
  private static final String MIDDLE =
      "{ side: north, in: middle, shape: shed, from: west 1 m, width: 1.5 m, out: 2 m, height: 2.1 m }";

  /** Between the opening into the side attic and the cabinet. */
  private static final String WEST =
      MIDDLE
          .replace("in: middle", "in: west")
          .replace("west 1 m, width: 1.5 m", "west 1.9 m, width: 800 mm");

  private static String text(String... dormers) {
    String all = dormers.length == 0 ? "" : ", dormers: [" + String.join(", ", dormers) + "]";
    return HalfStorey.text("1.2 m", "bare", all);
  }

  private static Chain house(String... dormers) {
    return Chain.of(text(dormers));
  }

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  /** Else by patches and bores through one floor joist after another. */
  private static boolean goesBehind(Chain c) {
    Plan p = plan(c);
    assertEquals(List.of(), p.unrouted());
    return p.totals().holes() == 0;
  }

  private static Interval x(Chain c, String attic) {
    return c.framed().attics().stream()
        .filter(a -> a.id().equals(attic))
        .findFirst()
        .orElseThrow()
        .outline()
        .xRange();
  }

  @Test
  void nothingPassesBehindIt() {
    assertTrue(goesBehind(house()));
    Chain c = house(MIDDLE);
    assertFalse(goesBehind(c));
    // The west room begins at 0, a partition of 114.3 mm follows its 4 m: the cheeks stand at
    // 4114.3 + 1000 and 1500 further, 150 mm each.
    Interval one = x(c, "top roof north side");
    Interval two = x(c, "top roof north side-2");
    assertEquals(5114.3 - 150, Math.min(one.hi(), two.hi()) / 1e6, 0.1);
    assertEquals(6614.3 + 150, Math.max(one.lo(), two.lo()) / 1e6, 0.1);
    // Only that with the door is somebody's way.
    assertEquals(1, c.house().hollows().stream().filter(h -> h.kind() == HollowKind.ATTIC).count());
  }

  @Test
  void besideItTheWayGoesOn() {
    // over the other eave, or past the desk
    assertTrue(goesBehind(house(MIDDLE.replace("north", "south"))));
    assertTrue(
        goesBehind(
            house(MIDDLE.replace("in: middle", "in: east").replace("west 1 m", "east 100 mm"))));
  }

  @Test
  void betweenDoorAndCabinetItCutsThemOff() {
    assertFalse(goesBehind(house(WEST)));
  }

  @Test
  void cableInSightDoesNotCrossTheGap() {
    String wants =
        text(MIDDLE)
            .replace(
                "in: west, wall: north, from: west 3 m",
                "in: middle, wall: north, from: west 500 mm")
            .replace(
                "in: east, wall: north, from: east 2 m",
                "in: middle, wall: north, from: east 500 mm");
    Chain with = Chain.of(wants);
    Chain without = Chain.of(wants.replace(", dormers: [" + MIDDLE + "]", ""));
    assertTrue(alongTheGap(without));
    assertFalse(alongTheGap(with));
    Plan across = without.plan(Profile.LEAST_WORK, Set.of("outside"), r -> true);
    assertSays(across, without, with, "lies in or on the knee wall where the middle goes out");
  }

  /** A leg in the room runs on its north face, at 6 m, between the cheeks at 5114.3 and 6614.3. */
  private static boolean alongTheGap(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    assertEquals(1, p.runs().size());
    boolean on = false;
    for (Plan.PlanStep s : p.runs().get(0).steps()) {
      for (int i = 1; s.id().endsWith("/surface") && i < s.path().size(); i++) {
        Point3 a = s.path().get(i - 1);
        Point3 b = s.path().get(i);
        on |=
            Math.min(a.y(), b.y()) > 5_900_000_000L
                && Math.min(a.x(), b.x()) < 6_600_000_000L
                && Math.max(a.x(), b.x()) > 5_200_000_000L;
      }
    }
    return on;
  }

  @Test
  void itsWidthIsShutAlsoBehindAFrontThatStandsIn() {
    assertFalse(goesBehind(house(MIDDLE.replace("out: 2 m", "out: 600 mm"))));
  }

  @Test
  void theKneeWallStopsAtItsCheeks() {
    Chain c = house(MIDDLE);
    // No bay and no plate of the knee wall between the boards of the cheeks.
    for (Wall w : c.placed().walls()) {
      for (Wall.WallOpening o : w.openings()) {
        if (w.isGap(o)) {
          assertEquals(1500 + 2 * 12.7, o.s().length() / 1e6, 0.1);
          List<Hollow> bays =
              c.house().hollows().stream().filter(h -> h.owner().equals(w.id())).toList();
          assertFalse(bays.isEmpty());
          assertTrue(bays.stream().noneMatch(h -> h.clear().x().overlaps(o.s())));
          assertTrue(c.members(w.id()).stream().noneMatch(m -> m.box().x().overlaps(o.s())));
        }
      }
    }
    assertEquals(
        1,
        c.placed().walls().stream().flatMap(w -> w.openings().stream().filter(w::isGap)).count());
  }

  @Test
  void trimmersHeadersAndCheeksFrameIt() {
    Chain c = house(MIDDLE);
    List<Member> own =
        c.members("top roof").stream().filter(m -> m.id().contains("/dormer-1/")).toList();
    assertEquals(2, own.stream().filter(m -> m.id().contains("/trimmer-")).count());
    assertEquals(2, own.stream().filter(m -> m.kind() == MemberKind.HEADER).count());
    // From the front at 101.6 mm every 406.4 mm: 101.6, 508, ... while 38.1 mm end before
    // 2101.6 - 150: 101.6 + 4 x 406.4 = 1727.2 is the last. At the first the rafters still lie
    // below
    // the joists' tops: four are left on either side.
    long feet = own.stream().filter(m -> m.id().contains("/foot-")).count();
    assertEquals(8, feet);
    assertTrue(own.stream().anyMatch(m -> m.id().contains("/cheek-a-")));
    // Rafters between 5114.3 and 6614.3 end at its headers: 24 in apart from -101.6 mm, 9 x 609.6
    // to
    // 10 x 609.6 lie there: 5384.8 and 5994.4, and 6604 in part.
    long cut = c.members("top roof").stream().filter(m -> m.id().contains("-b-low")).count();
    assertEquals(0, c.members("top roof").stream().filter(m -> m.id().contains("-a-low")).count());
    assertEquals(3, cut);
  }

  @Test
  void oneThatCannotStandIsToldAndShutAllTheSame() {
    assertTrouble("out of the outer wall below", MIDDLE.replace("out: 2 m", "out: 3 m"));
    assertTrouble("higher than the ridge", MIDDLE.replace("height: 2.1 m", "height: 3.5 m"));
    assertTrouble("already as high as its front", MIDDLE.replace("height: 2.1 m", "height: 1.2 m"));
    assertEquals("believed", trouble(house(MIDDLE)));
  }

  private static void assertTrouble(String why, String dormer) {
    Chain c = house(dormer);
    assertTrue(trouble(c).contains(why), trouble(c));
    assertTrue(c.members("top roof").stream().noneMatch(m -> m.id().contains("/dormer-")));
    assertFalse(goesBehind(c));
  }

  private static String trouble(Chain c) {
    Roof r = c.placed().house().roofs().get(0);
    return KneeDormers.trouble(c.placed(), c.framed().decks(), r, r.dormers().get(0))
        .orElse("believed");
  }

  @ParameterizedTest
  @EnumSource(Turned.class)
  void inAMirrorItIsAsMuchWork(Turned way) {
    for (String dormer : List.of(MIDDLE, WEST, MIDDLE.replace("north", "south"))) {
      Reading.Sound read = Chain.read(text(dormer), "");
      String turned =
          HouseWriter.house(
              way.of(read.house()), way.of(read.request(), read.house()), Optional.empty());
      Plan.Totals one = plan(house(dormer)).totals();
      Plan.Totals other = plan(Chain.of(turned)).totals();
      assertEquals(one.holes(), other.holes());
      assertEquals(one.minutes(), other.minutes(), 0.001);
    }
  }

  @Test
  void theRefereeSeesItByItself() {
    Chain open = house();
    Plan p = plan(open);
    assertSays(p, open, house(MIDDLE), "passes behind the knee wall where the middle goes out");
    assertSays(p, open, house(WEST), "is cut off from every door in a knee wall by a dormer");
    // over the cabinet's bay, which it opens
    String over = WEST.replace("west 1.9 m", "west 2.5 m");
    assertSays(
        p,
        open,
        Chain.of(text(over).replace("from: west 3 m", "from: west 500 mm")),
        "lies in or on the knee wall");
    // where it does not stand in the way nothing is said of it
    String said = Spoiled.saidIn(house(MIDDLE.replace("north", "south")), open, p);
    assertFalse(said.contains("dormer"), said);
  }

  private static void assertSays(Plan p, Chain own, Chain other, String what) {
    String faults = Spoiled.saidIn(other, own, p);
    assertTrue(faults.contains(what), faults);
  }
}
