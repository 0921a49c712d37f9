package holloway.support;

import holloway.catalog.Cable;
import holloway.routing.RouteGraph;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;

/**
 * The proven best price of one cable on a whole house's graph, least work only: labels of a node
 * and the set of works opened on the way, so that each work is paid once. A label is dropped only
 * if another at its node would cost no more even after opening all that this one has open. Holes
 * that a best route would pass twice are forbidden one by one until it passes none twice.
 */
public final class ExactSingleRun {
  /** The price of a run that has no route. */
  public static final long NO_ROUTE = SingleRunNet.NONE;

  /**
   * A route's price in units and its edges in order; {@code labels} tells how much was looked at.
   */
  public record Best(long price, List<RouteGraph.Edge> edges, int labels) {
    public boolean routed() {
      return price < NO_ROUTE;
    }
  }

  private record Label(
      int node,
      long price,
      long least,
      long ahead,
      int[] open,
      RouteGraph.Edge by,
      Label before,
      int number) {}

  private final SingleRunNet net;
  private final RemainingPrice remaining;
  private final Set<Integer> targets;
  private final Set<Integer> watched = new TreeSet<>();
  private final PriorityQueue<Label> queue =
      new PriorityQueue<>(Comparator.comparingLong(Label::least).thenComparingInt(Label::number));
  private final Map<Integer, List<Label>> kept = new HashMap<>();
  private int made;

  private ExactSingleRun(SingleRunNet net, Set<Integer> targets) {
    this.net = net;
    this.targets = targets;
    remaining = new RemainingPrice(net, targets);
  }

  /** The best route between two ends whatever their alternatives, not using what is banned. */
  public static Best of(RouteGraph g, String from, String to, Cable cable, Set<String> bans) {
    ExactSingleRun run =
        new ExactSingleRun(new SingleRunNet(g, cable, bans), new TreeSet<>(g.terminals().get(to)));
    Set<Integer> starts = new TreeSet<>(g.terminals().get(from));
    Best best = run.search(starts);
    for (Set<Integer> twice = twice(best); !twice.isEmpty(); twice = twice(best)) {
      run.watched.addAll(twice);
      best = run.search(starts);
    }
    return best;
  }

  private static Set<Integer> twice(Best best) {
    Set<Integer> once = new HashSet<>();
    Set<Integer> out = new TreeSet<>();
    for (RouteGraph.Edge e : best.edges()) {
      for (int h : e.holes()) {
        if (!once.add(h)) {
          out.add(h);
        }
      }
    }
    return out;
  }

  private Best search(Set<Integer> starts) {
    queue.clear();
    kept.clear();
    for (int s : starts) {
      enter(s, 0, 0, new int[0], new int[0], null, null);
    }
    while (!queue.isEmpty()) {
      Label l = queue.remove();
      if (targets.contains(l.node())) {
        return new Best(l.price(), edges(l), made);
      }
      if (kept.get(l.node()).stream().anyMatch(o -> o == l)) {
        for (RouteGraph.Edge e : net.at.get(l.node())) {
          int next = e.other(l.node());
          if (!visited(l, next) && !repeats(l, e)) {
            for (SingleRunNet.Option o : net.options(e)) {
              enter(next, l.price() + o.own(), l.ahead(), l.open(), o.shared(), e, l);
            }
          }
        }
      }
    }
    return new Best(NO_ROUTE, List.of(), made);
  }

  private static boolean visited(Label l, int node) {
    for (Label x = l; x != null; x = x.before()) {
      if (x.node() == node) {
        return true;
      }
    }
    return false;
  }

  private boolean repeats(Label l, RouteGraph.Edge e) {
    for (int h : e.holes()) {
      if (watched.contains(h) && passed(l).contains(h)) {
        return true;
      }
    }
    return false;
  }

  private Set<Integer> passed(Label l) {
    Set<Integer> out = new TreeSet<>();
    for (Label x = l; x != null && x.by() != null && !watched.isEmpty(); x = x.before()) {
      for (int h : x.by().holes()) {
        if (watched.contains(h)) {
          out.add(h);
        }
      }
    }
    return out;
  }

  /**
   * @param ahead price of works that are open already though their node has not been entered: the
   *     remaining price counts them, and must not
   */
  private void enter(
      int node, long price, long ahead, int[] open, int[] more, RouteGraph.Edge e, Label before) {
    long sum = price + WorkSets.missing(open, more, net.price);
    for (int w : more) {
      if (remaining.counts(w) && !WorkSets.has(open, w)) {
        ahead += net.price[w];
      }
    }
    int[] now = WorkSets.union(open, more);
    int[] here = net.worksOf(node);
    sum += net.ownOf(node) + WorkSets.missing(now, here, net.price);
    for (int w : here) {
      if (remaining.counts(w) && WorkSets.has(now, w)) {
        ahead -= net.price[w];
      }
    }
    now = WorkSets.union(now, here);
    long rest = remaining.from(node, now);
    if (sum < NO_ROUTE && rest < NO_ROUTE) {
      long least = sum + Math.max(0, rest - ahead);
      keep(new Label(node, sum, least, ahead, now, e, before, made++));
    }
  }

  private void keep(Label l) {
    List<Label> there = kept.computeIfAbsent(l.node(), k -> new ArrayList<>());
    if (there.stream().noneMatch(o -> beats(o, l))) {
      there.removeIf(o -> beats(l, o));
      there.add(l);
      queue.add(l);
    }
  }

  private boolean beats(Label a, Label b) {
    return a.price() <= b.price()
        && a.price() + WorkSets.missing(a.open(), b.open(), net.price) <= b.price()
        && (watched.isEmpty() || passed(b).containsAll(passed(a)));
  }

  private static List<RouteGraph.Edge> edges(Label last) {
    Deque<RouteGraph.Edge> out = new ArrayDeque<>();
    for (Label l = last; l.by() != null; l = l.before()) {
      out.addFirst(l.by());
    }
    return Collections.unmodifiableList(new ArrayList<>(out));
  }
}
