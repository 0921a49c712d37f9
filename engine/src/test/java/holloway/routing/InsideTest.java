package holloway.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** What a fish within a hollow beats across a crossing is what the graph leaves out anyway. */
class InsideTest {
  private static final Point3 AT = new Point3(0, 0, 0);

  private static FishMemory.Hand hand(String node, String hole) {
    return new FishMemory.Hand(node, AT, List.of(), hole, hole.isEmpty());
  }

  private static FishMemory.Fish fish(long price, String... hollowsAndSites) {
    List<RouteGraph.Piece> pieces = new ArrayList<>();
    for (String s : hollowsAndSites) {
      pieces.add(
          s.startsWith("bay")
              ? new RouteGraph.Piece.Leg(s, HollowKind.STUD_BAY, List.of(), true, price)
              : new RouteGraph.Piece.Pass(s, List.of()));
    }
    return new FishMemory.Fish(Laid.of(pieces), 0);
  }

  /** A hand that reaches from "p" through the crossing into the hollow of "q". */
  private static Inside inside(boolean plain, FishMemory.Fish fish) {
    FishMemory.Side side =
        new FishMemory.Side(null, List.of(hand("p", "stud"), hand("q", "plate")));
    return Inside.of(side, List.of(new FishMemory.Found(0, 1, fish)), plain);
  }

  private static boolean beats(Inside in, FishMemory.Fish f, String crossed) {
    return in.beats(hand("p", ""), crossed, hand("q", "plate"), f);
  }

  @Test
  void theSameWayInAsManyHollowsForLessMinutesBeatsIt() {
    FishMemory.Fish across = fish(5, "bay 1", "stud", "bay 2");
    assertTrue(beats(inside(true, fish(5, "bay 1", "stud", "bay 2")), across, "stud"));
    assertTrue(beats(inside(true, fish(4, "bay 1", "stud", "bay 2")), across, "stud"));
    assertFalse(beats(inside(true, fish(6, "bay 1", "stud", "bay 2")), across, "stud"));
  }

  @Test
  void anotherHoleHollowOrOpeningAndWhatIsToBeDugIsAChoice() {
    FishMemory.Fish across = fish(5, "bay 1", "stud", "bay 2");
    Inside same = inside(true, fish(5, "bay 1", "stud", "bay 2"));
    assertFalse(beats(same, across, "other stud"));
    assertFalse(beats(same, across, ""));
    assertFalse(same.beats(hand("p", ""), "stud", hand("r", "plate"), across));
    assertFalse(beats(inside(true, fish(1, "stud", "bay 2")), across, "stud"));
    assertFalse(beats(inside(true, fish(1, "bay 1", "stud", "door", "bay 2")), across, "stud"));
    assertFalse(beats(inside(false, fish(1, "bay 1", "stud", "bay 2")), across, "stud"));
  }

  /** The arithmetic in sight: hole 0 is "stud", hole 1 "plate"; nodes 0 and 1 are "p" and "q". */
  @Test
  void theGraphLeavesItOutToo() {
    List<RouteGraph.Hole> holes = List.of(hole(0, "stud"), hole(1, "plate"));
    Laid within = fish(5, "bay 1", "stud", "bay 2").laid();
    Laid across = fish(5, "bay 1", "stud", "bay 2").laid();
    List<RouteGraph.Edge> left =
        Dominated.without(
            List.of(
                new Drawn(0, 1, within, 0, new int[] {0, 1}, new int[0], 0),
                new Drawn(0, 1, across, 0, new int[] {0, 1}, new int[0], 0)),
            holes);
    assertEquals(1, left.size());
  }

  private static RouteGraph.Hole hole(int id, String site) {
    return new RouteGraph.Hole(
        id,
        site,
        "stud",
        AT,
        AT,
        "bay 1",
        "bay 2",
        List.of(),
        List.of(),
        OptionalLong.empty(),
        false,
        false,
        0,
        List.of());
  }
}
