package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.house.House;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import holloway.survey.Survey;
import holloway.survey.SurveyException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What ends a joist bay: rows of blocks, a beam, and joists that turn. */
@Feature("row of blocks between joists")
class FloorChangesTest {
  /** Cabinet and desk face each other across one room; the joists over it run from one to other. */
  private static final String TEXT =
      """
      house: Floor House
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: east-west BLOCKS }, ceiling-height: 8 ft }
      rooms:
        store: { level: ground, size: 2 m x 6 m }
        lounge: { level: ground, size: 4 m x 6 m, east-of: store, align: south }
        den: { level: ground, size: 2 m x 6 m, east-of: lounge, align: south }
        study: { level: upper, size: 2 m x 6 m, above: lounge, align: south-west }
        annex: { level: upper, size: 1885.7 mm x 6 m, east-of: study, align: south ANNEX }
      EXTRA
      cabinet: { in: lounge, wall: west, from: south 2 m, height: 400 mm }
      outlets:
        - { name: desk, in: lounge, wall: east, from: south 2 m, height: 400 mm, cables: [cat6] }
      """;

  private static String text(String blocks, String annex, String extra) {
    return TEXT.replace(" BLOCKS", blocks).replace(" ANNEX", annex).replace("EXTRA\n", extra);
  }

  private static final Chain PLAIN = Chain.of(text("", "", ""));

  private static Plan hidden(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  private static List<String> kinds(Plan p) {
    return p.holes().stream().map(Plan.PlannedHole::kind).sorted().toList();
  }

  /** What the referee says of the plan of the plain house in this one. */
  private static String refused(Chain c) {
    return Referee.check(hidden(PLAIN), c.house(), c.request()).refusals().toString();
  }

  @Test
  void aRowOfBlocksIsBoredThrough() {
    Chain c = Chain.of(text(", blocks-at: [2.1 m]", "", ""));
    Plan plain = hidden(PLAIN);
    Plan blocked = hidden(c);
    assertEquals(List.of("top plate", "top plate"), kinds(plain));
    assertEquals(List.of("blocking between joists", "top plate", "top plate"), kinds(blocked));
    // A patch in the ceiling beside the block 70, the bore (4 + 5) x 1.3 + 2 = 13.7, a second fish
    // 5, and 38 mm less to fish at 1.2 a metre.
    assertEquals(
        70 + 13.7 + 5 - 0.0456, blocked.totals().minutes() - plain.totals().minutes(), 1e-3);
    assertTrue(refused(c).contains("runs into blocking upper/floor/blocking-"), refused(c));
  }

  @Test
  @Feature("steel within the joists' depth")
  void aBeamAmongTheJoistsIsNot() {
    Chain c =
        Chain.of(
            text(
                "",
                "",
                "obstacles: [{ beam, above-ceiling-of: lounge, at: [west 2 m, south 3 m], size: 100 mm x 6 m, height: 235 mm }]\n"));
    Plan p = hidden(c);
    assertTrue(p.holes().stream().noneMatch(h -> h.kind().startsWith("blocking")));
    assertTrue(p.totals().objective() > hidden(PLAIN).totals().objective());
    assertTrue(refused(c).contains("runs into obstacle lounge/obstacle-1-beam"), refused(c));
  }

  @Test
  @Feature("joists that change direction")
  void joistsThatTurnEndTheBay() {
    Chain c = Chain.of(text("", ", floor: { joists: 2x10, every: 16 in, run: north-south }", ""));
    // The middle of the wall between study and annex: 2114.3 + 2000 + 114.3 / 2.
    assertEquals(
        List.of(4_171_450_000L, 4_171_450_000L),
        List.of(
            c.framed().decks().get(0).outline().xRange().hi(),
            c.framed().decks().get(1).outline().xRange().lo()));
    for (Hollow h : c.house().hollows()) {
      long x0 = h.frame().toWorld(h.clear().x0(), h.clear().y0(), 0).x();
      long x1 = h.frame().toWorld(h.clear().x1(), h.clear().y1(), 0).x();
      boolean across =
          h.kind() == HollowKind.JOIST_BAY
              && Math.min(x0, x1) < 4_171_450_000L
              && Math.max(x0, x1) > 4_171_450_000L;
      assertTrue(!across, h::id);
    }
    assertTrue(hidden(c).totals().objective() > hidden(PLAIN).totals().objective());
    assertTrue(refused(c).contains("which the house does not have"), refused(c));
    assertEquals(2, c.framed().decks().size());
  }

  @Test
  void aRowBeyondTheFloorIsTold() {
    House house = Chain.read(text(", blocks-at: [9 m]", "", ""), "").house();
    String told = assertThrows(SurveyException.class, () -> Survey.of(house)).getMessage();
    assertTrue(
        told.contains("a row of blocks at 9.000 m lies beyond the floor of level upper"), told);
  }
}
