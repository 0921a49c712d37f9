package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.catalog.Cable;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraph.Step;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The best path of each run alone leads through holes that take one of the two cables only. */
class FullHolesTest {
  @Test
  void aPathThroughManyHolesThatAreFullAlready() {
    GraphBuilder b = new GraphBuilder();
    int last = b.node(0, 0, 0);
    b.end("cabinet", last);
    for (int i = 1; i <= 40; i++) {
      int next = b.node(400L * i, 0, 0);
      int hole =
          b.hole(
              List.of(new int[] {b.bore(10_000)}), List.of(new Step(13, 0)), OptionalLong.empty());
      b.edge(last, next, 1_000, hole);
      last = next;
    }
    b.end("desk", last);
    RouteGraph g = b.build();
    Cable cable = Cable.get("cat6a");
    Order order =
        new Order(
            List.of(
                new Order.Wanted("a", "cabinet", "desk", cable),
                new Order.Wanted("b", "cabinet", "desk", cable)),
            Profile.LEAST_WORK,
            Set.of(),
            Map.of());
    Solved s = JointPlanner.solve(g, order, Budget.USUAL, Progress.SILENT);
    assertEquals(1, s.plan().runs().size());
    assertEquals(List.of("b"), s.plan().unrouted().stream().map(u -> u.id()).toList());
    assertEquals(40 * 11_000, s.plan().totals().objective());
  }
}
