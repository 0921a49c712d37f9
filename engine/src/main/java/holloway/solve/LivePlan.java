package holloway.solve;

import holloway.plan.Certificate;
import holloway.routing.RouteGraph;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The second doorway, for whoever changes one thing and looks again: a plan together with what
 * found and proved it, from which the plan of a changed question is had much faster than from
 * nothing. A value: a change gives another live plan and leaves this one as it is.
 *
 * <p>What is kept: the paths of the plan, how works are shared out among the runs in each part of
 * the proof, and the paths that were short once. They are found again in another graph by names and
 * places, so the graph may be built anew (an outlet moved, a price changed), or be the very same
 * object (a hole or hollow forbidden, a run added or dropped), which is faster. A question that was
 * asked before, as when a change is undone, gets the very answer it got then.
 *
 * <p>The bound is as exact as one from nothing and its certificate stands by itself. The plan is
 * within 1 % of any plan whatever, and so of the one found from nothing, by that bound; where so
 * much is not proven within the budget, everything is searched from nothing as well and the better
 * plan is taken. Prices are objective units, as in {@link JointPlanner}; budgets are counted in
 * steps, so the same changes in the same order give the same answers, but where a {@link Stop}'s
 * time cut one short: that one says so.
 */
public final class LivePlan {
  /** Proven to be so near the least it is good enough at once. */
  private static final double NEAR = 0.005;

  /** What must be proven; 0.9 % of the dearer plan are less than 1 % of the cheaper. */
  private static final double MUST = 0.009;

  /** Steps of the first look at the bound; each further one takes twice the last. */
  private static final int FIRST = 8;

  /** This part of the budget mends the old plan. */
  private static final int MEND = 10;

  /** The last look takes at most this part of the bound's budget. */
  private static final int TRY = 4;

  private static final int MOST_KEPT = 20;

  private final Task task;
  private final Budget budget;
  private final Solution best;
  private final Bound.Ground ground;
  private final List<BoundPart> parts;
  private final Solved solved;
  private final boolean fromNothing;

  /** Earlier ones, the latest first. */
  private final List<LivePlan> earlier;

  private LivePlan(
      Task task,
      Budget budget,
      Solution best,
      Bound.Ground ground,
      List<BoundPart> parts,
      Solved solved,
      boolean fromNothing,
      List<LivePlan> earlier) {
    this.task = task;
    this.budget = budget;
    this.best = best;
    this.ground = ground;
    this.parts = parts;
    this.solved = solved;
    this.fromNothing = fromNothing;
    this.earlier = earlier;
  }

  /** As with a stop that ends nothing. */
  public static LivePlan of(RouteGraph graph, Order order, Budget budget, Progress progress) {
    return of(graph, order, budget, progress, Stop.NEVER);
  }

  /** The plan from nothing: the same as {@link JointPlanner#solve} gives with this budget. */
  public static LivePlan of(
      RouteGraph graph, Order order, Budget budget, Progress progress, Stop stop) {
    return of(new Task(graph, order), budget, progress, new Watch(stop));
  }

  private static LivePlan of(Task task, Budget budget, Progress progress, Watch watch) {
    FromNothing search = new FromNothing(task, budget, progress, watch);
    FromNothing.Found f = search.found();
    Solved solved = search.answer(f);
    return new LivePlan(task, budget, f.best(), f.on(), f.parts(), solved, true, List.of());
  }

  public Solved solved() {
    return solved;
  }

  public Order order() {
    return task.order;
  }

  public RouteGraph graph() {
    return task.net.graph;
  }

  /** Whether everything was searched from nothing, at first or because the old state led astray. */
  public boolean isFromNothing() {
    return fromNothing;
  }

  /** With one more site, hollow or way that no run may use. */
  public LivePlan forbid(String word, Progress progress) {
    return ask(task.net.graph, task.order.withBans(List.of(word)), progress);
  }

  /** With one ban less. */
  public LivePlan allow(String word, Progress progress) {
    Set<String> bans = new TreeSet<>(task.order.bans());
    bans.remove(word);
    return ask(
        task.net.graph,
        new Order(task.order.runs(), task.order.profile(), bans, task.order.pins()),
        progress);
  }

  /** With one more run between ends of the graph. */
  public LivePlan add(Order.Wanted run, Progress progress) {
    Collection<Order.Wanted> runs =
        Stream.concat(task.order.runs().stream(), Stream.of(run)).toList();
    return ask(task.net.graph, task.order.withRuns(List.copyOf(runs)), progress);
  }

  /** Without a run. */
  public LivePlan drop(String run, Progress progress) {
    List<Order.Wanted> runs = task.order.runs().stream().filter(r -> !r.id().equals(run)).toList();
    return ask(task.net.graph, task.order.withRuns(runs), progress);
  }

  /** For the same order on a graph built anew: an outlet moved, a price changed. */
  public LivePlan on(RouteGraph graph, Progress progress) {
    return ask(graph, task.order, progress);
  }

  /** As with a stop that ends nothing. */
  public LivePlan ask(RouteGraph graph, Order order, Progress progress) {
    return ask(graph, order, progress, Stop.NEVER);
  }

  /**
   * For any other question, the nearer to this one the faster. Where the stop asks for less than 1
   * % so much is enough; where its time is up, the best plan and bound by then are the answer.
   */
  public LivePlan ask(RouteGraph graph, Order order, Progress progress, Stop stop) {
    Optional<LivePlan> known =
        Stream.concat(Stream.of(this), earlier.stream())
            .filter(l -> l.task.net.graph == graph && l.task.order.equals(order))
            .findFirst();
    return known.orElseGet(() -> new Change(graph, order, progress, stop).answer());
  }

  /**
   * The plan of this question mended for another in a few milliseconds: only the runs that the
   * change touches are routed anew. No step of a proof is made; {@link #ask} is the whole answer,
   * and it is the same whether this was asked before it or not.
   */
  public Sketch sketch(RouteGraph graph, Order order) {
    return new Mending(task, best, new Task(graph, order)).sketch();
  }

  /**
   * The plan for the same order on a graph where only those spots of ends are left that this plan
   * chose. Its bound is this plan's, which holds for it as it stands; where a run finds no way any
   * more everything is searched from nothing.
   */
  public Solved settledPlan(RouteGraph graph, Progress progress, Stop stop) {
    Watch watch = new Watch(stop);
    Settling s = new Settling(task, best, graph, budget, progress, watch);
    Solution plan = s.plan();
    return plan == null
        ? of(s.next, budget, progress, watch).solved
        : JointPlanner.answer(s.next, s.reach, plan, solved.bound(), watch.cut());
  }

  /** As {@link #settledPlan}, with the very same plan, to be asked more. */
  public LivePlan settled(RouteGraph graph, Progress progress, Stop stop) {
    Watch watch = new Watch(stop);
    Settling s = new Settling(task, best, graph, budget, progress, watch);
    Solution plan = s.plan();
    if (plan == null) {
      return of(s.next, budget, progress, watch);
    }
    Bound.Ground on = new Bound(s.next, budget, progress).ground(routed(plan));
    List<BoundPart> carried = new CarriedParts(task, ground, s.next, on, s.carry).of(parts);
    Bound proof = new Bound(s.next, new Budget(1, 0, 1, 1), progress, watch);
    Certificate bound = proof.raise(on, carried, plan.price(), plan.price());
    Solved answer = JointPlanner.answer(s.next, s.reach, plan, bound, watch.cut());
    return new LivePlan(s.next, budget, plan, on, proof.proven(), answer, true, List.of());
  }

  private static int[] routed(Solution s) {
    return IntStream.range(0, s.paths().length).filter(k -> s.paths()[k] != null).toArray();
  }

  /** One change on its way to an answer. */
  private final class Change {
    private final Task next;
    private final Progress progress;
    private final Carry carry;
    private final Reach reach;
    private final Watch watch;

    Change(RouteGraph graph, Order order, Progress progress, Stop stop) {
      watch = new Watch(stop);
      next = new Task(graph, order);
      this.progress = progress;
      carry = new Carry(task.net.graph, graph);
      reach = new Reach(next);
    }

    LivePlan answer() {
      int orders = Math.min(2, budget.orders());
      Budget little =
          new Budget(orders, budget.ruins() / MEND, budget.boundSteps(), budget.looks());
      PlanSearch search = new PlanSearch(next, little, progress, watch);
      watch.until(FromNothing.FOR_THE_PLAN);
      Solution plan = search.mend(reach.routable(), Settling.paths(task, best, next, carry));
      int[] runs = routed(plan);
      if (runs.length < reach.routable().length) {
        return fromNothing(plan);
      }
      watch.until(FromNothing.FOR_THE_PROOF);
      Bound.Ground on = new Bound(next, budget, progress).ground(runs);
      List<BoundPart> carried = new CarriedParts(task, ground, next, on, carry).of(parts);
      int most = Math.max(FIRST, budget.boundSteps() / TRY);
      long last = Long.MIN_VALUE;
      boolean improved = false;
      for (int steps = FIRST; steps <= most; steps *= 2) {
        Bound proof = new Bound(next, steps(steps), progress, watch);
        long aim = plan.price() - (long) (Math.max(NEAR, watch.gap()) * plan.price());
        Certificate bound = proof.raise(on, carried, aim, plan.price());
        carried = proof.proven();
        boolean risen = bound.bound() > last;
        last = bound.bound();
        boolean must = gap(plan, last) <= MUST && (!risen || 2 * steps > most);
        if (last >= aim || must || watch.over()) {
          return live(plan, proof, bound, false);
        }
        Solution before = plan;
        plan = improved ? plan : search.improved(runs, plan);
        improved = true;
        plan = proof.guide() == null ? plan : search.guided(runs, plan, proof.guide());
        if (!risen && !plan.betterThan(before)) {
          break;
        }
      }
      return fromNothing(plan);
    }

    /** The old state led nowhere: its plan is kept if it is the better one all the same. */
    private LivePlan fromNothing(Solution plan) {
      LivePlan anew = of(next, budget, progress, watch);
      boolean better = plan.routed() == anew.best.routed() && plan.betterThan(anew.best);
      Solution kept = better ? plan : anew.best;
      return live(kept, anew.ground, anew.parts, anew.solved.bound(), true);
    }

    private LivePlan live(Solution plan, Bound proof, Certificate bound, boolean anew) {
      return live(plan, proof.ground(), proof.proven(), bound, anew);
    }

    private double gap(Solution plan, long bound) {
      return (double) (plan.price() - bound) / plan.price();
    }

    private Budget steps(int steps) {
      return new Budget(budget.orders(), budget.ruins(), steps, budget.looks());
    }

    private LivePlan live(
        Solution plan, Bound.Ground on, List<BoundPart> proven, Certificate bound, boolean anew) {
      Solved answer = JointPlanner.answer(next, reach, plan, bound, watch.cut());
      List<LivePlan> kept =
          Stream.concat(Stream.of(LivePlan.this), earlier.stream()).limit(MOST_KEPT).toList();
      return new LivePlan(next, budget, plan, on, proven, answer, anew, kept);
    }
  }
}
