package holloway.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import holloway.check.ToyHouse;
import holloway.framing.Framing;
import holloway.geometry.Frame.Axis;
import holloway.geometry.Point3;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Hollows;
import holloway.hollow.Site;
import holloway.hollow.Solids;
import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.routing.Ends;
import holloway.support.Chain;
import holloway.support.RandomHouseText;
import holloway.survey.Placed;
import holloway.survey.Survey;
import holloway.survey.Wall;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tape lines from both sides of a bore lead to the same axis. */
class SightTest {
  private static final double MM = 1e6;

  /** Chords at 800 and 1200 mm, 38 wide; plate 88 mm wide; the hole at 1000 mm, 44 in. */
  @Test
  void aPlateHoleIsTapedFromTheChordAndThePlatesEdgeAndFromTheRoom() {
    HollowHouse toy = ToyHouse.build();
    Site site = toy.findSite("west/top/1000").orElseThrow();
    List<Dimension> attic = new Sight(toy).from(site, false);
    assertEquals(181, attic.get(0).nm() / MM, 1e-6);
    assertTrue(attic.get(0).landmark().contains("truss chord"), attic.get(0).landmark());
    assertEquals(44, attic.get(1).nm() / MM, 1e-6);
    assertTrue(attic.get(1).landmark().contains("edge of the top plate"));
    List<Dimension> bay = new Sight(toy).from(site, true);
    assertEquals(1000, bay.get(0).nm() / MM, 1e-6);
    assertEquals(57, bay.get(1).nm() / MM, 1e-6);
    assertTrue(bay.get(1).landmark().contains("face of the wall in the shop"));
  }

  /** Nobody who kneels over lifted boards sees the ceiling of the room below. */
  @Test
  void fromLiftedBoardsTheTapeLiesOnTheFloor() {
    HollowHouse house = house("tin-street");
    Sight sight = new Sight(house);
    int seen = 0;
    for (Site site : house.sites()) {
      for (String room : List.of("landing", "back bedroom")) {
        for (boolean sideA : new boolean[] {true, false}) {
          List<Dimension> below = sight.from(site, sideA);
          List<Dimension> above = sight.from(site, sideA, Optional.of(room));
          String floor = "the floor of the " + room + ", straight into it";
          if (above.size() == 2 && above.get(1).landmark().equals(floor)) {
            assertTrue(below.get(1).landmark().startsWith("the ceiling of the "), site.id());
            // Both end on the bore's axis: their depths add up to board, joist and boards.
            long deck = above.get(1).nm() + below.get(1).nm();
            assertTrue(deck > 150 * MM && deck < 400 * MM, site.id() + " " + deck);
            seen++;
          }
        }
      }
    }
    assertTrue(seen > 10, "bores between joists under these rooms: " + seen);
  }

  /** Where masonry or a plate goes on before the next room or storey, it has no edge to see. */
  @Test
  void anEdgeIsWhereNothingOfItsKindGoesOn() {
    HollowHouse house = house("tin-street");
    Sight sight = new Sight(house);
    int edges = 0;
    for (Site site : house.sites()) {
      for (boolean sideA : new boolean[] {true, false}) {
        Point3 end = sideA ? site.a() : site.b();
        Axis in = Lines.between(end, sideA ? site.b() : site.a());
        for (Dimension d : sight.from(site, sideA)) {
          if (d.landmark().contains(" edge of the ")) {
            edges++;
            // 5 mm beyond the edge and 10 mm into what is bored: the tape lies 12 mm before it.
            Point3 beyond = Lines.walk(d.at(), Lines.turned(d.towards()), 5_000_000);
            Point3 p = Lines.walk(beyond, in, 22_000_000);
            house.framed().members().stream()
                .filter(m -> d.landmark().endsWith(" edge of the " + m.kind().word()))
                .filter(m -> m.box().contains(m.frame().toLocal(p), 0))
                .forEach(m -> fail(site.id() + ": " + d.landmark() + " goes on as " + m.id()));
          }
        }
      }
    }
    assertTrue(edges > 5, edges + " edges");
  }

  /** Nobody hooks a tape to the air before a wall that is shared: the room is as wide as it is. */
  @Test
  void besideASharedWallTheTapeReachesTheWall() {
    HollowHouse house = house("tin-street");
    Sight sight = new Sight(house);
    int seen = 0;
    for (Site site : house.sites()) {
      for (boolean sideA : new boolean[] {true, false}) {
        for (Dimension d : sight.from(site, sideA, Optional.of("landing"))) {
          assertFalse(d.landmark().contains("somebody else"), site.id() + ": " + d.landmark());
          boolean shared =
              house.framed().placed().walls().stream()
                  .filter(Wall::isParty)
                  .anyMatch(w -> Math.abs(offFace(w, d.at())) < 1);
          seen += shared ? 1 : 0;
        }
      }
    }
    assertTrue(seen > 5, "tapes from a shared wall: " + seen);
  }

  /** Millimetres from the nearer face of a wall, along its whole length. */
  private static double offFace(Wall w, Point3 p) {
    Point3 l = w.frame().toLocal(p);
    boolean beside = l.x() >= 0 && l.x() <= w.length() && l.z() >= 0 && l.z() <= w.height();
    return beside ? Math.min(Math.abs(l.y()), Math.abs(l.y() - w.thickness())) / MM : 1e9;
  }

  @ParameterizedTest
  @ValueSource(strings = {"quince-ranch", "plumb-corner", "tin-street"})
  void bothSidesOfEveryCrossingLeadToOneAxis(String sample) {
    HollowHouse house = house(sample);
    Sight sight = new Sight(house);
    int both = 0;
    int sides = 0;
    int seen = 0;
    for (Site site : house.sites()) {
      if (site.made() || site.a().equals(site.b())) {
        continue;
      }
      List<Dimension> a = sight.from(site, true);
      List<Dimension> b = sight.from(site, false);
      judge(site, a);
      judge(site, b);
      sides += 2;
      seen += (a.isEmpty() ? 0 : 1) + (b.isEmpty() ? 0 : 1);
      if (!a.isEmpty() && !b.isEmpty()) {
        both++;
        same(site, a, b);
      }
    }
    assertTrue(
        seen > sides / 2, sample + ": only " + seen + " of " + sides + " sides can be measured");
    assertTrue(both > 0);
  }

  /** The same over random houses, and no landmark stands behind something on its side. */
  @ParameterizedTest
  @ValueSource(longs = {2, 7, 19})
  void bothSidesMeetInRandomHouses(long seed) {
    HollowHouse house = Chain.of(RandomHouseText.of(seed)).house();
    Solids solids = new Solids(house.framed().members());
    Sight sight = new Sight(house);
    int both = 0;
    for (Site site : house.sites()) {
      if (site.made() || site.a().equals(site.b())) {
        continue;
      }
      List<Dimension> a = sight.from(site, true);
      List<Dimension> b = sight.from(site, false);
      judge(site, a);
      judge(site, b);
      same(site, a, b);
      both += a.isEmpty() || b.isEmpty() ? 0 : 1;
      for (Dimension d : List.of(a, b).stream().flatMap(List::stream).toList()) {
        boolean into = d.landmark().contains("straight into it");
        Point3 start = Lines.walk(d.at(), d.towards(), 1_000_000);
        assertTrue(
            into || d.nm() < 2_000_000 || solids.free(start, d.end(), 1), site.id() + ": " + d);
      }
    }
    assertTrue(both > 10, "seed " + seed + ": " + both);
  }

  private static void judge(Site site, List<Dimension> found) {
    assertTrue(found.isEmpty() || found.size() == 2, site.id());
    for (Dimension d : found) {
      assertTrue(d.nm() >= 0 && d.nm() <= 3000 * MM, site.id() + ": " + d);
      assertEquals(
          along(site.a(), d.towards()), along(d.end(), d.towards()), 1, site.id() + ": " + d);
      assertEquals(
          along(site.b(), d.towards()), along(d.end(), d.towards()), 1, site.id() + ": " + d);
    }
    if (found.size() == 2) {
      double skew = Lines.dot(found.get(0).towards(), found.get(1).towards());
      assertEquals(0, skew, 1e-9, site.id() + ": the two lines run the same way");
    }
  }

  /** The point where the two lines of a side meet the axis, compared along both directions. */
  private static void same(Site site, List<Dimension> a, List<Dimension> b) {
    for (Dimension d : a) {
      for (Dimension e : b) {
        if (Math.abs(Lines.dot(d.towards(), e.towards())) > 0.999) {
          assertEquals(along(d.end(), d.towards()), along(e.end(), d.towards()), 1, site.id());
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"quince-ranch", "plumb-corner"})
  void everyTapeLineIsFreeFromLandmarkToHole(String sample) {
    HollowHouse house = house(sample);
    Solids solids = new Solids(house.framed().members());
    Sight sight = new Sight(house);
    for (Site site : house.sites()) {
      for (boolean side : new boolean[] {true, false}) {
        for (Dimension d : sight.from(site, side)) {
          boolean into = d.landmark().contains("straight into it");
          Point3 start = Lines.walk(d.at(), d.towards(), 1_000_000);
          assertTrue(
              into || d.nm() < 2_000_000 || solids.free(start, d.end(), 1), site.id() + ": " + d);
        }
      }
    }
  }

  /**
   * Edges of a lining lie behind plaster, casings and skirtings; masonry goes on behind the floor
   * and the next wall, and its openings' edges behind their frames. Nobody can hook a tape there.
   */
  @ParameterizedTest
  @ValueSource(strings = {"quince-ranch", "plumb-corner", "tin-street"})
  void noTapeStartsAtTheEdgeOfALining(String sample) {
    HollowHouse house = house(sample);
    Sight sight = new Sight(house);
    for (Site site : house.sites()) {
      for (boolean side : new boolean[] {true, false}) {
        for (Dimension d : sight.from(site, side)) {
          assertTrue(
              !d.landmark().matches(".*edge of the (lining|masonry|cladding|sheathing).*"),
              site.id() + ": " + d);
          assertTrue(!d.landmark().matches(".*(below|above) edge.*"), site.id() + ": " + d);
        }
      }
    }
  }

  /**
   * Where a house's skin ends outside is in no survey: cladding laps round the corner over the next
   * wall and down over rim and footing, a sill hides the window's edge. A tape from there would
   * lead a wall's thickness astray.
   */
  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "plumb-corner", "tin-street"})
  void nothingIsMeasuredFromOutside(String sample) {
    HollowHouse house = house(sample);
    Sight sight = new Sight(house);
    int outside = 0;
    for (Site site : house.sites()) {
      for (boolean side : new boolean[] {true, false}) {
        String hollow = side ? site.hollowA() : site.hollowB();
        String other = side ? site.hollowB() : site.hollowA();
        // Below a porch's boards its own end and the wall under it are seen: no wall lies between.
        boolean porch = house.findHollow(other).orElseThrow().kind() == HollowKind.PORCH_VOID;
        if (house.findHollow(hollow).orElseThrow().kind() == HollowKind.OUTSIDE_FACE && !porch) {
          assertEquals(List.of(), sight.from(site, side), site.id());
          outside++;
        }
      }
    }
    assertTrue(outside > 5, sample + ": " + outside);
  }

  /** A room 8 m long: both corners are over 3 m off in its middle, the door's jamb is not. */
  @Test
  void inALongRoomTheTapeStartsAtTheDoorsJamb() {
    HollowHouse house = Chain.of(LONG_ROOM).house();
    Sight sight = new Sight(house);
    Site site = house.findSite("ground/den-outside/1/outer/4240-z1060").orElseThrow();
    Dimension d = sight.from(site, false).get(0);
    // 900 mm wide, from 5 m off the west wall; the hole stands at 4 m.
    assertEquals("the west jamb of the door (where the hand meets it)", d.landmark());
    assertEquals(1000, d.nm() / MM, 1);
  }

  private static final String LONG_ROOM =
      """
      house: Long Room
      place: us
      built: 1990
      outer-walls: { kind: masonry, thickness: 240 mm }
      levels:
        ground: { floor: slab, ceiling-height: 2.5 m }
      rooms:
        den: { level: ground, size: 8 m x 3 m }
      openings:
        - { door, side: den south, from: west 5 m, width: 900 mm, head: 2 m }
      cabinet: { in: den, wall: north, from: west 4 m, height: 1.2 m }
      outlets:
        - { name: box, outside: den south, from: west 4 m, height: 1 m, cables: [outdoor-cat6], feed: yes }
      """;

  private static double along(Point3 p, Axis a) {
    return (p.x() * a.x() + p.y() * a.y() + p.z() * a.z()) / MM;
  }

  private static HollowHouse house(String sample) {
    Reading.Sound read = (Reading.Sound) HouseFile.read(Path.of("../samples/" + sample + ".yaml"));
    Placed placed = Survey.of(read.house()).value();
    return Hollows.of(Framing.of(placed), Ends.of(placed, read.request()).interests());
  }
}
