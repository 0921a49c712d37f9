package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Knee walls that cannot be. */
class KneeFaultsTest {
  @TempDir Path dir;

  private Written knees(String ceiling, String walls) {
    return new Written(dir)
        .with("  office: { level: upper,", "  office: { level: upper, ceiling: " + ceiling + ",")
        .with(
            "beside: office west, from: upper, to: attic",
            "beside: kitchen west, from: ground, to: upper")
        .with("frame: trusses }", "frame: rafters, knee-walls: [ " + walls + " ] }");
  }

  private static final String NORTH = "{ side: office north, height: 4 ft, behind: bare }";
  private static final String SOUTH = "{ side: office south, height: 4 ft }";

  private static void assertSome(Written w, String says) throws IOException {
    List<Problem> all = w.problems();
    assertTrue(all.stream().anyMatch(p -> p.toString().contains(says)), all::toString);
  }

  @Test
  void oneOnEachEaveIsSound() throws IOException {
    knees("vaulted", NORTH + ", " + SOUTH).sound();
  }

  @Test
  void theCeilingFollowsTheRafters() throws IOException {
    List<Problem> all = knees("board", NORTH + ", " + SOUTH).problems();
    assertEquals(2, all.size());
    all.forEach(p -> assertTrue(p.toString().contains("follows the rafters: say so"), p::toString));
  }

  @Test
  void alongTheEavesAlone() throws IOException {
    knees("vaulted", NORTH + ", " + SOUTH + ", { side: office east, height: 4 ft }")
        .assertProblemAt(
            "office east, height", "does not come down on that side", "north or south");
    knees("vaulted", NORTH).assertProblemAt("{ over: upper", "knee walls on one side alone");
  }

  @Test
  void itsWordsAndItsRoom() throws IOException {
    knees("vaulted", NORTH.replace("bare", "bear") + ", " + SOUTH)
        .assertProblemAt("bear", "one of: bare, boarded");
    assertSome(
        knees("vaulted", NORTH + ", " + SOUTH + ", { side: kitchen north, height: 4 ft }"),
        "that roof does not lie over the room");
    assertSome(
        knees("vaulted", NORTH + ", " + NORTH + ", " + SOUTH), "is stated as a knee wall twice");
    assertSome(
        knees("vaulted", NORTH + ", " + SOUTH)
            .with(
                "window, side: office east, from: south 3 ft",
                "window, side: office north, from: west 3 ft"),
        "no window is in it");
  }

  private Written dormer(String words) {
    String one = "{ shape: shed, from: west 3 ft, width: 4 ft, height: 7 ft, " + words + " }";
    return knees("vaulted", NORTH + ", " + SOUTH + " ], dormers: [ " + one);
  }

  @Test
  void aDormerStopsTheKneeWallOfItsRoom() throws IOException {
    dormer("side: north, in: office, out: 2 ft").sound();
    dormer("side: north, back: 2 ft").assertProblemAt("{ shape: shed", "say which room goes out");
    dormer("side: north, in: kitchen, out: 2 ft")
        .assertProblemAt("{ shape: shed", "does not state one knee wall on its north side");
    dormer("side: north, in: office").assertProblemAt("{ shape: shed", "lacks 'out:'");
    dormer("side: north").assertProblemAt("{ shape: shed", "lacks 'back:'");
    assertSome(
        dormer("side: north, in: office, back: 2 ft"),
        "'out' from the knee wall's face to its front");
    assertSome(dormer("side: north, out: 2 ft"), "say 'in' which room");
    dormer("side: north, in: office, out: 2 ft")
        .with("from: west 3 ft, width: 4 ft", "from: south 3 ft, width: 4 ft")
        .assertProblemAt("{ shape: shed", "the north eave runs east-west: tape along it");
    new Written(dir)
        .with(
            "frame: trusses",
            "frame: rafters, dormers: [{ side: north, in: office, shape: shed, from: west 3 ft,"
                + " width: 4 ft, height: 7 ft, out: 2 ft }]")
        .assertProblemAt("{ side: north", "no knee wall is stated under");
  }

  @Test
  void aShaftHasNoKnownEndThere() throws IOException {
    assertSome(
        knees("vaulted", NORTH + ", " + SOUTH)
            .with(
                "beside: kitchen west, from: ground, to: upper",
                "beside: office west, from: upper, to: attic"),
        "where a shaft there ends is not known");
  }
}
