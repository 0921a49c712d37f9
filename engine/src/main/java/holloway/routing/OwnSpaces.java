package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import holloway.hollow.Refused;
import holloway.limits.LocalRules;
import holloway.limits.OwnRule;
import holloway.request.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which edges a kind of cable may not use by a rule file of one's own: those with a leg in a space
 * that is shut to what is printed on it.
 */
final class OwnSpaces {
  private final LocalRules rules;
  private final Request request;

  /** What is shut to which cable, for "why not". */
  final List<Refused> refused = new ArrayList<>();

  OwnSpaces(LocalRules rules, Request request) {
    this.rules = rules;
    this.request = request;
  }

  /** The graph as the rules leave it. */
  RouteGraph over(RouteGraph g) {
    Map<String, Set<Integer>> shut = new TreeMap<>();
    for (String cable : new TreeSet<>(request.runs().stream().map(r -> r.cable()).toList())) {
      Set<HollowKind> no = shutTo(cable);
      Set<Integer> edges = new TreeSet<>();
      for (RouteGraph.Edge e : no.isEmpty() ? List.<RouteGraph.Edge>of() : g.edges()) {
        boolean in =
            e.pieces().stream()
                .anyMatch(p -> p instanceof RouteGraph.Piece.Leg leg && no.contains(leg.kind()));
        if (in) {
          edges.add(e.id());
        }
      }
      if (!edges.isEmpty()) {
        shut.put(cable, edges);
      }
    }
    return shut.isEmpty()
        ? g
        : new RouteGraph(
            g.nodes(),
            g.edges(),
            g.holes(),
            g.works(),
            g.terminals(),
            new Fares(g.fares().metre(), shut));
  }

  private Set<HollowKind> shutTo(String cable) {
    Set<HollowKind> out = new TreeSet<>();
    for (OwnRule.Space space : OwnRule.Space.values()) {
      Optional<OwnRule.Room> rule = rules.againstSpace(space, request.shop().job().rank(cable));
      if (rule.isPresent()) {
        HollowKind kind = HollowKind.valueOf(space.name());
        out.add(kind);
        String words = rule.get().unless().map(l -> " that is not listed " + l).orElse("");
        refused.add(
            new Refused(
                "every " + kind.word(),
                new Point3(0, 0, 0),
                "no " + cable + words.toLowerCase(java.util.Locale.ROOT) + " may lie there",
                rule.get().words().source()));
      }
    }
    return out;
  }
}
