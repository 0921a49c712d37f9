package holloway.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Box;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.housefile.HouseWriter;
import holloway.housefile.Reading;
import holloway.support.Chain;
import holloway.support.Turned;
import holloway.survey.Placed;
import holloway.survey.Survey;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Studs and rows of blocks of a house in a mirror stand where the mirror shows them. */
class MirroredFramingTest {
  /** Two walls at an angle: a steep one that leans to the west, a flat one that rises eastward. */
  private static final String HOUSE =
      """
      house: Cut Corners
      place: none
      built: 1990
      layout-from: CORNER
      outer-walls: { studs: 2x4, every: 400 mm }
      levels:
        ground: { floor: slab, ceiling-height: 2.4 m }
        upper: { above: ground, ceiling-height: 2.4 m, floor: { joists: 2x10, every: 400 mm, run: RUN, blocks-at: [1.3 m, FAR 900 mm] } }
      rooms:
        hall: { level: ground, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 2 m], [3.2 m, 4 m], [2 m, 4 m], [0 m, 3 m]] }
        den: { level: upper, size: 3 m x 2.5 m, above: hall, align: south-west, tied: measured }
      cabinet: { in: hall, wall: south, from: west 1 m, height: 1.2 m }
      outlets:
        - { name: desk, in: den, wall: south, from: east 1 m, height: 400 mm, cables: [cat6] }
      """;

  private static final Set<MemberKind> KINDS =
      EnumSet.of(MemberKind.STUD, MemberKind.POST, MemberKind.BLOCKING);

  private static Framed framed(String text) {
    Reading.Sound read = Chain.read(text, "");
    return Framing.of(Survey.of(read.house()).value());
  }

  /** The middles of studs, posts and blocks as the mirror shows them, to the millimetre, x y z. */
  private static List<String> middles(Framed framed, Turned way) {
    Placed placed = framed.placed();
    long east = placed.rooms().stream().mapToLong(r -> r.outline().xRange().hi()).max().orElse(0);
    long north = placed.rooms().stream().mapToLong(r -> r.outline().yRange().hi()).max().orElse(0);
    List<String> out = new ArrayList<>();
    for (Member m : framed.members()) {
      if (KINDS.contains(m.kind())) {
        Box b = m.box();
        Point3 p =
            m.frame().toWorld((b.x0() + b.x1()) / 2, (b.y0() + b.y1()) / 2, (b.z0() + b.z1()) / 2);
        Point2 q =
            way == Turned.DIAGONALLY
                ? new Point2(p.y(), p.x())
                : way == Turned.EAST_FOR_WEST
                    ? new Point2(east - p.x(), p.y())
                    : new Point2(p.x(), north - p.y());
        out.add("%s %d %d %d".formatted(m.kind(), mm(q.x()), mm(q.y()), mm(p.z())));
      }
    }
    out.sort(null);
    return out;
  }

  private static long mm(long nm) {
    return Math.round(nm / 1e6);
  }

  private static void assertMirrored(String text, Turned way, MemberKind some) {
    Reading.Sound read = Chain.read(text, "");
    String turned =
        HouseWriter.house(
            way.of(read.house()), way.of(read.request(), read.house()), Optional.empty());
    List<String> there = middles(framed(text), way);
    List<String> back = middles(framed(turned), Turned.DIAGONALLY);
    assertTrue(there.stream().anyMatch(s -> s.startsWith(some.name())));
    assertEquals(there, back.stream().map(MirroredFramingTest::swapped).sorted().toList());
  }

  /** What was swapped once is swapped back: the other house is looked at as it is. */
  private static String swapped(String s) {
    String[] w = s.split(" ");
    return String.join(" ", w[0], w[2], w[1], w[3]);
  }

  @ParameterizedTest
  @EnumSource(Turned.class)
  void angledWallsAndRows(Turned way) {
    for (String corner : List.of("south-west", "north-west", "north-east", "south-east")) {
      String text = HOUSE.replace("CORNER", corner);
      assertMirrored(
          text.replace("RUN", "east-west").replace("FAR", "east"), way, MemberKind.BLOCKING);
      assertMirrored(
          text.replace("RUN", "north-south").replace("FAR", "north"), way, MemberKind.BLOCKING);
    }
  }

  /**
   * The hall reaches 200 mm further than the den. Of its wall there 63 mm are left between the
   * den's and its own: no room for the posts of both ends.
   */
  @ParameterizedTest
  @EnumSource(Turned.class)
  void aStubOfAWallHasItsPostAtTheSameEnd(Turned way) {
    String text =
        """
        house: Stub
        place: uk
        built: 1950
        outer-walls: { studs: 2x6, every: 16 in, battens: { depth: 50 mm, run: level } }
        inner-walls: { studs: 50x75, every: 400 mm, thickness: 120 mm }
        levels: { ground: { floor: slab, ceiling-height: 2400 mm } }
        rooms:
          hall: { level: ground, size: 2570 mm x 3240 mm }
          den: { level: ground, size: 5050 mm x 3040 mm, east-of: hall, align: south }
        cabinet: { in: hall, wall: south, from: west 1 m, height: 1.2 m }
        outlets:
          - { name: desk, in: den, wall: south, from: east 1 m, height: 400 mm, cables: [cat6] }
        """;
    assertMirrored(text, way, MemberKind.POST);
  }

  /** 2.5 m of room, and 101.6 mm of board and studs at either end, less 900 mm. */
  @ParameterizedTest
  @ValueSource(strings = {"south-west", "north-east"})
  void aRowFromTheFarEdge(String corner) {
    String text = HOUSE.replace("CORNER", corner).replace("RUN", "north-south");
    Framed far = framed(text.replace("1.3 m, FAR", "north"));
    Framed near = framed(text.replace("1.3 m, FAR 900 mm", "1803.2 mm"));
    assertEquals(middles(near, Turned.DIAGONALLY), middles(far, Turned.DIAGONALLY));
  }

  @Test
  void aRowFromASideAcrossTheJoistsIsRefused() {
    String text = HOUSE.replace("CORNER", "south-west").replace("RUN", "north-south");
    String far = text.replace("FAR", "east");
    String told = assertThrows(AssertionError.class, () -> Chain.read(far, "")).getMessage();
    assertTrue(told.contains("are counted from the south or north edge of the floor"), told);
  }
}
