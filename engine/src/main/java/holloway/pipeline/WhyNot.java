package holloway.pipeline;

import holloway.geometry.Point3;
import holloway.hollow.Refused;
import holloway.report.PlaceWords;
import holloway.request.Request;
import holloway.routing.RouteGraph;
import holloway.routing.Routing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says why a run has no route: how near it got, and which limits stopped it there. */
final class WhyNot {
  private static final int MOST = 6;

  /** Places it got to that are named. */
  private static final int FARTHEST = 3;

  /** What lies at an id of the plan, or between two: an id has a slash in it. */
  private static final Pattern BY_ID = Pattern.compile("(.*?) (?:at|between|over) \\S[^/]*/.*");

  private static final long NEAR = 2_500_000_000L;

  private WhyNot() {}

  static List<String> of(
      String runId,
      Request request,
      PlaceWords places,
      Routing.Routed routed,
      List<String> reached) {
    var run = request.runs().stream().filter(r -> r.id().equals(runId)).findFirst().orElseThrow();
    List<String> out = new ArrayList<>();
    List<Point3> around = new ArrayList<>();
    Map<String, RouteGraph.Node> byName = new TreeMap<>();
    routed.graph().nodes().forEach(n -> byName.put(n.name(), n));
    for (String end : List.of(run.from(), run.to())) {
      routed
          .graph()
          .terminals()
          .getOrDefault(end, List.of())
          .forEach(n -> around.add(routed.graph().nodes().get(n).at()));
    }
    if (!reached.isEmpty()) {
      reached.stream()
          .map(n -> "got as far as " + spot(n, request, byName, places))
          .distinct()
          .limit(FARTHEST)
          .forEach(out::add);
      reached.stream().filter(byName::containsKey).forEach(n -> around.add(byName.get(n).at()));
    }
    routed.refused().stream()
        .filter(WhyNot::isWholeSpace)
        .map(Refused::line)
        .distinct()
        .limit(MOST)
        .forEach(out::add);
    routed.refused().stream()
        .filter(r -> !isWholeSpace(r) && distance(r, around) <= NEAR)
        .sorted(
            Comparator.comparingLong((Refused r) -> distance(r, around))
                .thenComparing(Refused::what))
        .map(r -> line(r, places))
        .distinct()
        .limit(MOST)
        .forEach(out::add);
    if (out.isEmpty()) {
      out.add("every way is banned, or no hollow leads from " + run.from() + " to " + run.to());
    }
    return out;
  }

  /** A name of the house file as it is, anything else by where it is. */
  private static String spot(
      String node, Request request, Map<String, RouteGraph.Node> byName, PlaceWords places) {
    boolean named =
        node.equals("cabinet") || request.outlets().stream().anyMatch(o -> o.name().equals(node));
    return named || !byName.containsKey(node) ? node : places.of(byName.get(node).at());
  }

  /** Where it is instead of the ids between which it lies. */
  private static String line(Refused r, PlaceWords places) {
    Matcher m = BY_ID.matcher(r.what());
    return m.matches()
        ? new Refused(m.group(1) + ", " + places.of(r.at()), r.at(), r.why(), r.source()).line()
        : r.line();
  }

  /**
   * A whole attic, crawlspace, chase or wall, or all of a kind, that cannot be used concerns every
   * run.
   */
  private static boolean isWholeSpace(Refused r) {
    return r.what().startsWith("every ")
        || r.what().startsWith("attic ")
        || r.what().startsWith("crawlspace ")
        || r.what().startsWith("chase ")
        || r.what().startsWith("the wall ");
  }

  private static long distance(Refused r, List<Point3> around) {
    return around.stream().mapToLong(p -> p.distanceTo(r.at())).min().orElse(Long.MAX_VALUE);
  }
}
