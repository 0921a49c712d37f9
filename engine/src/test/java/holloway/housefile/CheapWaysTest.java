package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Conduit;
import holloway.house.Side;
import holloway.house.Soffit;
import holloway.units.Length;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lowered ceilings, skirting and old cables: what is read, and what is said of a slip. */
class CheapWaysTest {
  private static final String SHAFT =
      "  - { chase: shaft, beside: office west, from: upper, to: attic, size: 10 in x 22 in }\n";
  private static final String MORE =
      SHAFT
          + "  - { soffit: duct box, along: kitchen north, size: 12 in x 10 in, cover: panel }\n"
          + "  - { dropped-ceiling: tiles, in: office, drop: 10 in, cover: tiles }\n"
          + "  - { skirting: kitchen, sides: [north, east] }\n"
          + "  - { old-cable: lead, from: { in: kitchen, wall: north, from: west 1 ft, height: 1 ft },"
          + " to: { in: office, wall: north, from: west 1 ft, height: 1 ft }, length: 20 ft,"
          + " hole: 1/2 in, stapled: no }\n";

  @TempDir Path dir;

  private Written more() {
    return new Written(dir).with(SHAFT, MORE);
  }

  @Test
  void allFourAreRead() throws IOException {
    var house = more().sound().house();
    assertEquals(List.of("duct box", "tiles"), house.soffits().stream().map(Soffit::name).toList());
    assertEquals(Soffit.Cover.PANEL, house.soffits().get(0).cover());
    assertEquals(Length.inches(10, 1), house.soffits().get(1).drop().value());
    assertEquals(List.of(Side.NORTH, Side.EAST), house.skirtings().get(0).sides());
    assertTrue(house.skirtings().get(0).height().isAssumed());
    assertEquals(Conduit.Kind.LOOSE_CABLE, house.conduits().get(0).kind());
  }

  @Test
  void whatIsNotSaidIsTakenForTheWorse() throws IOException {
    var house = more().with(", stapled: no", "").with(", cover: panel", "").sound().house();
    assertEquals(Conduit.Kind.FAST_CABLE, house.conduits().get(0).kind());
    assertEquals(Soffit.Cover.BOARD, house.soffits().get(0).cover());
    var all = more().with(", sides: [north, east]", "").sound().house();
    assertEquals(Arrays.asList(Side.values()), all.skirtings().get(0).sides());
  }

  private static final String LINK =
      SHAFT
          + "  - { outdoor-link: yard, kind: duct, there: yes, inside-diameter: 50 mm, from: { in:"
          + " kitchen, wall: north, from: west 1 ft, height: 9 ft }, to: { in: garage, wall: north,"
          + " from: west 1 ft, height: 9 ft }, length: 20 ft, depth: 1 ft }\n";

  private Written link() {
    return new Written(dir).with(SHAFT, LINK);
  }

  @Test
  void aLinkToAnotherBuildingIsRead() throws IOException {
    Conduit c = link().sound().house().conduits().get(0);
    assertEquals(Conduit.Kind.TUBE, c.kind());
    assertTrue(c.outdoor().orElseThrow().there());
    assertEquals(Length.inches(12, 1), c.outdoor().orElseThrow().depth().orElseThrow().value());
    Written dug = link().with("there: yes, ", "");
    assertTrue(dug.sound().house().conduits().get(0).dug());
  }

  @Test
  void slipsOfLinks() throws IOException {
    link()
        .with("inside-diameter: 50 mm, ", "")
        .assertProblemAt("{ outdoor-link", "inside diameter");
    List<Problem> bare = link().with("kind: duct", "kind: buried").problems();
    assertEquals(2, bare.size(), bare::toString);
    assertTrue(bare.toString().contains("is said of a duct"), bare::toString);
    String wire = "kind: overhead";
    link()
        .with("kind: duct, there: yes, inside-diameter: 50 mm", wire)
        .assertProblemAt("1 ft }\n", "lies in no earth");
    String low =
        link()
            .with("kind: duct, there: yes, inside-diameter: 50 mm", wire)
            .with(", depth: 1 ft", "")
            .with("height: 9 ft }, to", "height: 1 ft }, to")
            .problem()
            .text();
    assertTrue(low.contains("hangs where people walk"), low);
  }

  @Test
  void aSecondRoomWithoutAPlaceIsToldOfApart() throws IOException {
    String said = "  barn: { level: ground, size: 9 ft x 9 ft }\nwalls:";
    Written w = new Written(dir).with("walls:", said);
    assertTrue(w.problems().toString().contains("'apart: yes'"), w.problems()::toString);
    Written ok = new Written(dir).with("walls:", said.replace("9 ft }", "9 ft, apart: yes }"));
    assertEquals(
        1, ok.sound().house().rooms().stream().filter(r -> r.name().equals("barn")).count());
  }

  @Test
  void aVoidLiesBehindBoardOnMasonry() throws IOException {
    String wall = "studs: 2x6, separation: garage }";
    Written solid = new Written(dir).with(wall, "kind: masonry, void: 30 mm }");
    solid.assertProblemAt("30 mm", "board on battens");
    Written furred = new Written(dir).with(wall, "kind: furred, void: 30 mm }");
    var said = furred.sound().house().walls().get(0).traits().hollow();
    assertEquals(Length.mm(30), said.orElseThrow().value());
  }

  @Test
  void aPierStandsInACrawlspace() throws IOException {
    String pier =
        "obstacles:\n  - { pier, below-floor-of: kitchen, at: [west 4 ft, south 4 ft], size: 1 ft x 1 ft }\n";
    Written slab = new Written(dir).with("things:", pier + "things:");
    assertTrue(slab.problem().text().contains("is over none"), slab.problem()::toString);
    String over = "floor: { joists: 2x10, run: east-west, over: crawlspace }";
    new Written(dir).with("floor: slab", over).with("things:", pier + "things:").sound();
    Written tall =
        new Written(dir)
            .with("floor: slab", over)
            .with("things:", pier.replace("x 1 ft }", "x 1 ft, height: 2 ft }") + "things:");
    assertTrue(tall.problem().text().contains("leave 'height' out"), tall.problem()::toString);
  }

  @Test
  void slips() throws IOException {
    assertEquals(
        "tiles", more().with("cover: tiles", "cover: tile").assertProblemAt("tile }").nearest());
    more().with("drop: 10 in", "drop: 10 ft").assertProblemAt("10 ft, cover", "1.500 m");
    more().with("in: office, drop", "in: ofice, drop").assertProblemAt("ofice, drop", "office");
    more()
        .with("12 in x 10 in, cover", "1 in x 10 in, cover")
        .assertProblemAt("1 in x 10 in", "50 mm");
    more()
        .with("sides: [north, east]", "sides: [north, up]")
        .assertProblemAt("up]", "one of: north");
    more()
        .with("  - { skirting: kitchen,", "  - { skirting: kitchen }\n  - { skirting: kitchen,")
        .problems()
        .forEach(p -> assertTrue(p.toString().contains("already there"), p::toString));
    more().with("hole: 1/2 in, ", "").assertProblemAt("{ old-cable", "lacks 'hole:'");
    more().with("{ soffit: duct box,", "{ sofit: duct box,").assertProblemAt("{ sofit", "soffit");
  }
}
