package holloway.pipeline;

import holloway.catalog.Cable;
import holloway.check.Referee;
import holloway.check.rules.PlanRules;
import holloway.finding.Finding;
import holloway.hollow.HollowHouse;
import holloway.house.RulePlace;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.routing.Ends;
import holloway.routing.Routing;
import holloway.schedule.HoleCard;
import holloway.schedule.HoleCards;
import holloway.solve.Budget;
import holloway.solve.JointPlanner;
import holloway.solve.Order;
import holloway.solve.Progress;
import holloway.solve.Solved;
import holloway.units.UnitSystem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** One house from its hollows on: graph, joint plan, referee and rules. */
final class RealSite implements Stages.Site {
  private final HollowHouse house;
  private final Ends ends;

  RealSite(HollowHouse house, Ends ends) {
    this.house = house;
    this.ends = ends;
  }

  @Override
  public List<Finding> findings() {
    return List.of();
  }

  @Override
  public Plan plan(Request request, Thoroughness thoroughness) {
    Routing.Routed routed = Routing.of(house, ends, request);
    Solved solved =
        JointPlanner.solve(routed.graph(), order(request), budget(thoroughness), Progress.SILENT);
    List<Plan.Unrouted> unrouted = new ArrayList<>();
    for (Plan.Unrouted u : solved.plan().unrouted()) {
      List<String> reached = solved.reached().getOrDefault(u.id(), List.of());
      unrouted.add(new Plan.Unrouted(u.id(), WhyNot.of(u.id(), request, ends, routed, reached)));
    }
    return named(solved.plan()).withUnrouted(unrouted);
  }

  private Plan named(Plan p) {
    String name = house.framed().placed().house().name();
    return new Plan(
        p.format(),
        name,
        p.profile(),
        p.perMinute(),
        p.inputs(),
        p.totals(),
        p.runs(),
        p.holes(),
        p.unrouted(),
        p.works(),
        p.findings(),
        p.materials(),
        p.survey());
  }

  static Order order(Request request) {
    List<Order.Wanted> wanted = new ArrayList<>();
    Map<String, String> pins = new TreeMap<>();
    request
        .runs()
        .forEach(
            r -> {
              wanted.add(new Order.Wanted(r.id(), r.from(), r.to(), Cable.get(r.cable())));
              r.through().ifPresent(t -> pins.put(r.id(), t));
            });
    return new Order(
        wanted, request.wishes().profile(), new HashSet<>(request.wishes().bans()), pins);
  }

  private static Budget budget(Thoroughness t) {
    return switch (t) {
      case QUICK -> Budget.QUICK;
      case USUAL -> Budget.USUAL;
      case THOROUGH -> Budget.THOROUGH;
    };
  }

  @Override
  public List<Plan> routes(Request request, String runId, int most) {
    return List.of();
  }

  @Override
  public Stages.Verdict judge(Plan plan, Request request) {
    List<String> refusals =
        Referee.check(plan, house, request).refusals().stream().map(Object::toString).toList();
    return new Stages.Verdict(refusals, PlanRules.find(plan, house, request));
  }

  @Override
  public Map<String, HoleCard> cards(Plan plan) {
    boolean inches = house.framed().placed().house().place() == RulePlace.US;
    return HoleCards.of(plan, house, inches ? UnitSystem.FT_IN : UnitSystem.METRIC);
  }
}
