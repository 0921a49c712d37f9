package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.plan.Certificate.Share;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraph.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * Three of four thick cables pass a conduit, the fourth has to go its own way for 1 000 000. Three
 * slim fibres of the same order have a free way elsewhere; they must not make the conduit look as
 * if it took four of whatever comes.
 */
class ThickRoomTest {
  private static final Order ORDER = order();
  private static final RouteGraph GRAPH = graph();
  private static final Solved SOLVED =
      JointPlanner.solve(GRAPH, ORDER, Budget.QUICK, Progress.SILENT);

  private static RouteGraph graph() {
    GraphBuilder b = new GraphBuilder();
    int cabinet = b.node(0, 0, 0);
    int behind = b.node(0, 0, 1000);
    int conduit = b.hole(List.of(), List.of(new Step(19, 0)), OptionalLong.empty());
    b.edge(cabinet, behind, 0, conduit);
    FourOutlets.add(b, cabinet, behind, 1_000_000);
    int near = b.node(0, 500, 0);
    b.edge(cabinet, near, 0);
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

  private static int fit(Order order) {
    Task task = new Task(GRAPH, order);
    List<Cable> cables = order.runs().stream().map(Order.Wanted::cable).toList();
    return new LeastExtra(task.net, cables).of(0).length;
  }

  @Test
  void theSlimmestOfAllHideThatTheThickDoNotFit() {
    assertEquals(3, fit(FourOutlets.order()));
    assertTrue(fit(ORDER) > 3, "with fibres among them");
  }

  @Test
  void theRoomOfTheThickProvesThePlan() {
    assertEquals(1_000_000, SOLVED.plan().totals().objective());
    assertEquals(1_000_000, SOLVED.bound().bound());
    assertEquals(Optional.empty(), Certified.check(GRAPH, ORDER, SOLVED).refusal());
    assertTrue(shares().stream().anyMatch(ThickRoomTest::thickRoom), "their room is charged");
  }

  @Test
  void roomOfTheThickGivenOutTwiceOrToTheSlimIsSeen() {
    int fibre = group("fibre 0");
    int cable = group("run 0");
    assertSees("units of the room", list -> list.add(Share.room(0, 1, cable, 100_000_000)));
    assertSees("units of the room", list -> list.add(Share.room(0, 1, fibre, 1)));
    assertSees("no cables are left", list -> list.add(Share.room(0, 2, cable, 1)));
    assertSees("no such thing", list -> list.add(Share.room(0, -1, cable, 1)));
    assertSees("is none", list -> list.add(Share.rent(0, -1, 1)));
    assertSees("claims", list -> list.add(Share.rent(0, 1, 100_000)));
    assertSees("claims", list -> list.removeIf(ThickRoomTest::thickRoom));
  }

  private static boolean thickRoom(Share s) {
    return s.place().equals(Share.ROOM) && s.work() == 1;
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
