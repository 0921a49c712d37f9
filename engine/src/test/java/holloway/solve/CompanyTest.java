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

/** Many runs in one hole move to another way that none of them, nor a few, would pay for. */
class CompanyTest {
  private static final int RUNS = 12;
  private static final long MINUTE = 10_000;

  /** The near way has a hole of 10 min and 5 min of laying a cable, the other 30 min and 1 min. */
  private static RouteGraph twoWays() {
    GraphBuilder b = new GraphBuilder();
    int cabinet = b.node(0, 0, 0);
    int hub = b.node(5_000, 0, 0);
    for (long[] way : new long[][] {{10, 5}, {30, 1}}) {
      int hole =
          b.hole(List.of(new int[] {b.bore(way[0] * MINUTE)}), List.of(), OptionalLong.empty());
      b.edge(cabinet, hub, way[1] * MINUTE, hole);
    }
    b.end("cabinet", cabinet);
    for (int k = 0; k < RUNS; k++) {
      int outlet = b.node(6_000, 500L * k, 0);
      b.edge(hub, outlet, MINUTE);
      b.end("outlet " + k, outlet);
    }
    return b.build();
  }

  @Test
  void aCrowdMovesTogether() {
    List<Order.Wanted> wanted = new ArrayList<>();
    for (int k = 0; k < RUNS; k++) {
      wanted.add(new Order.Wanted("run " + k, "cabinet", "outlet " + k, Cable.get("cat6")));
    }
    Task task = new Task(twoWays(), new Order(wanted, Profile.LEAST_WORK, Set.of(), Map.of()));
    Zones zones = new Zones(task.net);
    Draft draft = new Draft(task, zones);
    MarginalSearch search = new MarginalSearch(draft, zones);
    int[] runs = IntStream.range(0, RUNS).toArray();
    new Insertion(draft, search).insert(runs);
    assertEquals((10 + RUNS * 6) * MINUTE, draft.price(), "one by one they go the near way");
    new Company(draft, search, new Watch(Stop.NEVER)).improve(runs, 100_000);
    assertEquals((30 + RUNS * 2) * MINUTE, draft.price());
  }
}
