package holloway.support;

import holloway.routing.RouteGraph;
import holloway.routing.RouteGraph.Edge;
import holloway.routing.RouteGraph.Hole;
import holloway.routing.RouteGraph.Node;
import holloway.routing.RouteGraph.Work;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A routing graph as lines without ids. A work is known by what it costs and all the places that
 * need it, a node and a hole by where they are and their works, an edge by all of these and its
 * price: whoever has the same lines has, but for a chance that a hash hides, the same plans.
 */
final class GraphLines {
  /** Prices may differ by what rounding does to a few legs, in 1/10 000 minute. */
  private static final long PRICE = 20;

  private static final long LENGTH = 1_000_000;

  private final RouteGraph g;
  private final Reflected seen;
  private final String[] works;
  private final String[] nodes;
  private final String[] holes;

  /** Before works are known by who needs them: nearer to what is to blame. */
  private final Map<String, List<Told>> alone = new LinkedHashMap<>();

  GraphLines(RouteGraph g, Reflected seen) {
    this.g = g;
    this.seen = seen;
    works = new String[g.works().size()];
    for (Work w : g.works()) {
      works[w.id()] =
          "%s %d holes %d patches %d %s"
              .formatted(w.kind(), w.price(), w.holes(), w.patches(), w.zone());
    }
    nodes = g.nodes().stream().map(this::line).toArray(String[]::new);
    holes = g.holes().stream().map(this::line).toArray(String[]::new);
    alone.put("nodes alone", told(g.nodes(), Node::name, n -> nodes[n.id()]));
    alone.put("holes alone", told(g.holes(), Hole::site, h -> holes[h.id()]));
    alone.put("edges alone", g.edges().stream().map(this::told).toList());
    usersIntoWorks();
    for (Node n : g.nodes()) {
      nodes[n.id()] = line(n);
    }
    for (Hole h : g.holes()) {
      holes[h.id()] = line(h);
    }
  }

  private void usersIntoWorks() {
    List<List<String>> users = new ArrayList<>();
    g.works().forEach(w -> users.add(new ArrayList<>()));
    g.nodes().forEach(n -> IntStream.of(n.works()).forEach(w -> users.get(w).add(nodes[n.id()])));
    for (Hole h : g.holes()) {
      h.methods()
          .forEach(m -> IntStream.of(m.works()).forEach(w -> users.get(w).add(holes[h.id()])));
    }
    for (Edge e : g.edges()) {
      IntStream.of(e.works()).forEach(w -> users.get(w).add(ends(e)));
    }
    for (Work w : g.works()) {
      List<String> of = users.get(w.id());
      of.sort(null);
      works[w.id()] += " for " + of.size() + " " + Integer.toHexString(of.hashCode());
    }
  }

  Map<String, List<Told>> stages() {
    Map<String, List<Told>> out = new LinkedHashMap<>(alone);
    out.put("works", told(g.works(), Work::name, w -> works[w.id()]));
    out.put("nodes", told(g.nodes(), Node::name, n -> nodes[n.id()]));
    out.put("holes", told(g.holes(), Hole::site, h -> holes[h.id()]));
    out.put("ends", told(g.terminals().entrySet(), Map.Entry::getKey, this::end));
    out.put("edges", g.edges().stream().map(this::told).toList());
    String metre = new TreeMap<>(g.fares().metre()).toString();
    out.put("fares", List.of(new Told("metre", metre)));
    return out;
  }

  private static <T> List<Told> told(
      Collection<T> things, Function<T, String> id, Function<T, String> line) {
    return things.stream().map(t -> new Told(id.apply(t), line.apply(t))).toList();
  }

  private String end(Map.Entry<String, List<Integer>> end) {
    return end.getKey() + end.getValue().stream().map(n -> nodes[n]).sorted().toList();
  }

  private String works(int[] ids) {
    return Arrays.stream(ids).mapToObj(w -> works[w]).sorted().collect(Collectors.joining(" + "));
  }

  private String line(Node n) {
    return seen.at(n.at()) + " {" + works(n.works()) + "}";
  }

  private String line(Hole h) {
    List<String> methods = new ArrayList<>();
    h.methods().forEach(m -> methods.add((m.flexible() ? "flex " : "") + works(m.works())));
    methods.sort(null);
    List<String> between = new ArrayList<>(List.of(seen.at(h.a()), seen.at(h.b())));
    between.sort(null);
    return "%s %s steps %s second %s%s%s ways %d %s"
        .formatted(
            h.kind(),
            between,
            h.steps(),
            h.second(),
            h.made() ? " made" : "",
            h.assumed() ? " assumed" : "",
            h.ways(),
            methods);
  }

  private String ends(Edge e) {
    List<String> out = new ArrayList<>();
    out.add(seen.at(g.nodes().get(e.a()).at()));
    out.add(seen.at(g.nodes().get(e.b()).at()));
    out.sort(null);
    return out.toString();
  }

  private Told told(Edge e) {
    return new Told(
        g.nodes().get(e.a()).name() + " -- " + g.nodes().get(e.b()).name(),
        line(e),
        new Told.Measure("price", e.price(), PRICE),
        new Told.Measure("length", e.length(), LENGTH),
        new Told.Measure("in sight", e.visible(), LENGTH));
  }

  private String line(Edge e) {
    String a = nodes[e.a()];
    String b = nodes[e.b()];
    List<String> passed = new ArrayList<>();
    IntStream.of(e.holes()).forEach(h -> passed.add(holes[h]));
    passed.sort(null); // of two ways round by the same holes one is left, and either will do
    boolean turned = a.compareTo(b) > 0;
    List<String> shut = new ArrayList<>();
    g.fares().shut().forEach((cable, ids) -> shut.add(ids.contains(e.id()) ? cable : ""));
    shut.sort(null);
    return "%s -- %s by %s needs %s ways %d shut %s"
        .formatted(turned ? b : a, turned ? a : b, passed, works(e.works()), e.ways(), shut);
  }
}
