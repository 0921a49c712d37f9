package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Point3;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** An access point under a porch's ceiling: behind its boards, or among its bare joists. */
@Feature("porch")
class PorchTest {
  private static final String HOUSE =
      """
      house: Porch House
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: empty }
      inner-walls: { studs: 2x4, every: 16 in, bearing: no }
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        hall: { level: main, size: 6 m x 5 m, plain: yes }
      porches:
        - { porch: front, side: hall south, from: west 1 m, length: 4 m, out: 2 m, height: 2150 mm, ceiling: boarded,
            roof: shed, pitch: 3/12, joists: 2x6, every: 16 in }
      cabinet: { in: hall, wall: west, from: south 2 m, height: 1.5 m }
      outlets:
        - { name: ap, under: front, from: west 2 m, out: 1 m, cables: [cat6] }
      """;

  private static Chain house(String... changes) {
    String text = HOUSE;
    for (int i = 0; i < changes.length; i += 2) {
      assertTrue(text.contains(changes[i]), changes[i]);
      text = text.replace(changes[i], changes[i + 1]);
    }
    return Chain.of(text);
  }

  private static Plan plan(Chain c, String... bans) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of(bans), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  private static List<String> hollows(Plan p) {
    return p.runs().get(0).steps().stream().flatMap(s -> s.hollow().stream()).toList();
  }

  @Test
  void intoTheVoidOverItsBoardsThroughTheLedger() {
    Plan p = plan(house());
    assertEquals(List.of("open room surface", "void over a porch ceiling"), hollows(p));
    assertEquals(1, p.holes().size());
    Plan.PlannedHole h = p.holes().get(0);
    // set-up 4, board 1, void of the bay 1, cladding 5, ledger as a rim 4, seal 2
    assertEquals(17, h.minutes(), 1e-9);
    // 12.7 board + 88.9 studs + 30 skin + 38.1 ledger
    assertEquals(169.7, h.depthMm(), 0.1);
    // its boards hang 2150 over the floor: 12.7 of board, and the middle of 139.7 of joist
    assertEquals(2150 + 12.7 + 139.7 / 2, h.at().z() / 1e6, 0.1);
    // Joists are 406.4 apart from the west end, at 1 m: those of the bay at 1625.6 and 2032 from
    // it, 38.1 thick. The box keeps 40 mm off the second: 2032 - 19.05 - 40 = 1972.95.
    List<holloway.geometry.Point3> last =
        p.runs().get(0).steps().get(p.runs().get(0).steps().size() - 1).path();
    assertEquals(1000 + 1972.95, last.get(last.size() - 1).x() / 1e6, 0.1);
    assertEquals(1000 + (1625.6 + 2032) / 2, h.at().x() / 1e6, 0.1);
  }

  @Test
  void noJoistOverItIsCrossed() {
    // along the wall only the bay beside it is entered: from 38.1 to 406.4 - 19.05 out
    String along = "every: 16 in, run: along }";
    assertEquals(0, plan(house("every: 16 in }", along)).runs().size());
    Plan near = plan(house("every: 16 in }", along, "out: 1 m", "out: 200 mm"));
    assertEquals(1, near.runs().size());
  }

  @Test
  void bareJoistsAreReachedAlongTheOutside() {
    Plan p = plan(house("ceiling: boarded", "ceiling: open"));
    assertEquals(List.of("open room surface", "outside face", "outside face"), hollows(p));
    // out through the wall below them, 13: set-up 4, board 1, void 1, cladding 5, seal 2
    assertEquals(13, p.holes().get(0).minutes(), 1e-9);
    String under = "outside/porch front";
    assertTrue(
        p.runs().get(0).steps().stream().anyMatch(s -> s.id().equals(under)), p.runs()::toString);
    assertEquals(0, plan(house("ceiling: boarded", "ceiling: open"), "outside").runs().size());
  }

  @Test
  void beforePlatesItIsReachedUpThroughTheBoards() {
    // 2400 + 12.7 + 69.85 is over the wall's 2438.4: nothing leads through it
    Plan p = plan(house("2150 mm", "2400 mm"));
    assertEquals(
        List.of("ceiling board", "outer wall"),
        p.holes().stream().map(Plan.PlannedHole::kind).sorted().toList());
    assertEquals(
        List.of("open room surface", "outside face", "void over a porch ceiling"), hollows(p));
  }

  /** Another storey over the hall, whose floor's joists end behind the ledger. */
  private static final String STOREYS =
      "main: { ceiling-height: 8 ft, floor: slab }\n"
          + "  upper: { above: main, floor: { joists: 2x10, every: 16 in, run: north-south } }";

  @Test
  void outOfAJoistBayThroughRimAndLedger() {
    Chain c =
        house(
            "levels: { main: { ceiling-height: 8 ft, floor: slab } }",
            "levels:\n  " + STOREYS,
            "plain: yes }",
            "plain: yes }\n  loft: { level: upper, size: 6 m x 5 m, above: hall, align: south-west }",
            "2150 mm",
            "2500 mm",
            "out: 1 m",
            "out: 300 mm");
    Plan p = plan(c);
    assertEquals(
        List.of("ceiling board", "rim joist"),
        p.holes().stream().map(Plan.PlannedHole::kind).sorted().toList());
    Plan.PlannedHole rim =
        p.holes().stream().filter(h -> h.kind().equals("rim joist")).findFirst().orElseThrow();
    // 38.1 of ledger, 30 of skin, 60 of rim and into the bay
    assertEquals(128.1, rim.depthMm(), 0.1);
  }

  @Test
  void outOfABayThatIsOpenedBesideIt() {
    // a finished room: out of the wall's own bay, the bore made through the outlet's cut-out
    Plan p = plan(house(", plain: yes", "", "out: 1 m", "out: 400 mm"), "surface");
    assertTrue(
        p.holes().stream().anyMatch(h -> h.kind().equals("cladding and sheathing")),
        p.holes()::toString);
    assertEquals(1, p.runs().size());
  }

  @Test
  void ledgerBeamAndPostsAreAssumed() {
    Chain c = house();
    Member ledger = member(c, "ledger");
    assertEquals(MemberKind.LEDGER, ledger.kind());
    assertTrue(ledger.assumed());
    // on the outside of the wall: 12.7 of board, 88.9 of studs, 30 of skin
    assertEquals(-131.6, world(ledger)[0], 0.2);
    assertEquals(-131.6 - 38.1, world(ledger)[1], 0.2);
    // 4 m at 406.4: nine between the two at the ends
    long joists = c.members("porch/front").stream().filter(PorchTest::isJoist).count();
    assertEquals(11, joists);
    assertEquals(
        2, c.members("porch/front").stream().filter(m -> m.kind() == MemberKind.POST).count());
  }

  private static boolean isJoist(Member m) {
    return m.kind() == MemberKind.CEILING_JOIST;
  }

  private static Member member(Chain c, String tail) {
    return c.members("porch/front").stream()
        .filter(m -> m.id().endsWith("/" + tail))
        .findFirst()
        .orElseThrow();
  }

  /** North and south of it, millimetres. */
  private static double[] world(Member m) {
    double a = m.frame().toWorld(m.box().x0(), m.box().y0(), 0).y() / 1e6;
    double b = m.frame().toWorld(m.box().x1(), m.box().y1(), 0).y() / 1e6;
    return new double[] {Math.max(a, b), Math.min(a, b)};
  }

  @Test
  void theRefereeMeasuresItByItself() {
    Chain own = house();
    Plan p = plan(own);
    Chain aside =
        house(
            "from: west 1 m, length: 4 m",
            "from: west 2900 mm, length: 3 m",
            "front, from: west 2 m",
            "front, from: west 100 mm");
    assertSays(p, own, aside, "not under the roof of porch front");
    assertSays(p, own, house("2150 mm", "2250 mm"), "not under the roof of porch front");
    assertSays(p, own, house("out: 2 m", "out: 1020 mm"), "runs into beam");
    assertSays(p, own, house("ceiling: boarded", "ceiling: open"), "states no such space");
    assertSays(p, own, house("every: 16 in }", "every: 4 in }"), "across the joists of porch");
    // moved along, the outlet is another one
    assertSays(
        p, own, house("under: front, from: west 2 m", "under: front, from: west 3 m"), "is at");
    Chain open = house("ceiling: boarded", "ceiling: open");
    assertSays(plan(open), open, own, "states no such space");
  }

  private static void assertSays(Plan p, Chain own, Chain other, String what) {
    String faults = Spoiled.saidIn(other, own, p);
    assertTrue(faults.contains(what), faults);
  }

  /** Its roof lies over it, on whichever side of the house: the feet of its slopes stand on it. */
  @Test
  void itsRoofLiesOverIt() {
    for (String side :
        List.of(
            "south, from: west", "north, from: east", "east, from: south", "west, from: north")) {
      for (String roof : List.of("shed", "gable", "flat")) {
        Chain c =
            house(
                "south, from: west 1 m",
                side + " 900 mm",
                "roof: shed",
                "roof: " + roof,
                "front, from: west 2 m",
                "front, from: " + side.split("from: ")[1] + " 1 m",
                "length: 4 m",
                "length: 3 m",
                ", pitch: 3/12",
                roof.equals("flat") ? "" : ", pitch: 3/12");
        List<Member> porch =
            c.house().framed().members().stream()
                .filter(m -> m.owner().equals("porch/front"))
                .toList();
        Member boards =
            porch.stream().filter(m -> m.kind() == MemberKind.LINING).findFirst().orElseThrow();
        int feet = 0;
        for (Member m : porch) {
          if (m.id().contains("/roof") || m.id().contains("/rafter")) {
            Box b = m.box();
            for (long x : new long[] {b.x0(), b.x1()}) {
              for (long y : new long[] {b.y0(), b.y1()}) {
                Point3 foot = m.frame().toWorld(x, y, roof.equals("flat") ? b.z0() : 0);
                Point3 on = boards.frame().toLocal(foot);
                assertTrue(
                    boards.box().contains(on.withZ(0), 1_000_000), side + " " + m.id() + " " + on);
                assertTrue(on.z() > 139_000_000, m.id());
                feet++;
              }
            }
          }
        }
        assertTrue(feet >= 4, side + roof);
      }
    }
  }
}
