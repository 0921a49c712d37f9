package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Chase;
import holloway.house.Direction;
import holloway.house.Fill;
import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.Lining;
import holloway.house.Obstacle;
import holloway.house.Opening;
import holloway.house.Origin;
import holloway.house.Roof;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.units.Length;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written is what the house holds. */
class HouseReadTest {
  @TempDir Path dir;

  @Test
  void roomsAreSortedAndPlaced() throws IOException {
    House h = new Written(dir).sound().house();
    assertEquals(
        List.of("garage", "kitchen", "office"), h.rooms().stream().map(Room::name).toList());
    assertInstanceOf(Room.Placing.Free.class, h.getRoom("garage").placing());
    var beside = assertInstanceOf(Room.Placing.Beside.class, h.getRoom("kitchen").placing());
    assertEquals(Side.EAST, beside.side());
    assertEquals(Side.SOUTH, beside.align());
    assertEquals(Length.ZERO, beside.shift().value());
    var above = assertInstanceOf(Room.Placing.Stacked.class, h.getRoom("office").placing());
    assertTrue(above.above());
    assertEquals(Origin.ASSUMED, above.shiftEast().origin());
    assertEquals(Side.EAST, above.alignEastWest());
  }

  @Test
  void shiftsAndTies() throws IOException {
    House h =
        new Written(dir)
            .with("align: south }", "align: south, shift: -2 ft }")
            .with("align: south-east", "align: south-east, tied: measured, shift-east: 3 in")
            .sound()
            .house();
    var beside = assertInstanceOf(Room.Placing.Beside.class, h.getRoom("kitchen").placing());
    assertEquals(Length.feet(-2), beside.shift().value());
    var above = assertInstanceOf(Room.Placing.Stacked.class, h.getRoom("office").placing());
    assertEquals(Origin.MEASURED, above.shiftEast().origin());
    assertEquals(Length.inches(3), above.shiftEast().value());
    assertEquals(Length.mm(5), above.shiftNorth().spread());
  }

  @Test
  void wallsAndOpenings() throws IOException {
    House h =
        new Written(dir)
            .with(
                "separation: garage",
                "separation: garage, bearing: yes, top-plate: single, blocks-at: [4 ft]")
            .sound()
            .house();
    WallSpec w = h.walls().get(0);
    assertEquals("garage", w.ref().orElseThrow().between().orElseThrow().one());
    assertEquals(Length.inches(11, 2), w.studs().orElseThrow().value().depth());
    assertEquals(true, w.garageSeparation().orElseThrow());
    assertEquals(true, w.bearing().orElseThrow().value());
    assertEquals(true, w.singleTopPlate().orElseThrow());
    assertEquals(List.of(Length.feet(4)), w.blocksAt().stream().map(f -> f.value()).toList());
    Opening door = h.openings().get(0);
    assertEquals(Opening.Kind.DOOR, door.kind());
    assertEquals(Side.NORTH, door.along().from());
    assertEquals(Length.ZERO, door.sill().value());
    assertEquals(Length.inches(80), door.head().value());
    Opening window = h.openings().get(1);
    assertEquals("office east", window.wall().face().orElseThrow().toString());
    assertTrue(window.sill().isAssumed());
  }

  @Test
  void floorsWithACrawlspace() throws IOException {
    House h =
        new Written(dir)
            .with(
                "{ joists: 2x10, run: east-west }",
                "{ joists: 2x8, every: 12 in, run: north-south, kind: i-joist, from: west 5 in,"
                    + " over: { crawlspace: { clearance: 2 ft, access: { outside-door:"
                    + " { side: garage west, from: north 3 ft } } } } }")
            .sound()
            .house();
    FloorSpec f = h.getLevel("upper").floor();
    assertEquals(Timber.Kind.I_JOIST, f.joists().orElseThrow().value().kind());
    assertEquals(Length.inches(12), f.every().value());
    assertEquals(Direction.NORTH_SOUTH, f.run());
    assertEquals(Length.inches(5), f.origin().orElseThrow().value());
    var crawl = f.crawlspace().orElseThrow();
    assertEquals(Length.feet(2), crawl.clearance().value());
    assertEquals(
        "garage west", crawl.access().orElseThrow().outsideDoor().orElseThrow().face().toString());
    assertEquals(FloorSpec.Kind.SLAB, h.getLevel("ground").floor().kind());
  }

  @Test
  void roofs() throws IOException {
    Roof r =
        new Written(dir)
            .with(
                "pitch: 6/12, frame: trusses",
                "pitch: 45 deg, frame: rafters, insulation: 12 in loose, heel: 5 in, boarded: yes,"
                    + " hatch: { in: office, at: [east 4 ft, north 3 ft] }")
            .sound()
            .house()
            .roofs()
            .get(0);
    assertEquals("roof over upper", r.name());
    assertEquals(10_000, r.pitchRise());
    assertEquals(10_000, r.pitchRun());
    assertEquals(Fill.LOOSE, r.fill());
    assertEquals(Length.inches(12), r.insulation().value());
    assertEquals(Length.inches(22), r.hatches().get(0).eastWest());
    assertTrue(r.boarded());
    assertFalse(r.eaves().value().equals(Length.ZERO));
    assertTrue(r.eaves().isAssumed());
  }

  @Test
  void hollows() throws IOException {
    House h =
        new Written(dir)
            .with(
                "to: attic",
                "to: attic, along: south 2 ft, contents: [vent, pipe], floors: { attic: open, upper: gap },"
                    + " known: yes")
            .with(
                "things:",
                "  - { conduit: tube, from: { in: garage, wall: north, from: west 2 ft, height: 4 ft },"
                    + " to: { in: kitchen, wall: north, from: west 2 ft, height: 4 ft },"
                    + " inside-diameter: 20 mm, bends: 2, length: 9 m }\nthings:")
            .sound()
            .house();
    Chase c = h.chases().get(0);
    assertEquals(List.of(Chase.Contents.PIPE, Chase.Contents.VENT), c.contents());
    assertEquals(Length.inches(10), c.alongFace().value());
    assertEquals(
        Map.of("attic", Chase.FloorPass.OPEN, "upper", Chase.FloorPass.GAP),
        Map.of("attic", c.floors().get("attic").value(), "upper", c.floors().get("upper").value()));
    assertTrue(c.known());
    assertFalse(c.inside());
    assertEquals(Length.mm(20), h.conduits().get(0).insideDiameter());
    assertEquals("kitchen", h.conduits().get(0).to().face().room());
  }

  /** It was counted before it was told. */
  @Test
  void fewerBendsThanNone() throws IOException {
    new Written(dir)
        .with(
            "things:",
            "  - { conduit: tube, from: { in: garage, wall: north, from: west 2 ft, height: 4 ft },"
                + " to: { in: kitchen, wall: north, from: west 2 ft, height: 4 ft },"
                + " inside-diameter: 20 mm, bends: -1, length: 9 m }\nthings:")
        .assertProblemAt("-1, length", "0 to 20");
  }

  @Test
  void obstaclesThingsAndTapes() throws IOException {
    House h =
        new Written(dir)
            .plus(
                "measures:\n  - { from: garage west, to: kitchen east, distance: 34 ft 4-1/2 in }\n")
            .plus("obstacles:\n")
            .plus(
                "  - { fire-block, side: office east, from: south 1 ft, width: 14 in, bottom: 4 ft, top: 4 ft 2 in }\n")
            .plus(
                "  - { kind: tank, above-ceiling-of: office, at: [west 1 m, north 1 m], size: 1 m x 2 m, height: 1 m }\n")
            .sound()
            .house();
    assertEquals(Obstacle.Kind.FIRE_BLOCK, h.obstacles().get(0).kind());
    assertEquals(Length.inches(50), h.obstacles().get(0).inWall().orElseThrow().top().value());
    assertTrue(h.obstacles().get(1).inVoid().orElseThrow().above());
    assertEquals(Length.mm(2000), h.obstacles().get(1).inVoid().orElseThrow().northSouth());
    assertEquals("kitchen east", h.tapes().get(0).to().toString());
    assertEquals(Length.mm(70), h.things().get(0).width());
    assertEquals(Length.inches(16), h.things().get(0).at().height().value());
  }

  @Test
  void aGarageIsPlainUnlessSaid() throws IOException {
    House h =
        new Written(dir).with("x 22 ft }", "x 22 ft, garage: yes, ceiling: open }").sound().house();
    Room garage = h.getRoom("garage");
    assertTrue(garage.garage() && garage.plain());
    assertEquals(Lining.OPEN, garage.ceiling());
    assertFalse(h.getRoom("kitchen").plain());
    Written shown = new Written(dir).with("x 22 ft }", "x 22 ft, garage: yes, plain: no }");
    assertFalse(shown.sound().house().getRoom("garage").plain());
  }

  @Test
  void theInputIsNamedWithoutItsFolderAndFingerprinted() throws IOException {
    House h = new Written(dir).sound().house();
    assertEquals("toy.yaml", h.inputs().get(0).file());
    assertTrue(h.inputs().get(0).sha256().matches("[0-9a-f]{64}"));
  }
}
