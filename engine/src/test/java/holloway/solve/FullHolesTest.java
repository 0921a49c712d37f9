package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraph.Step;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The best path of each run alone leads through holes that take one of the two cables only. */
class FullHolesTest {
  @Test
  void aPathThroughManyHolesThatAreFullAlready() {
    RouteGraph g = row(40);
    Solved s = JointPlanner.solve(g, two(), Budget.USUAL, Progress.SILENT);
    assertEquals(1, s.plan().runs().size());
    assertEquals(List.of("b"), s.plan().unrouted().stream().map(u -> u.id()).toList());
    assertEquals(40 * 11_000, s.plan().totals().objective());
  }

  /** However many holes are overfull, the price tells it, and nothing of it is left afterwards. */
  @Test
  void noNumberOfFullHolesIsTooMany() {
    int holes = 9_000;
    Task task = new Task(row(holes), two());
    Draft draft = new Draft(task, new Zones(task.net));
    int[] arcs = IntStream.range(0, holes).map(i -> 2 * i).toArray();
    Path along = new Path(0, arcs, 0);
    draft.add(0, along);
    long one = draft.price();
    assertEquals(holes * 11_000L, one);
    draft.add(1, along);
    assertTrue(draft.price() >= Network.SHUT, "a hole that is too full has a price: it fits");
    draft.remove(1);
    assertEquals(one, draft.price());
  }

  /** Fewer overfull holes are better, or nothing would ever be mended. */
  @Test
  void aFullHoleMoreCostsMore() {
    Task task = new Task(row(3), two());
    Draft draft = new Draft(task, new Zones(task.net));
    draft.add(0, new Path(0, new int[] {0, 2, 4}, 0));
    draft.add(1, new Path(0, new int[] {0, 2}, 0));
    long two = draft.price();
    draft.remove(1);
    draft.add(1, new Path(0, new int[] {0, 2, 4}, 0));
    assertTrue(draft.price() >= two + Network.SHUT);
  }

  /** Nodes in a row, between each two a hole that one cable fills. */
  private static RouteGraph row(int holes) {
    GraphBuilder b = new GraphBuilder();
    int last = b.node(0, 0, 0);
    b.end("cabinet", last);
    for (int i = 1; i <= holes; i++) {
      int next = b.node(400L * i, 0, 0);
      int hole =
          b.hole(
              List.of(new int[] {b.bore(10_000)}), List.of(new Step(13, 0)), OptionalLong.empty());
      b.edge(last, next, 1_000, hole);
      last = next;
    }
    b.end("desk", last);
    return b.build();
  }

  private static Order two() {
    Cable cable = Cable.get("cat6a");
    return new Order(
        List.of(
            new Order.Wanted("a", "cabinet", "desk", cable),
            new Order.Wanted("b", "cabinet", "desk", cable)),
        Profile.LEAST_WORK,
        Set.of(),
        Map.of());
  }
}
