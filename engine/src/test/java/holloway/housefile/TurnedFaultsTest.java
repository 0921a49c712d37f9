package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.House;
import holloway.house.Room;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How a house stands: what is said, what outlines show, and what a newcomer writes. */
class TurnedFaultsTest {
  @TempDir Path dir;

  private Written said(String line) throws IOException {
    return new Written(dir).with("place: us\n", "place: us\n" + line + "\n");
  }

  private static House house(Written w) throws IOException {
    return assertInstanceOf(Reading.Sound.class, w.read()).house();
  }

  /** By a triangle of 3, 4 and 5: 10 m along is 8 east and 6 north, 5 m across -3 and 4. */
  private static final String GARAGE =
      "outline: [[1 m, 1 m], [9 m, 7 m], [6 m, 11 m], [-2 m, 5 m]]";

  /** 10 m along and 5 m across again, from another corner on. */
  private static final String KITCHEN =
      "outline: [[-3 m, 4 m], [0 m, 0 m], [8 m, 6 m], [5 m, 10 m]]";

  private Written onGrid() throws IOException {
    return new Written(dir)
        .with(
            "garage: { level: ground, size: 20 ft x 22 ft }",
            "garage: { level: ground, " + GARAGE + " }")
        .with("size: 14 ft x 12 ft, east-of", KITCHEN + ", east-of")
        .with("size: 14 ft x 12 ft, above", KITCHEN + ", above");
  }

  private static List<String> corners(House h, String room) {
    return h.getRoom(room).outline().stream()
        .map(c -> c.x().value().nm() / 1e6 + " " + c.y().value().nm() / 1e6)
        .toList();
  }

  @Test
  void outlinesOnAGridAreTurnedBack() throws IOException {
    House h = house(onGrid());
    assertEquals(36.869897646, h.turned().degrees(), 1e-8);
    assertEquals(
        List.of("0.0 0.0", "10000.0 0.0", "10000.0 5000.0", "0.0 5000.0"), corners(h, "garage"));
    // From its north-west corner: 5 m south, 10 m east.
    assertEquals(
        List.of("0.0 0.0", "0.0 -5000.0", "10000.0 -5000.0", "10000.0 0.0"), corners(h, "kitchen"));
  }

  @Test
  void cornersRoundedToTheMillimetreAreBroughtInLine() throws IOException {
    // 0.7 mm off the line of the south wall.
    House h = house(onGrid().with("[9 m, 7 m]", "[9000.4 mm, 6999.4 mm]"));
    List<Room.Corner> c = h.getRoom("garage").outline();
    assertEquals(c.get(0).y().value(), c.get(1).y().value());
    assertEquals(c.get(1).x().value(), c.get(2).x().value());
    assertEquals(10_000e6, c.get(1).x().value().nm() - c.get(0).x().value().nm(), 1e6);
  }

  @Test
  void aPlaceOnTheGridIsTurnedBackToo() throws IOException {
    // The kitchen's box begins at its north-west corner 3 m west of the one it is said to start
    // from; the garage's 3 m west of its first. So 8 m east and 6 m north of the garage is 10 m
    // along, and the kitchen's own box begins there.
    Written w = onGrid().with("east-of: garage, align: south", "at: [8 m, 6 m]");
    Room.Placing.At at =
        assertInstanceOf(Room.Placing.At.class, house(w).getRoom("kitchen").placing());
    assertEquals(10_000, at.x().value().toMm(), 1e-3);
    assertEquals(0, at.y().value().toMm(), 1e-3);
  }

  @Test
  void oneRoomByItsSizeLeavesTheOthersAsTheyAre() throws IOException {
    Written w =
        onGrid()
            .with(
                "office: { level: upper, " + KITCHEN,
                "office: { level: upper, size: 14 ft x 12 ft");
    House h = house(w);
    assertTrue(h.turned().isNone());
    assertEquals("9000.0 7000.0", corners(h, "garage").get(1));
    // Said in words it is the house's own frame that sizes are in.
    House told = house(w.with("place: us\n", "place: us\nturned: 36.87 deg counter-clockwise\n"));
    assertEquals("10000.0 0.0", corners(told, "garage").get(1));
    assertEquals(36.87, told.turned().degrees(), 1e-9);
  }

  @Test
  void aQuarterOnIsAnotherSide() throws IOException {
    // Said to stand 126.87 degrees off, what runs 36.87 off the grid runs from south to north.
    House h = house(onGrid().with("place: us\n", "place: us\nturned: 53.13 deg clockwise\n"));
    assertEquals("0.0 10000.0", corners(h, "garage").get(1));
  }

  @Test
  void anotherAngleThanTheOutlines() throws IOException {
    Problem p =
        onGrid()
            .with("place: us\n", "place: us\nturned: 36.87 deg clockwise\n")
            .assertProblemAt("36.87 deg clockwise", "");
    assertTrue(p.text().contains("run 36.87 deg counter-clockwise off the axes"), p::toString);
  }

  @Test
  void writtenAnewItStandsAsItStood() throws IOException {
    Reading.Sound read = assertInstanceOf(Reading.Sound.class, onGrid().read());
    Path file = dir.resolve("anew.yaml");
    Files.writeString(file, HouseWriter.house(read.house(), read.request(), Optional.empty()));
    House again = assertInstanceOf(Reading.Sound.class, HouseFile.read(file)).house();
    assertEquals(read.house().turned(), again.turned());
    assertEquals(corners(read.house(), "kitchen"), corners(again, "kitchen"));
  }

  @Test
  void whichWayHasToBeSaid() throws IOException {
    Problem p = said("turned: 23 deg").assertProblemAt("23 deg", "");
    assertTrue(p.expected().contains("clockwise"), p::toString);
    assertTrue(said("turned: 23").assertProblemAt("23", "").expected().contains("deg"));
    Problem far = said("turned: 200 deg clockwise").assertProblemAt("200 deg clockwise", "");
    assertTrue(far.text().contains("half a turn"), far::toString);
    assertEquals(-23.5, house(said("turned: 23.5 deg clockwise")).turned().degrees(), 1e-12);
  }
}
