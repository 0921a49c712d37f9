package holloway.solve;

import holloway.catalog.Cable;
import holloway.hollow.WorkKind;
import holloway.request.Profile;
import holloway.routing.Fares;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraph.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/** Small random graphs with everything a house has: zones, patches, shared methods, bit steps. */
final class RandomGraph {
  private static final String[] KINDS = {"cat6", "cat6a", "om4"};

  final RouteGraph graph;
  final Order order;
  private final Random random;
  private final GraphBuilder b = new GraphBuilder();
  private int[] patches;
  private int[] zones;

  /** The same graph where metres of the kinds cost unlike, and one kind may not use some edges. */
  RouteGraph unlike() {
    Set<Integer> shut = new TreeSet<>();
    for (RouteGraph.Edge e : graph.edges()) {
      if (e.id() % 5 == 0) {
        shut.add(e.id());
      }
    }
    Fares fares =
        new Fares(
            Map.of("cat6a", 20_000.0, "cat6", 5_000.0, "om4", 50_000.0), Map.of("cat6a", shut));
    return new RouteGraph(
        graph.nodes(), graph.edges(), graph.holes(), graph.works(), graph.terminals(), fares);
  }

  /**
   * The same graph where every third hole is there already and takes one or two cables, and every
   * third is made by a patch alone.
   */
  RouteGraph tight() {
    List<RouteGraph.Hole> holes = new ArrayList<>();
    for (RouteGraph.Hole h : graph.holes()) {
      List<RouteGraph.Method> methods =
          h.id() % 3 == 0
              ? List.of()
              : h.id() % 3 == 1
                  ? List.of(new RouteGraph.Method("patch", "here", new int[] {patches[0]}))
                  : h.methods();
      boolean same = h.id() % 3 == 2;
      holes.add(
          GraphBuilder.withMethods(
              h,
              methods,
              same ? h.steps() : h.steps().subList(0, 2),
              same ? h.second() : OptionalLong.empty()));
    }
    return new RouteGraph(
        graph.nodes(), graph.edges(), holes, graph.works(), graph.terminals(), graph.fares());
  }

  /**
   * The same graph where the first method of every hole bores with flexible bits, so that it takes
   * fewer cables than the others do; where there was one method alone, another needs a patch.
   */
  RouteGraph flexible() {
    List<RouteGraph.Hole> holes = new ArrayList<>();
    List<RouteGraph.Work> works = new ArrayList<>(graph.works());
    for (RouteGraph.Hole h : graph.holes()) {
      List<RouteGraph.Method> methods = new ArrayList<>(h.methods());
      RouteGraph.Method first = methods.get(0);
      if (methods.size() == 1) {
        int bore = works.size();
        works.add(new RouteGraph.Work(bore, "wide " + bore, WorkKind.BORE, 60_000, 1, 0, ""));
        methods.add(new RouteGraph.Method("wide", "there", new int[] {bore, patches[h.id() % 2]}));
      }
      methods.set(0, new RouteGraph.Method(first.words(), first.stand(), first.works(), true));
      List<Step> steps = List.of(new Step(13, 0), new Step(16, 9_000), new Step(22, 20_000));
      holes.add(GraphBuilder.withMethods(h, methods, steps, h.second()));
    }
    return new RouteGraph(
        graph.nodes(), graph.edges(), holes, works, graph.terminals(), graph.fares());
  }

  RandomGraph(long seed, int nodes, int extraEdges, int runs, Profile profile) {
    random = new Random(seed);
    zones = new int[random.nextInt(3)];
    for (int i = 0; i < zones.length; i++) {
      zones[i] = b.work(WorkKind.ZONE, 100_000 + random.nextInt(200_000), 0, "zone " + i);
    }
    patches = new int[2];
    for (int i = 0; i < patches.length; i++) {
      patches[i] = b.work(WorkKind.PATCH, 150_000 + random.nextInt(200_000), 1, "");
    }
    for (int v = 0; v < nodes; v++) {
      int[] works = random.nextInt(5) == 0 ? new int[] {patches[random.nextInt(2)]} : new int[0];
      b.node(random.nextInt(9000), random.nextInt(9000), random.nextInt(2) * 2700, works);
    }
    List<Integer> holes = new ArrayList<>();
    for (int i = 0; i < nodes; i++) {
      holes.add(hole());
    }
    for (int v = 1; v < nodes; v++) {
      edge(random.nextInt(v), v, holes);
    }
    for (int i = 0; i < extraEdges; i++) {
      int a = random.nextInt(nodes);
      int c = random.nextInt(nodes);
      if (a != c) {
        edge(a, c, holes);
      }
    }
    ends(nodes, runs);
    graph = b.build();
    List<Order.Wanted> wanted = new ArrayList<>();
    for (int k = 0; k < runs; k++) {
      String from = random.nextInt(6) == 0 ? "outlet " + (k + 1) % runs : "cabinet";
      from = from.equals("outlet " + k) ? "cabinet" : from;
      Cable cable = Cable.get(KINDS[random.nextInt(3)]);
      wanted.add(new Order.Wanted("run " + k, from, "outlet " + k, cable));
    }
    order = new Order(wanted, profile, Set.of(), Map.of());
  }

  private void ends(int nodes, int runs) {
    b.end("cabinet", 0);
    for (int k = 0; k < runs; k++) {
      int first = 1 + random.nextInt(nodes - 1);
      int second = 1 + random.nextInt(nodes - 1);
      b.end("outlet " + k, random.nextInt(3) == 0 ? new Integer[] {first, second} : one(first));
    }
  }

  private static Integer[] one(int v) {
    return new Integer[] {v};
  }

  private int hole() {
    List<int[]> methods = new ArrayList<>();
    int bore = b.bore(50_000 + random.nextInt(150_000));
    methods.add(
        zones.length > 0 && random.nextBoolean()
            ? new int[] {bore, zones[random.nextInt(zones.length)]}
            : new int[] {bore});
    if (random.nextInt(3) == 0) {
      methods.add(new int[] {b.bore(20_000 + random.nextInt(60_000)), patches[random.nextInt(2)]});
    }
    List<Step> steps = List.of(new Step(13, 0), new Step(16, 9_000), new Step(19, 20_000));
    return b.hole(
        methods,
        random.nextBoolean() ? steps : steps.subList(0, 2),
        random.nextBoolean() ? OptionalLong.of(30_000) : OptionalLong.empty());
  }

  private void edge(int a, int c, List<Integer> holes) {
    int count = random.nextInt(3);
    int[] passed = new int[count];
    for (int i = 0; i < count; i++) {
      passed[i] = holes.get(random.nextInt(holes.size()));
    }
    if (count == 2 && passed[0] == passed[1]) {
      passed = new int[] {passed[0]};
    }
    boolean zone = zones.length > 0 && random.nextInt(4) == 0;
    int[] works = zone ? new int[] {zones[random.nextInt(zones.length)]} : new int[0];
    b.edge(a, c, 5_000 + random.nextInt(60_000), passed, works, 0);
  }
}
