package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Certificate;
import holloway.plan.Certificate.Part;
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
 * A conduit that is there already has no work that could tell how many cables it takes. Four
 * outlets lie behind one that takes two cables of 6 mm; each has a way of its own for 1 000 000.
 * The patched hole takes a third.
 */
class ConduitRoomTest {
  private static final RouteGraph GRAPH = graph();
  private static final Order ORDER = FourOutlets.order();
  private static final Solved SOLVED =
      JointPlanner.solve(GRAPH, ORDER, Budget.QUICK, Progress.SILENT);

  private static RouteGraph graph() {
    GraphBuilder b = new GraphBuilder();
    int patch = b.bore(40_000);
    int cabinet = b.node(0, 0, 0, patch);
    int behind = b.node(0, 0, 1000);
    int conduit = b.hole(List.of(), List.of(new Step(16, 0)), OptionalLong.empty());
    // Beside it a hole that needs nothing but the patch at the cabinet, which every plan pays.
    int hole = b.hole(List.of(new int[] {patch}), List.of(new Step(10, 0)), OptionalLong.empty());
    b.edge(cabinet, behind, 0, conduit);
    b.edge(cabinet, behind, 10_000, hole);
    FourOutlets.add(b, cabinet, behind, 1_000_000);
    return b.build();
  }

  /**
   * Two through the conduit for nothing, one through the patched hole for 50 000, one for 1 000
   * 000.
   */
  @Test
  void itsRoomProvesThePlan() {
    assertEquals(1_050_000, SOLVED.plan().totals().objective());
    assertEquals(1_050_000, SOLVED.bound().bound());
    assertTrue(shares().stream().anyMatch(s -> s.place().equals(Share.ROOM)), "room is charged");
    assertEquals(Optional.empty(), Certified.check(GRAPH, ORDER, SOLVED).refusal());
  }

  @Test
  void roomGivenOutTwiceOrNowhereIsSeen() {
    assertSees("units of the room", list -> list.removeIf(s -> s.place().equals(Share.RENT)));
    assertSees("units of the room", list -> list.add(Share.room(0, 0, 0, 100_000_000)));
    assertSees("no such thing", list -> list.add(Share.room(99, 0, 0, 1)));
    assertSees("no such thing", list -> list.add(Share.room(0, 0, 99, 1)));
    assertSees("no such thing", list -> list.add(Share.room(0, 0, 0, -1)));
    assertSees("claims", list -> list.removeIf(s -> s.place().equals(Share.ROOM)));
  }

  /** A rent is paid back once, so it may not lift a work's shares and the room's as well. */
  @Test
  void aRentLiftsNotBothAWorkAndTheRoom() {
    GraphBuilder b = new GraphBuilder();
    int cabinet = b.node(0, 0, 0);
    int outlet = b.node(0, 0, 1000);
    int bore = b.bore(100);
    int hole = b.hole(List.of(new int[] {bore}), List.of(new Step(16, 0)), OptionalLong.empty());
    b.edge(cabinet, outlet, 0, hole);
    b.edge(cabinet, outlet, 1_000_000);
    b.end("cabinet", cabinet).end("outlet 0", outlet);
    RouteGraph graph = b.build();
    Order one = new Order(List.of(ORDER.runs().get(0)), Profile.LEAST_WORK, Set.of(), Map.of());
    Solved s = JointPlanner.solve(graph, one, Budget.QUICK, Progress.SILENT);
    List<Share> both =
        List.of(
            new Share(bore, "hole", hole, 0, 600),
            Share.rent(hole, 0, 500),
            Share.room(hole, 0, 0, 500));
    Certificate doubled = with(s.bound(), 600, both, false);
    String said = Certified.check(graph, one, s.plan(), doubled).refusal().orElse("accepted");
    assertTrue(said.contains("a work tells already"), said);
  }

  /** On random graphs with tight holes of both kinds the bound is under what trying all finds. */
  @Test
  void theBoundIsUnderTheOptimum() {
    int charged = 0;
    for (long seed = 1; seed <= 150; seed++) {
      RandomGraph r = new RandomGraph(seed, 6, 6, 3 + (int) (seed % 2), Profile.LEAST_WORK);
      RouteGraph graph = r.tight();
      long optimum = BruteForce.optimum(graph, r.order);
      Solved s = JointPlanner.solve(graph, r.order, Budget.QUICK, Progress.SILENT);
      if (optimum < BruteForce.NONE && s.plan().unrouted().isEmpty()) {
        long bound = s.bound().bound();
        assertTrue(bound <= optimum, "seed " + seed + ": " + bound + " over " + optimum);
        assertEquals(Optional.empty(), Certified.check(graph, r.order, s).refusal());
        charged +=
            s.bound().parts().stream()
                    .flatMap(p -> p.shares().stream())
                    .anyMatch(x -> x.place().equals(Share.ROOM))
                ? 1
                : 0;
      }
    }
    assertTrue(charged >= 20, charged + " proofs charge for room");
  }

  private static List<Share> shares() {
    return SOLVED.bound().parts().get(0).shares();
  }

  private static void assertSees(String words, Consumer<List<Share>> change) {
    List<Share> list = new ArrayList<>(shares());
    change.accept(list);
    Certificate c = with(SOLVED.bound(), SOLVED.bound().bound(), list, false);
    String said = Certified.check(GRAPH, ORDER, SOLVED.plan(), c).refusal().orElse("accepted");
    assertTrue(said.contains(words), said);
  }

  private static Certificate with(Certificate c, long bound, List<Share> shares, boolean directed) {
    Part p = c.parts().get(0);
    return new Certificate(
        c.profile(),
        bound,
        c.grain(),
        c.paidByAll(),
        c.zones(),
        c.runs(),
        directed,
        List.of(new Part(p.prepaid(), p.shut(), bound, false, shares)));
  }
}
