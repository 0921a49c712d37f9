package holloway.support;

import holloway.catalog.Cable;
import holloway.check.Referee;
import holloway.check.Refusal;
import holloway.check.rules.PlanRules;
import holloway.finding.Finding;
import holloway.framing.Framed;
import holloway.framing.Framing;
import holloway.hollow.HollowHouse;
import holloway.hollow.Hollows;
import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.request.Request;
import holloway.routing.Ends;
import holloway.routing.Routing;
import holloway.solve.Budget;
import holloway.solve.JointPlanner;
import holloway.solve.Order;
import holloway.solve.Solved;
import holloway.survey.Placed;
import holloway.survey.Survey;
import holloway.takeoff.TakeOff;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * A house file taken through the stages one by one, so that each can be timed and its value looked
 * at. Times are processor time of the whole process in milliseconds, the compiler's and the
 * collector's included.
 */
public final class StagedPlan {
  public final Request request;
  public final Placed placed;
  public final Ends ends;
  public final Framed framed;
  public final HollowHouse hollows;
  public final Routing.Routed routed;
  private final Map<String, Long> millis = new LinkedHashMap<>();

  /** Everything up to the routing graph. */
  public StagedPlan(Path file) {
    Reading.Sound read = timed("house file", () -> sound(HouseFile.read(file)));
    request = read.request();
    placed = timed("survey", () -> Survey.of(read.house()).value());
    ends = timed("ends", () -> Ends.of(placed, request));
    if (!ends.problems().isEmpty()) {
      throw new IllegalArgumentException(ends.problems().toString());
    }
    framed = timed("framing", () -> Framing.of(placed));
    hollows = timed("hollows", () -> Hollows.of(framed, ends.interests()));
    routed = timed("graph", () -> Routing.of(hollows, ends, request));
  }

  private static Reading.Sound sound(Reading reading) {
    if (reading instanceof Reading.Sound s) {
      return s;
    }
    throw new IllegalArgumentException(((Reading.Faulty) reading).problems().toString());
  }

  /** What is wanted, as the planner reads it. */
  public Order order() {
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

  public Solved solve(Budget budget) {
    return timed(
        "joint plan",
        () -> JointPlanner.solve(routed.graph(), order(), budget, (what, done, of) -> {}));
  }

  /** What the referee has against the plan as it would be written to a file. */
  public List<Refusal> refusals(Plan bare) {
    Plan whole =
        timed(
            "rules",
            () -> {
              Plan taken = TakeOff.of(bare, request, placed);
              List<Finding> found = PlanRules.find(taken, hollows, request);
              return taken.withFindings(found.stream().map(StagedPlan::line).toList());
            });
    return timed(
        "referee",
        () -> Referee.check(PlanJson.read(PlanJson.write(whole)), hollows, request).refusals());
  }

  private static Plan.FindingLine line(Finding f) {
    return new Plan.FindingLine(
        f.rule(), f.severity().word(), f.place().at(), f.source(), f.text(), f.broken());
  }

  /** The stages in the order they ran with their milliseconds, in one line. */
  public String times() {
    return millis.toString();
  }

  private <T> T timed(String stage, Supplier<T> work) {
    long before = processorTime();
    T out = work.get();
    millis.merge(stage, (processorTime() - before) / 1_000_000, Long::sum);
    return out;
  }

  private static long processorTime() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
