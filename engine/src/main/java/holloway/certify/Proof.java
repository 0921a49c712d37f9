package holloway.certify;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.plan.Certificate;
import holloway.routing.RouteGraph;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What all parts of one certificate have in common, found from the graph and the question. */
final class Proof {
  final RouteGraph graph;
  final Scale scale;
  final Forbidden forbidden;
  final Meetings meetings;
  final List<Commodity> commodities;
  final boolean directed;

  /** Works whose shares are given out once for each direction; none unless directed. */
  final boolean[] alone;

  Proof(RouteGraph graph, Question question, Certificate c) {
    this.graph = graph;
    if (!c.profile().equals(question.profile())) {
      throw new Unproven(
          "it is for the profile %s, the plan for %s".formatted(c.profile(), question.profile()));
    }
    scale = new Scale(graph, c.profile());
    forbidden = new Forbidden(graph, question.bans());
    meetings = new Meetings(graph, forbidden.edges);
    commodities = new Commodities(graph, question).of(c);
    directed = c.directed();
    alone = directed ? meetings.alone : new boolean[graph.works().size()];
    if (directed) {
      requireCablesAlike();
      requireHolesOnOneEdge();
    }
  }

  /** Else two routes that meet need not both be better off by the same one of their two ways. */
  private void requireCablesAlike() {
    String first = commodities.get(0).cable().kind();
    for (Commodity c : commodities) {
      if (!graph.fares().alike(first, c.cable().kind())) {
        throw new Unproven("its shares have directions, but metres of cables cost unlike");
      }
    }
  }

  /** Else a tree of routes could pass a hole twice, and its shares would be charged twice. */
  private void requireHolesOnOneEdge() {
    for (RouteGraph.Hole h : graph.holes()) {
      boolean costs = h.methods().stream().anyMatch(m -> m.works().length > 0);
      if (costs && meetings.edgesThrough[h.id()] > 1) {
        throw new Unproven("its shares have directions, but several edges pass " + h.site());
      }
    }
  }

  /**
   * Holes that one cable of a group passes. With directions limits are left out, and then what is
   * open to one group is open to all: the argument exchanges their paths.
   */
  boolean[] holeFits(int group) {
    boolean[] out = new boolean[graph.holes().size()];
    for (RouteGraph.Hole h : graph.holes()) {
      out[h.id()] =
          directed
              ? commodities.stream().anyMatch(c -> fits(h, c.cable()))
              : fits(h, commodities.get(group).cable());
    }
    return out;
  }

  private static boolean fits(RouteGraph.Hole h, Cable cable) {
    return h.steps().isEmpty()
        || h.steps().stream().anyMatch(s -> Fit.fits(List.of(cable), s.diameterMm()));
  }

  /** Whether every plan opens the work: some run ends at it, whichever alternative it takes. */
  boolean paidByAll(int work) {
    return commodities.stream().anyMatch(c -> all(c.from(), work) || all(c.to(), work));
  }

  /** Every plan's price is a whole multiple of this. */
  long grain() {
    return scale.grain(commodities.stream().map(c -> c.cable().kind()).collect(Collectors.toSet()));
  }

  private boolean all(List<Integer> nodes, int work) {
    return nodes.stream()
        .allMatch(v -> Arrays.stream(graph.nodes().get(v).works()).anyMatch(w -> w == work));
  }
}
