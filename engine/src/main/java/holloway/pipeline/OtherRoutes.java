package holloway.pipeline;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Really different routes of one run: the cheapest, then the cheapest that each lacks something of
 * those before it. After a route is taken up, each of its crossings and blind hollows is forbidden
 * in turn (as Lawler 1972 splits the search for the next best answers), and whatever then turns out
 * cheapest is looked at next.
 */
final class OtherRoutes {
  /** Two routes are the same to a person when they share more than this part of their length. */
  private static final double ALIKE = 0.8;

  private static final int MOST_PLANS = 120;

  private final Function<Set<String>, Plan> planner;
  private final Set<Set<String>> tried = new HashSet<>();
  private final PriorityQueue<Candidate> waiting =
      new PriorityQueue<>(
          Comparator.comparingLong((Candidate c) -> c.plan.totals().objective())
              .thenComparing(c -> c.bans.toString()));
  private final List<Plan> taken = new ArrayList<>();

  private record Candidate(Plan plan, Set<String> bans) {}

  /**
   * @param planner plans the run without the given ids
   */
  OtherRoutes(Function<Set<String>, Plan> planner) {
    this.planner = planner;
  }

  /** At most so many, cheapest first; empty when there is no route. */
  List<Plan> list(int most) {
    offer(new TreeSet<>());
    while (!waiting.isEmpty() && taken.size() < most) {
      Candidate next = waiting.poll();
      if (taken.stream().noneMatch(p -> alike(p, next.plan))) {
        taken.add(next.plan);
      }
      if (taken.size() < most) {
        split(next);
      }
    }
    return List.copyOf(taken);
  }

  private void split(Candidate c) {
    for (String id : places(c.plan)) {
      Set<String> bans = new TreeSet<>(c.bans);
      bans.add(id);
      offer(bans);
    }
  }

  private void offer(Set<String> bans) {
    if (tried.size() < MOST_PLANS && tried.add(bans)) {
      Plan plan = planner.apply(bans);
      if (!plan.runs().isEmpty()) {
        waiting.add(new Candidate(plan, bans));
      }
    }
  }

  /** What can be forbidden: crossings, and hollows that are fished blind. */
  private static Set<String> places(Plan plan) {
    Set<String> out = new LinkedHashSet<>();
    plan.runs().get(0).steps().stream()
        .filter(s -> s.kind().equals("crossing") || s.feed().equals(java.util.Optional.of("blind")))
        .forEach(s -> out.add(s.id()));
    return out;
  }

  /** The length in hollows that both routes use, against the longer of the two. */
  private static boolean alike(Plan a, Plan b) {
    double longer = Math.max(a.totals().routeM(), b.totals().routeM());
    double shared = 0;
    Set<String> seen = new TreeSet<>();
    for (Plan.PlanStep s : a.runs().get(0).steps()) {
      if (seen.add(s.id())) {
        shared += Math.min(lengthIn(a, s.id()), lengthIn(b, s.id()));
      }
    }
    return shared > ALIKE * longer;
  }

  private static double lengthIn(Plan plan, String id) {
    return plan.runs().get(0).steps().stream()
        .filter(s -> s.id().equals(id))
        .mapToDouble(Plan.PlanStep::m)
        .sum();
  }
}
