package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.geometry.Interval;
import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.survey.Wall;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Layers of lining that differ on the two sides: the wall's thickness, cut-outs and boxes follow.
 */
@Feature("lining of several layers")
class LayeredLiningTest {
  private static final String LAYERED =
      ToyAttic.TEXT.replace(
          "name: middle }",
          "name: middle }\n"
              + "  - { side: south room north, lining: [board 1/2 in, board 1/2 in] }\n"
              + "  - { side: north room south, lining: [board 1/2 in, panel 3/4 in] }");

  private static double cutOut(Plan p, String end) {
    return p.works().stream()
        .filter(w -> w.id().equals(end + "/cut-out"))
        .mapToDouble(Plan.PlannedWork::minutes)
        .sum();
  }

  private static String boxed(String depth) {
    return LAYERED.replace("cables: [cat6]", "cables: [cat6], box-depth: " + depth);
  }

  @Test
  void theWallIsAsThickAsItsLayers() {
    Wall plain = WrittenHouse.of(ToyAttic.TEXT).placed().getWall("middle");
    assertEquals(114_300_000, plain.thickness());
    // 1 in + 3-1/2 in + 1-1/4 in, the studs behind the two boards of the south room
    Wall wall = WrittenHouse.of(LAYERED).placed().getWall("middle");
    assertEquals(146_050_000, wall.thickness());
    assertEquals(new Interval(25_400_000, 114_300_000), wall.core());
  }

  @Test
  void aSecondLayerIsCutToo() {
    Plan plain = WrittenHouse.of(ToyAttic.TEXT).plan("surface");
    assertEquals(10, cutOut(plain, "desk"), 1e-9);
    assertEquals(10, cutOut(plain, "cabinet"), 1e-9);
    // board 10, the layer behind it 4
    Plan p = WrittenHouse.of(LAYERED).plan("surface");
    assertEquals(14, cutOut(p, "desk"), 1e-9);
    assertEquals(14, cutOut(p, "cabinet"), 1e-9);
    assertEquals(List.of("attic"), p.totals().zones());
  }

  @Test
  void aBoreThroughTheWallGoesThroughEachLayer() {
    // From room to room: set-up 4, four sheets 1 each and the void 1, seal 2.
    var through =
        WrittenHouse.of(LAYERED).sites(holloway.hollow.SiteKind.WALL_THROUGH).get(0).layers();
    assertEquals(
        List.of("lining", "lining", "void", "lining", "lining"),
        through.stream().map(holloway.hollow.Site.Layer::what).toList());
    assertEquals(19_050_000, through.get(4).thickness());
  }

  @Test
  @Feature("box deeper than the wall")
  void aBoxGoesAsDeepAsBayAndLining() {
    // 1-1/4 in of lining and 3-1/2 in of bay.
    Plan fits = WrittenHouse.of(boxed("4-3/4 in")).plan("surface");
    assertEquals(List.of(), fits.unrouted());
    Plan not = WrittenHouse.of(boxed("4-7/8 in")).plan("surface");
    assertEquals(List.of("desk/cat6-1"), not.unrouted().stream().map(Plan.Unrouted::id).toList());
    assertTrue(
        not.unrouted().get(0).whyNot().toString().contains("does not go in"),
        not.unrouted()::toString);
    // in one board less it does not go in either
    String thinner = boxed("4-3/4 in").replace("panel 3/4 in", "panel 5/8 in");
    assertEquals(1, WrittenHouse.of(thinner).plan("surface").unrouted().size());
  }

  @Test
  @Feature("box deeper than the wall")
  void inAThinWallTheRingIsAShallowOne() {
    // 50 mm studs, 12.7 mm of board: 62.7 mm from the face, less than 64: 10 and 6 minutes.
    String thin = ToyAttic.TEXT.replace("inner-walls: { studs: 2x4", "inner-walls: { studs: 38x50");
    assertEquals(16, cutOut(WrittenHouse.of(thin).plan("surface"), "desk"), 1e-9);
    String said = thin.replace("cables: [cat6]", "cables: [cat6], box-depth: 62 mm");
    assertEquals(10, cutOut(WrittenHouse.of(said).plan("surface"), "desk"), 1e-9);
  }

  @Test
  void theRefereeCountsTheLayers() {
    WrittenHouse house = WrittenHouse.of(LAYERED);
    Plan cheap = Spoiled.halved(house.plan("surface"), "desk/cut-out");
    assertTrue(Spoiled.refused(cheap, house).contains("no price of it: [14.0]"));
    Plan plain = WrittenHouse.of(boxed("4-3/4 in")).plan("surface");
    WrittenHouse deeper = WrittenHouse.of(boxed("6 in"));
    String says = Referee.check(plain, deeper.hollows(), deeper.request()).refusals().toString();
    assertTrue(says.contains("cuts out for a box of 152 mm, and there are 121 mm"), says);
  }

  /** One wall along two rooms, plaster in one and board in the other, whichever comes first. */
  @Test
  @Feature("rooms of one wall with finishes of their own")
  void eachRoomIsCutThroughItsOwnFinish() {
    for (String beside : List.of("east-of", "west-of")) {
      Plan p =
          WrittenHouse.of(
                  """
                  house: Two Finishes
                  place: us
                  built: 1990
                  outer-walls: { studs: 2x4, every: 16 in, fill: empty }
                  inner-walls: { studs: 2x4, every: 16 in }
                  levels:
                    ground: { floor: slab, ceiling-height: 8 ft }
                  rooms:
                    hall: { level: ground, size: 3 m x 3 m, finish: plaster, plain: yes }
                    den: { level: ground, size: 3 m x 3 m, finish: panel, BESIDE: hall, align: south, plain: yes }
                  cabinet: { in: hall, wall: north, from: west 1500 mm, height: 1.2 m }
                  outlets:
                    - { name: shelf, in: hall, wall: south, from: west 1300 mm, height: 400 mm, cables: [cat6] }
                    - { name: desk, in: den, wall: south, from: west 1300 mm, height: 400 mm, cables: [cat6] }
                  """
                      .replace("BESIDE", beside))
              .plan("outside");
      // plaster 20, board or panel 10
      assertEquals(20, cutOut(p, "shelf"), 1e-9, beside);
      assertEquals(10, cutOut(p, "desk"), 1e-9, beside);
    }
  }
}
