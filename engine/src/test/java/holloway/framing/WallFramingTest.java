package holloway.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Interval;
import holloway.pipeline.WrittenHouse;
import holloway.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A 12 ft wall with a door and a window, counted as a carpenter counts it. The framing runs from
 * outer wall to outer wall, half an inch of board beyond the room at each end: 145 in, and s = 0
 * lies 1/2 in south of the room's corner.
 */
class WallFramingTest {
  private static final String HOUSE =
      """
      house: Framing Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft 1 in }
      rooms:
        west room: { level: ground, size: 10 ft x 12 ft }
        east room: { level: ground, size: 9 ft x 12 ft, east-of: west room, align: south }
      walls:
        - { between: [west room, east room], name: middle, bearing: yes, studs-from: south 7 in }
      openings:
        - { door, between: [west room, east room], from: south 2 ft, width: 30 in }
        - { window, between: [west room, east room], from: south 7 ft, width: 3 ft, sill: 3 ft,
            head: 6 ft 8 in }
      cabinet: { in: west room, wall: east, from: south 1 ft, height: 5 ft }
      outlets:
        - { name: desk, in: east room, wall: west, from: south 1 ft 1 in, height: 16 in,
            cables: [cat6] }
      """;

  private static final Framed FRAMED = WrittenHouse.of(HOUSE).framed();

  private static List<Member> of(Framed f, MemberKind kind) {
    return f.membersOf("middle").stream()
        .filter(m -> m.kind() == kind)
        .sorted((a, b) -> Long.compare(a.box().x0(), b.box().x0()))
        .toList();
  }

  /** Centres along the wall in sixteenths of an inch. */
  private static List<Double> centres(Framed f, MemberKind kind) {
    return of(f, kind).stream()
        .map(m -> Math.round((m.box().x0() + m.box().x1()) / 2 / 25_400_000.0 * 16) / 16.0)
        .toList();
  }

  private static Interval mm(double lo, double hi) {
    return new Interval(Math.round(lo * 1e6), Math.round(hi * 1e6));
  }

  @Test
  void platesOfAnEightFootOneWall() {
    // 97 in of room + 1/2 in of ceiling board = 97.5 in = 2476.5 mm to the top of the plates.
    // (D8, D9: a precut wall stands 97-1/8 in; 1/2 in of board leaves 8 ft 5/8 in of room.)
    assertEquals(Length.inches(195, 2).nm(), FRAMED.placed().getWall("middle").height());
    List<Member> top = of(FRAMED, MemberKind.TOP_PLATE);
    // D10: two plies are 76 mm, one is 38 mm.
    assertEquals(2, top.size());
    assertEquals(mm(2476.5 - 76, 2476.5 - 38), top.get(0).box().z());
    assertEquals(mm(2476.5 - 38, 2476.5), top.get(1).box().z());
    assertEquals(mm(0, 145 * 25.4), top.get(0).box().x());
  }

  @Test
  void theDoorCutsTheBottomPlate() {
    // The leaf begins at 24.5 in (622.3 mm); 51 mm of frame and shims, half each side.
    // 622.3 - 25.5 = 596.8 and 596.8 + 762 + 51 = 1409.8.
    List<Member> plates = of(FRAMED, MemberKind.BOTTOM_PLATE);
    assertEquals(2, plates.size());
    assertEquals(mm(0, 596.8), plates.get(0).box().x());
    assertEquals(mm(1409.8, 3683), plates.get(1).box().x());
  }

  @Test
  void layoutStudsStandWhereNoOpeningIs() {
    // Found at 7 in from the room's corner = 7.5 in along the framing; then every 16 in:
    // 7.5 | 23.5 39.5 55.5 at the door | 71.5 | 87.5 103.5 119.5 at the window | 135.5
    assertEquals(List.of(7.5, 71.5, 135.5), centres(FRAMED, MemberKind.STUD));
    assertTrue(of(FRAMED, MemberKind.STUD).stream().noneMatch(Member::assumed));
  }

  @Test
  void kingsJacksHeadersSillAndCripples() {
    // D11: a jack and a king on each side of each opening.
    // Window opening: 84.5 - 0.5 = 84 in to 84.5 + 36 + 0.5 = 121 in; jacks 1.5 in, then kings.
    assertEquals(
        List.of(83.25, 121.75), centres(FRAMED, MemberKind.JACK_STUD).subList(2, 4), "jacks");
    assertEquals(
        List.of(81.75, 123.25), centres(FRAMED, MemberKind.KING_STUD).subList(2, 4), "kings");
    assertEquals(4, of(FRAMED, MemberKind.KING_STUD).size());
    // D12: the jack of a 6 ft 8 in door ends at 82-1/2 in.
    assertEquals(Length.inches(165, 2).nm(), of(FRAMED, MemberKind.JACK_STUD).get(0).box().z1());
    // A bearing wall's header over up to 4 ft is 2x6 deep, 140 mm, over jacks and opening.
    Member header = of(FRAMED, MemberKind.HEADER).get(1);
    assertEquals(mm(82.5 * 25.4, 122.5 * 25.4), header.box().x());
    assertEquals(mm(80.5 * 25.4, 80.5 * 25.4 + 140), header.box().z());
    // Sill: top at 36 - 1/2 in.
    assertEquals(mm(35.5 * 25.4 - 38, 35.5 * 25.4), of(FRAMED, MemberKind.SILL).get(0).box().z());
    // Cripples stand at the layout: 39.5 over the door (23.5 and 55.5 are at its jacks), and 87.5,
    // 103.5, 119.5 over and under the window.
    assertEquals(
        List.of(39.5, 87.5, 87.5, 103.5, 103.5, 119.5, 119.5), centres(FRAMED, MemberKind.CRIPPLE));
  }

  @Test
  void noStudFoundMeansAnotherLayoutAndItSaysSo() {
    Framed f = WrittenHouse.of(HOUSE.replace(", studs-from: south 7 in", "")).framed();
    // From the end at 16 in: 16 | 32 48 door | 64 80 | 96 112 window | 128 | 144 at the end post.
    assertEquals(List.of(16.0, 64.0, 80.0, 128.0), centres(f, MemberKind.STUD));
    assertTrue(of(f, MemberKind.STUD).stream().allMatch(Member::assumed));
    // Over the door 32 and 48, over and under the window 96 and 112.
    assertEquals(List.of(32.0, 48.0, 96.0, 96.0, 112.0, 112.0), centres(f, MemberKind.CRIPPLE));
  }

  @Test
  void endsAndButtingWallsHavePosts() {
    // Each end of the wall is a post of one stud.
    assertEquals(List.of(0.75, 144.25), centres(FRAMED, MemberKind.POST));
    // The outer wall runs on past the butting wall: west end at the outside of the framing
    // (3.5 + 0.5 in west of the room), so the butting core is at 4 + 120 + 0.5 = 124.5 to 128 in;
    // backing studs stand 25 mm proud of its faces, the rest behind the core.
    var outer =
        FRAMED.placed().walls().stream()
            .filter(w -> w.junctions().stream().anyMatch(j -> j.other().equals("middle")))
            .findFirst()
            .orElseThrow();
    List<Interval> posts =
        FRAMED.membersOf(outer.id()).stream()
            .filter(m -> m.kind() == MemberKind.POST)
            .map(m -> m.box().x())
            .toList();
    double lo = 124.5 * 25.4;
    double hi = 128 * 25.4;
    assertTrue(posts.contains(mm(lo - 25, lo - 25 + 38.1)), posts::toString);
    assertTrue(posts.contains(mm(hi + 25 - 38.1, hi + 25)), posts::toString);
  }
}
