package holloway.pipeline;

import holloway.catalog.Cable;
import holloway.check.Referee;
import holloway.check.Refusal;
import holloway.check.rules.PlanRules;
import holloway.finding.Finding;
import holloway.hollow.HollowHouse;
import holloway.hollow.Way;
import holloway.limits.LocalRules;
import holloway.plan.Certificate;
import holloway.plan.Drilling;
import holloway.plan.Plan;
import holloway.plan.Unjudged;
import holloway.request.Request;
import holloway.routing.Ends;
import holloway.routing.Routing;
import holloway.scene.Scene;
import holloway.scene.SceneMaker;
import holloway.schedule.HoleCard;
import holloway.schedule.HoleCards;
import holloway.schedule.HoleViews;
import holloway.schedule.Pilot;
import holloway.schedule.Pilots;
import holloway.schedule.Tapes;
import holloway.schedule.Views;
import holloway.schedule.WorkPlanner;
import holloway.schedule.WorkSchedule;
import holloway.solve.Budget;
import holloway.solve.Compare;
import holloway.solve.LivePlan;
import holloway.solve.Order;
import holloway.solve.Routes;
import holloway.solve.Sketch;
import holloway.solve.Solved;
import holloway.solve.Stop;
import holloway.takeoff.BoxPlan;
import holloway.takeoff.BoxPlanner;
import holloway.takeoff.HoleNeeds;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** One house with its hollows and routing graph, planned and judged as often as wanted. */
final class RealSite implements Stages.Site {
  private final HouseBase base;
  private final HollowHouse hollows;
  private final Routing.Routed routed;
  private final Progress progress;
  private final Ends ends;

  /** This part of the time is for the plan with the spots that were chosen. */
  private static final double SETTLING = 0.2;

  RealSite(
      HouseBase base, HollowHouse hollows, Routing.Routed routed, Ends ends, Progress progress) {
    this.base = base;
    this.hollows = hollows;
    this.routed = routed;
    this.progress = progress;
    this.ends = ends;
  }

  @Override
  public List<Finding> findings() {
    return List.of();
  }

  /**
   * Where ends have alternatives the spots are chosen first, over all of them; then the plan is
   * made with those spots alone, so that no hole is bored through the cut-out of a spot that was
   * not taken. The bound is of the first, wider problem, and holds for the second.
   */
  @Override
  public Set<String> ways() {
    return Compare.waysOf(routed.graph()).stream()
        .map(Way::word)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Override
  public Plan plan(Request request, Thoroughness thoroughness) {
    return proven(request, new Search(thoroughness)).plan();
  }

  @Override
  public Stages.Proven proven(Request request, Search search) {
    LivePlan wide = live(request, search, told(request));
    Solved first = wide.solved();
    Map<String, Integer> chosen = Chosen.spots(ends, routed.graph(), first.plan());
    if (chosen.isEmpty()) {
      Plan plan = names(request, routed).of(first.plan(), first);
      return new Stages.Proven(plan, Optional.of(first.bound()));
    }
    Routing.Routed settled = Routing.of(hollows, ends.only(chosen), request, base.memory());
    Solved second = wide.settledPlan(settled.graph(), told(request), search.begin(SETTLING));
    Plan plan = Chosen.withBound(second.plan(), first.plan());
    boolean same = Chosen.sameRuns(second.plan(), first.plan());
    return new Stages.Proven(
        names(request, settled).of(plan, second),
        same ? Optional.of(first.bound()) : Optional.empty());
  }

  @Override
  public List<String> unproven(Plan plan, Certificate certificate, Request request) {
    return Proofs.faults(routed.graph(), plan, certificate, order(request));
  }

  private Told told(Request request) {
    return new Told(progress, request.wishes().profile());
  }

  HouseBase base() {
    return base;
  }

  HollowHouse hollows() {
    return hollows;
  }

  /**
   * A plan that can be asked again, each time as thoroughly. Where spots are chosen first, some of
   * the time is left for the plan with those.
   */
  LivePlan live(Request request, Search search, Told told) {
    boolean spots = ends.spots().values().stream().anyMatch(s -> s.size() > 1);
    Stop stop = search.begin(spots ? 1 - SETTLING : 1);
    return LivePlan.of(routed.graph(), order(request), budget(search.thoroughness()), told, stop);
  }

  /** The plan of this house out of one of the same house with more spots. */
  LivePlan settledLive(LivePlan wide, Search search, Told told) {
    return wide.settled(routed.graph(), told, search.begin(SETTLING));
  }

  /** The plan for another order, or of another house, out of an old one. */
  LivePlan live(LivePlan old, Request request, Search search, Told told) {
    return old.ask(routed.graph(), order(request), told, search.begin(1));
  }

  /** The plan for another order, or of another house, as an old one is mended for it. */
  Sketch sketched(LivePlan old, Request request) {
    return old.sketch(routed.graph(), order(request));
  }

  /** A sketch with its name and marked labels; why a run has no route nobody has asked yet. */
  Plan named(Sketch sketch, Request request) {
    return Unjudged.of(names(request, routed).of(sketch.plan()));
  }

  /**
   * This house with only those spots of ends that a plan chose; itself where none were to choose.
   */
  RealSite settled(Request request, Plan plan) {
    Map<String, Integer> chosen = Chosen.spots(ends, routed.graph(), plan);
    if (chosen.isEmpty()) {
      return this;
    }
    Ends only = ends.only(chosen);
    Routing.Routed on = Routing.of(hollows, only, request, base.memory());
    return new RealSite(base, hollows, on, only, progress);
  }

  /** A plan with its name, and why each run that has no route has none. */
  Plan finished(Solved solved, Request request) {
    return names(request, routed).of(solved.plan(), solved);
  }

  @Override
  public List<Plan> routes(Request request, String runId, int most) {
    return Routes.of(routed.graph(), order(request), runId, most).stream()
        .map(r -> names(request, routed).of(r.plan()))
        .toList();
  }

  @Override
  public HoleNeeds needs(Plan plan, Request request) {
    return new HoleNeeds(
        PlanRules.plated(plan, hollows, request),
        Drilling.of(plan, hollows),
        Pilots.of(plan, hollows).values().stream().anyMatch(Pilot::isMasonry));
  }

  @Override
  public List<Finding> rules(Plan plan, Request request) {
    return PlanRules.find(plan, hollows, request);
  }

  @Override
  public List<String> refusals(Plan plan, Request request) {
    return Referee.check(plan, hollows, request).refusals().stream()
        .map(Refusal::toString)
        .toList();
  }

  @Override
  public Map<String, HoleCard> cards(Plan plan, UnitSystem units) {
    return HoleCards.of(plan, hollows, units, roomsOfEnds());
  }

  @Override
  public Views views(Plan plan) {
    return HoleViews.of(plan, hollows, roomsOfEnds());
  }

  @Override
  public Optional<PlannedHouse> drawn(Answers.Planned p) {
    return Optional.of(
        new PlannedHouse(hollows, p.request(), p.plan(), p.cards(), tapes(p.plan()), p.system()));
  }

  /** Where the tape lines of the cards lie, by hole id. */
  Map<String, Tapes> tapes(Plan plan) {
    return HoleCards.tapes(plan, hollows, roomsOfEnds());
  }

  private Map<String, String> roomsOfEnds() {
    // A plan is made with the chosen spots alone; only an end that stays in one room is sure of it.
    Map<String, String> rooms = new TreeMap<>();
    ends.spots()
        .forEach(
            (name, spots) -> {
              Set<String> own = new TreeSet<>();
              spots.forEach(s -> own.add(s.room()));
              if (own.size() == 1) {
                rooms.put(name, spots.get(0).room());
              }
            });
    return rooms;
  }

  @Override
  public Scene scene(Plan plan) {
    return SceneMaker.of(hollows, plan);
  }

  @Override
  public WorkSchedule work(Plan plan, Request request) {
    Map<String, String> boxes = new TreeMap<>();
    LocalRules own = hollows.framed().placed().house().ownRules();
    for (BoxPlan.Order order : BoxPlanner.of(plan, request.prices(), own).orders()) {
      for (BoxPlan.Reel reel : order.reels()) {
        reel.cuts().forEach(c -> boxes.put(c.run(), reel.name()));
      }
    }
    return WorkPlanner.of(plan, hollows, request, boxes);
  }

  static Order order(Request request) {
    Map<String, String> pins = new TreeMap<>();
    request.runs().forEach(r -> r.through().ifPresent(t -> pins.put(r.id(), t)));
    return new Order(
        request.runs().stream()
            .map(r -> new Order.Wanted(r.id(), r.from(), r.to(), Cable.get(r.cable())))
            .toList(),
        request.wishes().profile(),
        new TreeSet<>(request.wishes().bans()),
        pins);
  }

  private PlanNames names(Request request, Routing.Routed on) {
    return new PlanNames(hollows.framed().placed(), request, on);
  }

  static Budget budget(Thoroughness thoroughness) {
    return switch (thoroughness) {
      case QUICK -> Budget.QUICK;
      case USUAL -> Budget.USUAL;
      case THOROUGH -> Budget.THOROUGH;
    };
  }
}
