package holloway.solve;

import static holloway.solve.FlexibleHole.FLEXIBLE;
import static holloway.solve.FlexibleHole.PATCH;
import static holloway.solve.FlexibleHole.STRAIGHT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.plan.Certificate.Share;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * The hole of {@link FlexibleHole}, and three slim fibres that have a free way elsewhere: of all
 * seven jackets four pass what a flexible bit bores, but three of the thick ones. Their room by the
 * flexible bit, and by the straight one with the patch that lends to it, proves the plan: 510 000.
 */
class OwnRoomTest {
  private static final Order ORDER = order();
  private static final RouteGraph GRAPH = graph();
  private static final Solved SOLVED =
      JointPlanner.solve(GRAPH, ORDER, Budget.USUAL, Progress.SILENT);

  private static RouteGraph graph() {
    GraphBuilder b = FlexibleHole.builder();
    int near = b.node(0, 500, 0);
    b.edge(0, near, 0);
    b.end("near", near);
    return b.build();
  }

  private static Order order() {
    List<Order.Wanted> runs = new ArrayList<>(FourOutlets.order().runs());
    for (int i = 0; i < 3; i++) {
      runs.add(new Order.Wanted("fibre " + i, "cabinet", "near", Cable.get("om4")));
    }
    return new Order(runs, Profile.LEAST_WORK, Set.of(), Map.of());
  }

  @Test
  void theRoomOfTheThickByEachMethodProvesThePlan() {
    assertEquals(510_000, SOLVED.plan().totals().objective());
    assertEquals(510_000, SOLVED.bound().bound());
    assertEquals(1, SOLVED.bound().parts().size(), "no part had to be split");
    assertTrue(has(Share.OWN_ROOM, FLEXIBLE), "the flexible bit has a row of its own");
    assertTrue(has(Share.OWN_ROOM, STRAIGHT), "and the straight one");
    assertEquals(Optional.empty(), Certified.check(GRAPH, ORDER, SOLVED).refusal());
  }

  @Test
  void roomGivenOutTwiceOrToTheWrongIsSeen() {
    int cable = group("run 0");
    String room = "units of the room";
    assertSees(room, list -> list.add(Share.ownRoom(FLEXIBLE, 1, cable, 100_000_000)));
    assertSees(room, list -> list.add(Share.ownRoom(STRAIGHT, 1, cable, 100_000_000)));
    assertSees(room, list -> list.add(Share.ownRoom(FLEXIBLE, 1, group("fibre 0"), 1)));
    assertSees("twice", list -> list.add(Share.ownRoom(FLEXIBLE, 0, cable, 1)));
    assertSees("twice", list -> list.add(Share.room(0, 1, cable, 1)));
    assertSees("no hole alone", list -> list.add(Share.ownRoom(PATCH, 1, cable, 1)));
    assertSees("no such thing", list -> list.add(Share.ownRoom(99, 1, cable, 1)));
    assertSees("no such thing", list -> list.add(Share.ownRoom(FLEXIBLE, -1, cable, 1)));
    assertSees("lends nothing", list -> list.add(Share.lift(PATCH, STRAIGHT, -1, 1)));
    assertSees("lends nothing", list -> list.add(Share.lift(PATCH, FLEXIBLE, 1, 1)));
    assertSees(room, list -> list.removeIf(s -> s.place().equals(Share.RENT)));
  }

  private static boolean has(String place, int at) {
    return shares().stream().anyMatch(s -> s.place().equals(place) && s.at() == at);
  }

  private static int group(String run) {
    List<List<String>> runs = SOLVED.bound().runs();
    return runs.indexOf(runs.stream().filter(g -> g.contains(run)).findFirst().orElseThrow());
  }

  private static List<Share> shares() {
    return SOLVED.bound().parts().get(0).shares();
  }

  private static void assertSees(String words, Consumer<List<Share>> change) {
    Certified.assertSees(GRAPH, ORDER, SOLVED, words, change);
  }
}
