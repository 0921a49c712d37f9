package holloway.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.ToyHouse;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point3;
import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.pipeline.WrittenHouse;
import holloway.support.Chain;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What tapes start from is there, and seen from the hole. */
class LandmarksTest {
  private static final double MM = 1e6;

  private static final Pattern NUMBER = Pattern.compile("number (\\d+) counted from the (\\w+)");

  private static final Set<MemberKind> KINDS =
      Set.of(MemberKind.CHORD, MemberKind.JOIST, MemberKind.CEILING_JOIST);

  private final Site site = ToyHouse.build().findSite("west/top/1000").orElseThrow();

  /**
   * What is a neighbour's stands on the plate beside the hole: it ends the look and shows nothing,
   * so the plate's edge behind it is no landmark. On one side alone, the other's is.
   */
  @Test
  void anEdgeBehindWhatIsANeighboursIsHidden() {
    String edge = " edge of the top plate";
    Dimension east = attic(block(20, -50, 2400)).get(1);
    Dimension west = attic(block(-30, -50, 2400)).get(1);
    assertTrue(east.landmark().endsWith(edge) && west.landmark().endsWith(edge));
    assertEquals(-1, Lines.dot(east.towards(), west.towards()), 1e-9);
    assertEquals(List.of(), attic(block(20, -50, 2400), block(-30, -50, 2400)));
  }

  private static final String STAIRS =
      """
      house: Steps
      place: us
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 8 ft }
      rooms:
        hall: { level: ground, size: 3 m x 6 m }
        landing: { level: upper, size: 3 m x 6 m, above: hall, align: south-west }
      stairs:
        - { stair: flight, in: hall, from: [west 1 m, south 1 m], size: 900 mm x 3 m, climbs: north, under: closed }
      cabinet: { in: hall, wall: east, from: south 3 m, height: 400 mm }
      outlets:
        - { name: desk, in: landing, wall: east, from: south 3 m, height: 400 mm, cables: [cat6] }
      """;

  /**
   * Of a flight its place in plan and its rise are known, its treads are not: its first riser
   * stands 1000 - 300 = 700 mm from here, the slope it is drawn as is met after 916 mm. No tape
   * starts there, nor from the panel below it, which is drawn in steps.
   */
  @Test
  void aFlightShowsNothingToTapeFrom() {
    Framed framed = WrittenHouse.of(STAIRS).framed();
    Landmarks marks = new Landmarks(framed);
    Point3 floor = framed.placed().getRoom("hall").outline().corners().get(0).at(0);
    Point3 before = new Point3(floor.x() + mm(1450), floor.y() + mm(300), mm(150));
    assertEquals(Optional.empty(), marks.seen(before, new Frame.Axis(0, 1, 0)));
    assertEquals(
        "the inside corner at the south wall",
        marks.seen(before, new Frame.Axis(0, -1, 0)).orElseThrow().landmark());
    Point3 beside = new Point3(floor.x() + mm(300), floor.y() + mm(3800), mm(150));
    assertEquals(Optional.empty(), marks.seen(beside, new Frame.Axis(1, 0, 0)));
  }

  private static final String BRICK =
      """
      house: Bricks
      place: uk
      built: 1930
      outer-walls: { kind: WALL }
      levels:
        ground: { floor: slab, ceiling-height: 2400 mm }
        upper: { above: ground, floor: { joists: 47x195, every: 400 mm, run: east-west }, ceiling-height: 2400 mm }
      rooms:
        hall: { level: ground, size: 3 m x 6 m }
        landing: { level: upper, size: 3 m x 6 m, above: hall, align: south-west }
      cabinet: { in: hall, wall: north, from: east 1 m, height: 400 mm }
      outlets:
        - { name: desk, in: landing, wall: north, from: east 1 m, height: 400 mm, cables: [cat6] }
      """;

  /**
   * Joists that run to masonry may lie in pockets of it or hang on a ledger: what is drawn across
   * their ends is no place to tape from. On a framed wall it is the rim joist, 38 mm thick.
   */
  @Test
  void aFloorBetweenMasonryHasNoRimToTapeFrom() {
    Frame.Axis west = new Frame.Axis(-1, 0, 0);
    Frame.Axis north = new Frame.Axis(0, 1, 0);
    Framed brick = WrittenHouse.of(BRICK.replace("WALL", "masonry, thickness: 225 mm")).framed();
    Landmarks masonry = new Landmarks(brick);
    assertEquals(Optional.empty(), masonry.seen(inFloor(brick), west));
    assertTrue(masonry.seen(inFloor(brick), north).orElseThrow().landmark().contains("joist"));
    Framed timber = WrittenHouse.of(BRICK.replace("WALL", "framed")).framed();
    String rim = new Landmarks(timber).seen(inFloor(timber), west).orElseThrow().landmark();
    assertEquals("the west rim joist", rim);
  }

  /** 1 m from the west wall and 3 m from the south one, 120 mm under the boards. */
  private static Point3 inFloor(Framed framed) {
    Point3 corner = framed.placed().getRoom("landing").outline().corners().get(0).at(0);
    long z = framed.placed().getLevel("upper").floorZ() - mm(120);
    return new Point3(corner.x() + mm(1000), corner.y() + mm(3000), z);
  }

  private static long mm(long mm) {
    return mm * 1_000_000;
  }

  private List<Dimension> attic(Member... blocks) {
    return new Sight(with(blocks)).from(site, false);
  }

  /** The same in the room, before the wall: the corner 1 m off is hidden, then the far one too. */
  @Test
  void aCornerBehindWhatIsANeighboursIsHidden() {
    Member south = wide(-30);
    Member north = wide(20);
    assertTrue(new Sight(with()).from(site, true).get(0).landmark().contains("the south end"));
    Dimension far = new Sight(with(south)).from(site, true).get(0);
    assertTrue(far.landmark().contains("the north end"), far.landmark());
    assertEquals(2000, far.nm() / MM, 1e-6);
    assertEquals(List.of(), new Sight(with(south, north)).from(site, true));
  }

  /** 10 mm thick from so far east of the hole, and from so far north of it. */
  private Member block(long eastMm, long northMm, long footMm) {
    Point3 p = site.b();
    Box box =
        new Box(
            p.x() + eastMm * 1_000_000,
            p.x() + (eastMm + 10) * 1_000_000,
            p.y() + northMm * 1_000_000,
            p.y() + (northMm + 100) * 1_000_000,
            footMm * 1_000_000,
            (footMm + 100) * 1_000_000);
    return new Member("next/" + eastMm, MemberKind.NOT_OURS, Frame.WORLD, box, "next door", false);
  }

  /** Across the wall and 100 mm past it on both sides, from the floor up. */
  private Member wide(long northMm) {
    Point3 p = site.b();
    Box box =
        new Box(
            p.x() - 160_000_000,
            p.x() + 160_000_000,
            p.y() + northMm * 1_000_000,
            p.y() + (northMm + 10) * 1_000_000,
            0,
            2_390_000_000L);
    return new Member("next/" + northMm, MemberKind.NOT_OURS, Frame.WORLD, box, "next door", false);
  }

  private static HollowHouse with(Member... more) {
    HollowHouse toy = ToyHouse.build();
    List<Member> members = new ArrayList<>(toy.framed().members());
    members.addAll(List.of(more));
    Framed framed = new Framed(toy.framed().placed(), members, List.of(), List.of());
    return new HollowHouse(framed, toy.hollows(), toy.sites(), toy.stands(), List.of());
  }

  /** A tape closes from a spot that is nowhere too, so the spots are looked up in the house. */
  @Test
  void jambsAndCountedTimberAreWhereTheyAreSaidToBe() {
    HollowHouse house = Chain.of(Chain.sample("plumb-corner")).house();
    Sight sight = new Sight(house);
    int jambs = 0;
    int counted = 0;
    for (Site s : house.sites()) {
      for (boolean sideA : new boolean[] {true, false}) {
        for (Dimension d : sight.from(s, sideA)) {
          Matcher number = NUMBER.matcher(d.landmark());
          if (d.landmark().contains(" jamb of the ")) {
            jambs++;
            assertTrue(isJamb(house, d), s.id() + ": " + d);
          } else if (number.find()) {
            counted++;
            int n = Integer.parseInt(number.group(1));
            assertEquals(n, count(house, d, number.group(2)), s.id() + ": " + d);
          }
        }
      }
    }
    assertTrue(jambs > 5 && counted > 5, jambs + " jambs, counted: " + counted);
  }

  /** Pieces of this kind and floor or roof from that side on, the landmark's own included. */
  private static int count(HollowHouse house, Dimension d, String from) {
    Point3 in = Lines.walk(d.at(), Lines.turned(d.towards()), 1_000_000);
    Member own =
        house.framed().members().stream()
            .filter(m -> KINDS.contains(m.kind()) && m.box().contains(m.frame().toLocal(in), 0))
            .findFirst()
            .orElseThrow();
    boolean across = from.equals("west") || from.equals("east");
    boolean down = from.equals("east") || from.equals("north");
    TreeSet<Long> rows = new TreeSet<>();
    for (Member m : house.framed().members()) {
      if (m.kind() == own.kind() && m.owner().equals(own.owner())) {
        rows.add(middle(m, across));
      }
    }
    long mine = middle(own, across);
    return down ? rows.tailSet(mine, true).size() : rows.headSet(mine, true).size();
  }

  /** Millimetres east or north. */
  private static long middle(Member m, boolean east) {
    Box b = m.box();
    Point3 p = m.frame().toWorld(b.x0(), b.y0(), b.z0());
    Point3 q = m.frame().toWorld(b.x1(), b.y1(), b.z1());
    return Math.round((east ? p.x() + q.x() : p.y() + q.y()) / 2 / MM);
  }

  /** Half the stated width from the middle of an opening. */
  private static boolean isJamb(HollowHouse house, Dimension d) {
    for (Wall w : house.framed().placed().walls()) {
      Point3 p = w.frame().toLocal(d.at());
      boolean near = p.y() > -50 * MM && p.y() < w.thickness() + 50 * MM;
      for (Wall.WallOpening o : w.openings()) {
        double off = Math.abs(p.x() - o.s().mid()) / MM - o.opening().width().value().toMm() / 2;
        if (near && Math.abs(off) <= 1 && o.z().contains(p.z())) {
          return true;
        }
      }
    }
    return false;
  }
}
