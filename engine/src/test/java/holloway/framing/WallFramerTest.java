package holloway.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.support.Chain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Studs of one outer wall with a door and a window, counted by hand. Lengths in millimetres. */
class WallFramerTest {
  /**
   * A room of 4 000 x 3 000 clear. The south wall's framing runs through to the outer corners: 4
   * 000 and twice (12.7 board + 88.9 stud) make 4 203.2. The face starts at s = 101.6.
   */
  private static final String HOUSE =
      """
      house: Stud Count
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: empty }
      levels: { ground: { floor: slab, ceiling-height: 8 ft 1 in } }
      rooms: { hut: { level: ground, size: 4.000 m x 3.000 m } }
      walls:
        - { side: hut south, name: south wall STUDS }
      openings:
        - { door, side: hut south, from: west 500 mm, width: 813 mm }
        - { window, side: hut south, from: west 2200 mm, width: 1000 mm, sill: 900 mm, head: 2000 mm }
      cabinet: { in: hut, wall: north, from: west 1 m, height: 1 m }
      outlets: [{ name: desk, in: hut, wall: north, from: east 1 m, height: 400 mm, cables: [cat6] }]
      """;

  private static List<Member> south(String studs) {
    return Chain.of(HOUSE.replace(" STUDS", studs)).members("south wall");
  }

  private static List<Double> lows(List<Member> members, MemberKind kind) {
    return members.stream()
        .filter(m -> m.kind() == kind)
        .map(m -> m.box().x0() / 1e6)
        .sorted()
        .toList();
  }

  @Test
  void layoutStudsStandEverySixteenInchesSaveInOpenings() {
    // Centres k x 406.4 from the end: 406.4 812.8 1219.2 1625.6 2032 2438.4 2844.8 3251.2 3657.6
    // 4064.
    // Door leaf 500..1313 on the face, rough 51 wider: 474.5..1338.5, s 576.1..1440.1; with jack
    // and
    // king (2 x 38.1 a side) 499.9..1516.3: drops 812.8 and 1219.2.
    // Window 2200..3200 and 12.7 round it: s 2288.9..3314.3; with jack and king 2212.7..3390.5:
    // drops
    // 2438.4, 2844.8 and 3251.2. Five are left; low edges are centres less 19.05.
    assertEquals(
        List.of(387.35, 1606.55, 2012.95, 3638.55, 4044.95), lows(south(""), MemberKind.STUD));
  }

  @Test
  void kingsJacksHeaderSillAndCripplesFrameTheOpenings() {
    List<Member> m = south("");
    assertEquals(List.of(499.9, 1478.2, 2212.7, 3352.4), lows(m, MemberKind.KING_STUD));
    assertEquals(List.of(538.0, 1440.1, 2250.8, 3314.3), lows(m, MemberKind.JACK_STUD));
    assertEquals(List.of(538.0, 2250.8), lows(m, MemberKind.HEADER));
    assertEquals(List.of(2288.9), lows(m, MemberKind.SILL));
    // Below the sill, layout studs go on as cripples: 2438.4, 2844.8, 3251.2 less 19.05.
    List<Double> below =
        m.stream()
            .filter(c -> c.kind() == MemberKind.CRIPPLE && c.id().contains("below"))
            .map(c -> c.box().x0() / 1e6)
            .sorted()
            .toList();
    assertEquals(List.of(2419.35, 2825.75, 3232.15), below);
  }

  @Test
  void endsAndButtingWallsGetPosts() {
    // Ends at 0 and 4203.2 - 38.1; the side walls' cores butt at 0..88.9 and 4114.3..4203.2: the
    // stud
    // behind their inner edge reaches 25 past it: 88.9 + 25 - 38.1 = 75.8, and 4114.3 - 25 =
    // 4089.3.
    assertEquals(List.of(0.0, 75.8, 4089.3, 4165.1), lows(south(""), MemberKind.POST));
  }

  @Test
  void platesAndStudsMakeTheWallHeight() {
    // 8 ft 1 in = 2463.8 of ceiling height and 12.7 of board: 2476.5 (trade-facts D9: 97-1/8 in and
    // up).
    List<Member> m = south("");
    assertEquals(2476.5, m.stream().mapToLong(x -> x.box().z1()).max().orElseThrow() / 1e6);
    Member stud = m.stream().filter(x -> x.kind() == MemberKind.STUD).findFirst().orElseThrow();
    // One bottom plate and a double top plate of 38 each (D10).
    assertEquals(38.0, stud.box().z0() / 1e6);
    assertEquals(2476.5 - 76, stud.box().z1() / 1e6);
    // The door cuts the bottom plate in two at 576.1..1440.1.
    assertEquals(List.of(0.0, 1440.1), lows(m, MemberKind.BOTTOM_PLATE));
  }

  @Test
  void aFoundStudShiftsTheLayout() {
    // A stud found 7 in (177.8) from the west on the face: s = 279.4. Centres 279.4 + k x 406.4.
    List<Double> studs = lows(south(", studs-from: west 7 in"), MemberKind.STUD);
    assertEquals(279.4 - 19.05, studs.get(0), 1e-6);
    assertTrue(
        studs.stream()
            .allMatch(s -> Math.abs(Math.IEEEremainder(s + 19.05 - 279.4, 406.4)) < 1e-6));
    assertTrue(
        Chain.of(HOUSE.replace(" STUDS", ", studs-from: west 7 in")).members("south wall").stream()
            .filter(m -> m.kind() == MemberKind.STUD)
            .noneMatch(Member::assumed));
  }
}
