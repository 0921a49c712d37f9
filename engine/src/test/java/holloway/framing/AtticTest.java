package holloway.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point2;
import holloway.support.Chain;
import org.junit.jupiter.api.Test;

/** Headroom under a truss roof by trade-facts D20 to D24. */
class AtticTest {
  private static final String HOUSE =
      """
      house: Low Roof
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: empty }
      levels: { ground: { floor: slab, ceiling-height: 8 ft 1 in } }
      rooms: { hall: { level: ground, size: 10 m x 9 m } }
      roof:
        - { name: roof, over: ground, shape: gable, ridge: east-west, pitch: PITCH, eaves: 16 in,
            frame: trusses, chord: 2x4, every: 24 in, insulation: none,
            hatch: { in: hall, at: [west 5 m, south 4.5 m], size: 22 in x 30 in } }
      cabinet: { in: hall, wall: north, from: west 1 m, height: 1 m }
      outlets: [{ name: desk, in: hall, wall: north, from: east 1 m, height: 400 mm, cables: [cat6] }]
      """;

  private static Attic attic(String pitch) {
    return Chain.of(HOUSE.replace("PITCH", pitch)).framed().attics().get(0);
  }

  private static double headroomIn(Attic a, double inchesFromOuterFace) {
    long y = a.outline().yRange().lo() + Math.round(inchesFromOuterFace * 25_400_000);
    return a.headroom(new Point2(a.outline().xRange().mid(), y)) / 25.4e6;
  }

  @Test
  void theHeelFollowsTheChordAndThePitch() {
    // D20/D21: 2x4 chord, 1/4 in butt: 4/12 3.94 in; 6/12 4.16 in; 12/12 5.20 in.
    assertEquals(3.94, attic("4/12").heelMm() / 25.4, 0.01);
    assertEquals(4.16, attic("6/12").heelMm() / 25.4, 0.01);
    assertEquals(5.20, attic("12/12").heelMm() / 25.4, 0.01);
  }

  @Test
  void thirtyInchesAreFirstClearAtTheDistanceOfTheTable() {
    // D24: (30 + 3.69 + 3.5 - 3.94) x 3 = 99.8 in from the outer bearing face.
    Attic a = attic("4/12");
    assertTrue(headroomIn(a, 99.6) < 30);
    assertTrue(headroomIn(a, 100.0) > 30);
    assertEquals(30.0, headroomIn(a, 99.75), 0.05);
  }

  @Test
  void atTheEaveThereIsNoRoomForATool() {
    // Over the middle of the plate, 1.75 in in: 3.94 + 0.58 - 3.69 = 0.83 in under the chord.
    Attic a = attic("4/12");
    long y = a.outline().yRange().lo() + 44_450_000;
    double room =
        (a.roofUnderside(new Point2(a.outline().xRange().mid(), y)) - a.plateZ()) / 25.4e6;
    assertEquals(0.83, room, 0.02);
  }
}
