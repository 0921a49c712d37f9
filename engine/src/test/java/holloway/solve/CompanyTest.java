package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.catalog.Cable;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Runs in one hole move to another way that none of them would pay for. */
class CompanyTest {
  private static final long MINUTE = 10_000;

  /** A way has one hole; its price and what laying a cable that way takes are in minutes. */
  private static RouteGraph ways(int runs, long[]... ways) {
    GraphBuilder b = new GraphBuilder();
    int cabinet = b.node(0, 0, 0);
    int hub = b.node(5_000, 0, 0);
    for (long[] way : ways) {
      int hole =
          b.hole(List.of(new int[] {b.bore(way[0] * MINUTE)}), List.of(), OptionalLong.empty());
      b.edge(cabinet, hub, way[1] * MINUTE, hole);
    }
    b.end("cabinet", cabinet);
    for (int k = 0; k < runs; k++) {
      int outlet = b.node(6_000, 500L * k, 0);
      b.edge(hub, outlet, MINUTE);
      b.end("outlet " + k, outlet);
    }
    return b.build();
  }

  /** The near way: a hole of 10 min and 5 min of laying a cable, the other 30 min and 1 min. */
  @Test
  void aCrowdMovesTogether() {
    moves(12, new long[] {10, 5}, new long[] {30, 1});
  }

  /**
   * The other way costs the first 16 min and the near one 15, so one that is led by what it pays
   * itself leads nobody; the two together pay 17 there and 25 here.
   */
  @Test
  void aPairMovesForWhatEachSaves() {
    moves(2, new long[] {5, 10}, new long[] {15, 1});
  }

  private static void moves(int many, long[] near, long[] other) {
    List<Order.Wanted> wanted = new ArrayList<>();
    for (int k = 0; k < many; k++) {
      String cable = k == 1 ? "cat6a" : "cat6";
      wanted.add(new Order.Wanted("run " + k, "cabinet", "outlet " + k, Cable.get(cable)));
    }
    RouteGraph g = ways(many, near, other);
    Task task = new Task(g, new Order(wanted, Profile.LEAST_WORK, Set.of(), Map.of()));
    Zones zones = new Zones(task.net);
    Draft draft = new Draft(task, zones);
    MarginalSearch search = new MarginalSearch(draft, zones);
    int[] runs = IntStream.range(0, many).toArray();
    new Insertion(draft, search).insert(runs);
    assertEquals(
        (near[0] + many * (near[1] + 1)) * MINUTE, draft.price(), "one by one the near way");
    new Company(draft, search, new Watch(Stop.NEVER)).improve(runs, 100_000);
    assertEquals((other[0] + many * (other[1] + 1)) * MINUTE, draft.price());
  }
}
