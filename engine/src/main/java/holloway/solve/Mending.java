package holloway.solve;

import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * Mends an old plan for a changed question in a hurry: runs whose path is still there and still
 * wanted keep it, and only the others are routed, one after the other, where each then adds least.
 * Holes are not overfilled. Nothing is proven, and nothing else is tried: what stays could now lie
 * better elsewhere.
 */
final class Mending {
  private final Task old;
  private final Solution plan;
  private final Task next;
  private final Network net;
  private final Draft draft;
  private final MarginalSearch search;
  private final TreeSet<String> touched = new TreeSet<>();

  /**
   * @param plan of {@code old}, which is mended for {@code next}
   */
  Mending(Task old, Solution plan, Task next) {
    this.old = old;
    this.plan = plan;
    this.next = next;
    net = next.net;
    Zones zones = new Zones(net);
    draft = new Draft(next, zones);
    search = new MarginalSearch(draft, zones);
  }

  Sketch sketch() {
    int[] loose = loose(paths());
    for (int run : loose) {
      touched.add(next.order.runs().get(run).id());
      route(run);
    }
    boolean moved = false;
    for (int i = 0; i < loose.length; i++) {
      // The last one was routed when all others lay as they do now, unless one has moved since.
      if (i + 1 < loose.length || moved) {
        moved |= again(loose[i]);
      }
    }
    new MethodChoice(draft).improve();
    new MethodsExact(draft).settle();
    return new Sketch(new PlanWriter(draft).write(0, false), touched);
  }

  /** Lays the paths that stay; gives the runs that have none, in order. */
  private int[] loose(Path[] known) {
    List<Integer> out = new ArrayList<>();
    for (int run = 0; run < known.length; run++) {
      Demand d = next.demands[run];
      Path p = known[run];
      boolean fits =
          p != null
              && Places.has(draft.alternatives(d.from()), p.start())
              && Places.has(draft.alternatives(d.to()), p.end(net));
      if (fits) {
        draft.add(run, p);
        if (draft.price() >= Network.SHUT) {
          draft.remove(run);
        }
      }
      if (draft.paths[run] == null) {
        out.add(run);
      }
    }
    return out.stream().mapToInt(Integer::intValue).toArray();
  }

  private void route(int run) {
    Path p = search.find(run);
    if (p != null) {
      draft.add(run, p);
      if (draft.price() >= Network.SHUT) {
        draft.remove(run);
      }
    }
  }

  /**
   * Once more, now that the others that were loose lie: it may share what they have opened. True if
   * it lies otherwise then.
   */
  private boolean again(int run) {
    Path before = draft.paths[run];
    if (before == null) {
      route(run);
      return draft.paths[run] != null;
    }
    Solution kept = draft.save();
    draft.remove(run);
    route(run);
    boolean worse = draft.paths[run] == null || draft.price() >= kept.price();
    if (worse) {
      if (draft.paths[run] != null) {
        draft.remove(run);
      }
      draft.add(run, before);
      draft.restoreMethods(kept);
    }
    return !worse;
  }

  /** The old plan's paths by new run; null where there is none that is still open and wanted. */
  private Path[] paths() {
    Map<String, Integer> was = new HashMap<>();
    for (int k = 0; k < old.runs(); k++) {
      was.put(old.order.runs().get(k).id(), k);
    }
    Map<List<Object>, Integer> nodes = old.net.graph == net.graph ? Map.of() : nodes();
    Path[] out = new Path[next.runs()];
    for (int k = 0; k < out.length; k++) {
      Order.Wanted w = next.order.runs().get(k);
      Integer o = was.get(w.id());
      boolean same =
          o != null
              && w.equals(old.order.runs().get(o))
              && Objects.equals(old.order.pins().get(w.id()), next.order.pins().get(w.id()));
      Path p = same ? carried(plan.paths()[o], nodes) : null;
      out[k] = p != null && OpenPaths.isOpen(net, p, next.demands[k]) ? p : null;
    }
    return out;
  }

  /** Those of the old plan's nodes that are there, by name and place. */
  private Map<List<Object>, Integer> nodes() {
    Map<List<Object>, Integer> out = new HashMap<>();
    Set<String> asked = new HashSet<>();
    for (Path p : plan.paths()) {
      for (int i = -1; p != null && i < p.arcs().length; i++) {
        int node = i < 0 ? p.start() : old.net.head[p.arcs()[i]];
        asked.add(old.net.graph.nodes().get(node).name());
      }
    }
    for (RouteGraph.Node n : net.graph.nodes()) {
      if (asked.contains(n.name())) {
        out.put(List.of(n.name(), n.at()), n.id());
      }
    }
    return out;
  }

  /** The same walk in the new graph, known by names and places; null where part of it is gone. */
  private Path carried(Path p, Map<List<Object>, Integer> nodes) {
    if (p == null || old.net.graph == net.graph) {
      return p;
    }
    int at = nodes.getOrDefault(key(p.start()), -1);
    int start = at;
    int[] arcs = new int[p.arcs().length];
    for (int i = 0; i < arcs.length && at >= 0; i++) {
      int to = nodes.getOrDefault(key(old.net.head[p.arcs()[i]]), -1);
      arcs[i] = to < 0 ? -1 : arc(p.arcs()[i], at, to);
      at = arcs[i] < 0 ? -1 : to;
    }
    return at < 0 ? null : new Path(start, arcs, p.price());
  }

  private List<Object> key(int oldNode) {
    RouteGraph.Node n = old.net.graph.nodes().get(oldNode);
    return List.of(n.name(), n.at());
  }

  /** The arc between two nodes that is the old one, −1 where there is none. */
  private int arc(int oldArc, int from, int to) {
    RouteGraph.Edge was = old.net.graph.edges().get(oldArc >> 1);
    for (int i = net.first[from]; i < net.first[from + 1]; i++) {
      int arc = net.arcs[i];
      if (net.head[arc] == to && (arc & 1) == (oldArc & 1)) {
        RouteGraph.Edge is = net.graph.edges().get(arc >> 1);
        boolean same =
            is.length() == was.length()
                && is.ways() == was.ways()
                && is.pieces().equals(was.pieces())
                && Arrays.equals(sites(net.graph, is), sites(old.net.graph, was));
        if (same) {
          return arc;
        }
      }
    }
    return -1;
  }

  private static String[] sites(RouteGraph g, RouteGraph.Edge e) {
    return Arrays.stream(e.holes()).mapToObj(h -> g.holes().get(h).site()).toArray(String[]::new);
  }
}
