package holloway.certify;

import holloway.plan.Certificate;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The groups of a certificate: each run of the plan in exactly one, like with like. */
final class Commodities {
  private final RouteGraph graph;
  private final Question question;
  private final boolean oneWay;

  Commodities(RouteGraph graph, Question question) {
    this.graph = graph;
    this.question = question;
    oneWay = graph.edges().stream().anyMatch(RouteGraph.Edge::oneWay);
  }

  List<Commodity> of(Certificate c) {
    Map<String, Question.Run> left = new TreeMap<>();
    question.runs().forEach(r -> left.put(r.id(), r));
    List<List<Question.Run>> groups = new ArrayList<>();
    for (List<String> ids : c.runs()) {
      List<Question.Run> group = new ArrayList<>();
      for (String id : ids) {
        Question.Run run = left.remove(id);
        if (run == null) {
          throw new Unproven("it speaks of a run '" + id + "' that the plan has not, or twice");
        }
        group.add(run);
      }
      groups.add(group);
    }
    if (!left.isEmpty()) {
      throw new Unproven("it leaves out the runs " + String.join(", ", left.keySet()));
    }
    Optional<String> root =
        c.directed() && !groups.isEmpty() ? Optional.of(root()) : Optional.empty();
    return groups.stream().map(g -> commodity(g, root)).toList();
  }

  private Commodity commodity(List<Question.Run> group, Optional<String> root) {
    if (group.isEmpty()) {
      throw new Unproven("one of its groups has no run");
    }
    Question.Run first = group.get(0);
    String pin = question.pins().get(first.id());
    for (Question.Run r : group) {
      boolean turned = !oneWay && r.from().equals(first.to()) && r.to().equals(first.from());
      boolean same = turned || r.from().equals(first.from()) && r.to().equals(first.to());
      boolean pinned = String.valueOf(pin).equals(String.valueOf(question.pins().get(r.id())));
      if (!same || !pinned || !r.cable().equals(first.cable())) {
        throw new Unproven("it groups " + first.id() + " with " + r.id() + ", which is not alike");
      }
    }
    boolean turn = root.isPresent() && !root.get().equals(first.from());
    List<Integer> from = nodes(turn ? first.to() : first.from());
    List<Integer> to = nodes(turn ? first.from() : first.to());
    boolean[] pinned = pin == null ? null : Forbidden.touching(graph, pin);
    return new Commodity(group.size(), from, to, first.cable(), pinned);
  }

  private List<Integer> nodes(String end) {
    List<Integer> out = graph.terminals().get(end);
    if (out == null || out.isEmpty()) {
      throw new Unproven("the house has no end '" + end + "'");
    }
    return out;
  }

  /** The end that all runs share; shares for each direction stand on it. */
  private String root() {
    Set<String> shared = null;
    for (Question.Run r : question.runs()) {
      Set<String> ends = new TreeSet<>(oneWay ? Set.of(r.from()) : Set.of(r.from(), r.to()));
      if (shared == null) {
        shared = ends;
      } else {
        shared.retainAll(ends);
      }
      if (question.pins().containsKey(r.id())) {
        throw new Unproven("its shares have directions, but " + r.id() + " is pinned");
      }
    }
    if (shared == null || shared.isEmpty()) {
      throw new Unproven("its shares have directions, but the runs do not start at one end");
    }
    return shared.iterator().next();
  }
}
