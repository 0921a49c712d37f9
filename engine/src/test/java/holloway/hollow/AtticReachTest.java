package holloway.hollow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.Attic;
import holloway.geometry.Point2;
import holloway.pipeline.WrittenHouse;
import org.junit.jupiter.api.Test;

/**
 * Headroom, reach and the plates of a low attic: 4/12, 2x4 chords, eaves south and north. The outer
 * bearing faces lie 4 in outside the rooms (3-1/2 in stud, 1/2 in board).
 */
class AtticReachTest {
  private static final String HOUSE =
      """
      house: Attic Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
      rooms:
        south room: { level: ground, size: 20 ft x 12 ft }
        north room: { level: ground, size: 20 ft x 12 ft, north-of: south room, align: west }
      walls:
        - { between: [south room, north room], name: middle }
        - { side: south room south, name: eave wall }
      roof:
        - { over: ground, shape: gable, ridge: east-west, pitch: 4/12, eaves: 16 in, frame: trusses,
            every: 24 in, hatch: { in: north room, at: [west 15 ft, south 2 ft], size: 22 in x 30 in } }
      cabinet: { in: south room, wall: north, from: west 4 ft, height: 5 ft }
      outlets:
        - { name: desk, in: north room, wall: south, from: west 12 ft, height: 16 in, cables: [cat6] }
      """;

  private static final double OUTER = -101.6;

  private static Point2 inFromTheEave(double inches) {
    return new Point2(3_000_000_000L, Math.round((OUTER + inches * 25.4) * 1e6));
  }

  @Test
  void thirtyInchesOfHeadroomFirstAtNinetyNinePointEightInches() {
    Attic a = WrittenHouse.of(HOUSE).framed().attics().get(0);
    // D21: heel = 3.5 in / cos(4/12) + 1/4 in = 3.69 + 0.25 = 3.94 in = 100.05 mm
    assertEquals(100.05, a.heelMm(), 0.05);
    // D24: x = (30 + 3.69 + 3.5 - 3.94) x 3 = 99.75 in
    assertTrue(a.headroom(inFromTheEave(99.7)) < 762_000_000L);
    assertTrue(a.headroom(inFromTheEave(99.8)) >= 762_000_000L);
  }

  @Test
  void aBodyGetsAsFarAsSixHundredMillimetresAndAnArmFurther() {
    Hollow attic =
        WrittenHouse.of(HOUSE).hollows().findHollow("attic/roof over ground").orElseThrow();
    // headroom(x) = heel + x/3 - chord/cos - chord = 6.35 + x/3 - 88.9; 600 mm at
    // x = (600 + 88.9 - 6.35) x 3 = 2047.65 mm; an arm of 600 mm: 1447.65 mm from the face.
    assertEquals((OUTER + 1447.65) * 1e6, attic.area().orElseThrow().yRange().lo(), 100_000);
  }

  @Test
  void thePlateUnderTheEaveIsRefusedAndSaysWhichLimit() {
    WrittenHouse h = WrittenHouse.of(HOUSE);
    // Room over the plate = heel + x/3 - chord/cos = 6.35 mm + x/3. The bit stays 24 mm inside the
    // stud's 88.9 mm, in steps of 6: at most 18 past the middle, x = 44.45 + 18 = 62.45 mm:
    // 6.35 + 20.8 = 27.2 mm, where bit, drill and hand need 330.
    Refused r = h.findRefused("top plate over eave wall/bay-430").orElseThrow();
    assertTrue(r.why().startsWith("only 27 mm between plate and roof"), r.why());
    assertTrue(
        r.source().equals("pitch and heel of the roof; tool room from experience"), r.source());
    assertTrue(
        h.sites(SiteKind.TOP_PLATE).stream().noneMatch(s -> s.id().startsWith("eave wall/")));
  }

  @Test
  void thePlateOfTheMiddleWallIsOffered() {
    // 12 ft + 1/2 in + 1-3/4 in + 4 in = 150.25 in from the face: 6.35 + 3816.35/3 = 1278 mm.
    Site s = WrittenHouse.of(HOUSE).hollows().findSite("middle/top-plate/1420").orElseThrow();
    // two plies of 38 mm (D10); 25 mm without a nail plate in a 2x4 (B20)
    assertEquals(2, s.layers().size());
    assertEquals(25, s.largestBit());
    // bay between studs at 48 and 64 in of framing, less 3/4 in each side: middle at 56 in, less
    // the 1/2 in that framing lies west of the room.
    assertEquals(Math.round(55.5 * 25.4 * 1e6), s.a().x());
  }

  @Test
  void aHatchTooSmallOrUnderALowRoofIsNoWayIn() {
    WrittenHouse small = WrittenHouse.of(HOUSE.replace("22 in x 30 in", "13 in x 30 in"));
    assertTrue(small.hollows().findHollow("attic/roof over ground").isEmpty());
    assertEquals(
        "the hatch is too small for a body",
        small.findRefused("attic roof over ground by the hatch").orElseThrow().why());
    // 2 ft from the north face: x = 4 + 24 = 28 in = 711 mm: 6.35 + 237 - 88.9 = 155 mm of
    // headroom,
    // and the body's place begins 2047.65 mm from the face, 1336 mm further than the 300 allowed.
    WrittenHouse low = WrittenHouse.of(HOUSE.replace("south 2 ft]", "north 2 ft]"));
    assertTrue(low.hollows().findHollow("attic/roof over ground").isEmpty());
    assertEquals(
        "less than 600 mm of headroom over the hatch",
        low.findRefused("attic roof over ground by the hatch").orElseThrow().why());
  }

  @Test
  void anObstacleCutsTheAtticInTwo() {
    WrittenHouse h =
        WrittenHouse.of(
            HOUSE
                + """
                obstacles:
                  - { duct, above-ceiling-of: north room, at: [west 10 ft, south 1 ft], size: 3 ft x 22 ft, height: 3 ft }
                """);
    // The duct takes x = 8.5 to 11.5 ft, a body keeps 200 mm off it, an arm reaches 600 back:
    // from 3505.2 + 200 - 600 = 3105.2 mm on; the hatch is at 15 ft, on the east side.
    Hollow attic = h.hollows().findHollow("attic/roof over ground").orElseThrow();
    assertEquals(3105.2e6, attic.area().orElseThrow().xRange().lo(), 100_000);
    assertTrue(h.hollows().findSite("middle/top-plate/1420").isEmpty());
    assertTrue(h.hollows().findSite("middle/top-plate/4670").isPresent());
    assertEquals(
        "out of arm's reach from where a body gets to in the attic",
        h.findRefused("top plate over middle/bay-1240").orElseThrow().why());
  }
}
