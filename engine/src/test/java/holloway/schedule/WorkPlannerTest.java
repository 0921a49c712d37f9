package holloway.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.limits.LocalRules;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.request.Run;
import holloway.support.Chain;
import holloway.support.TriedHouses;
import holloway.takeoff.BoxPlan;
import holloway.takeoff.BoxPlanner;
import holloway.takeoff.TakeOff;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The order of work, played step by step on random houses, some runs of each; with {@code
 * -Dholloway.seeds=N} on all samples and more houses, whole.
 */
class WorkPlannerTest {
  private record Worked(Chain chain, Plan plan, BoxPlan boxes, WorkSchedule work) {}

  private static final Map<String, Worked> ALL = new LinkedHashMap<>();

  private static final int MOST_OF_A_KIND = 20;

  /** What steps of every house need. */
  private static final Set<String> ALWAYS =
      Set.of("open", "hole", "marked", "end", "terminated", "labelled");

  @BeforeAll
  static void plan() {
    boolean few = Integer.getInteger("holloway.seeds") == null;
    TriedHouses.texts(0, 3, 5)
        .forEach(
            (name, text) -> {
              Chain chain = Chain.of(text);
              Set<String> some =
                  chain.request().runs().stream()
                      .limit(few ? 5 : 1000)
                      .map(Run::id)
                      .collect(Collectors.toSet());
              Plan bare = chain.plan(Profile.LEAST_WORK, Set.of(), some::contains);
              Plan plan = TakeOff.of(bare, chain.request(), chain.placed());
              BoxPlan boxes = BoxPlanner.of(plan, chain.request().prices(), LocalRules.NONE);
              ALL.put(name, new Worked(chain, plan, boxes, work(chain, plan, boxes)));
            });
  }

  private static WorkSchedule work(Chain chain, Plan plan, BoxPlan boxes) {
    Map<String, String> by = new TreeMap<>();
    boxes
        .orders()
        .forEach(o -> o.reels().forEach(r -> r.cuts().forEach(c -> by.put(c.run(), r.name()))));
    return WorkPlanner.of(plan, chain.house(), chain.request(), by);
  }

  @Test
  void everyStepFindsWhatItNeeds() {
    List<String> faults = new ArrayList<>();
    ALL.forEach(
        (name, w) -> WorkReferee.faults(w.plan, w.work).forEach(f -> faults.add(name + ": " + f)));
    assertTrue(faults.isEmpty(), String.join("\n", faults));
    int steps = ALL.values().stream().mapToInt(w -> w.work.steps().size()).sum();
    assertTrue(steps > 50, "too few steps for this to prove much: " + steps);
  }

  /** Leads that go ahead of the others are a pull more. */
  @Test
  void blindPullsAreAsManyAsTheTakeOffCounts() {
    ALL.forEach(
        (name, w) -> {
          List<Pull> blind = w.work.pulls().stream().filter(p -> p.feed().equals("fish")).toList();
          long ahead = blind.stream().filter(p -> leads(p) && followed(p, blind)).count();
          assertEquals(w.boxes.pullsAsCut(), blind.size() - ahead, name);
        });
  }

  private static boolean leads(Pull p) {
    return p.strands().stream().allMatch(Pull.Strand::readyMade);
  }

  private static boolean followed(Pull leads, List<Pull> all) {
    return all.stream()
        .anyMatch(
            p -> !leads(p) && p.hollows().equals(leads.hollows()) && p.from().equals(leads.from()));
  }

  @Test
  void visitsAreProvenAndNoFewerThanTheZones() {
    ALL.forEach(
        (name, w) -> {
          assertTrue(w.work.fewestProven(), name);
          assertEquals(
              w.work.visits().stream().map(v -> v.zone().id()).collect(Collectors.toSet()),
              w.work.steps().stream()
                  .flatMap(
                      s ->
                          java.util.stream.Stream.concat(
                              java.util.stream.Stream.of(s.at()), s.other().stream()))
                  .filter(WorkPlace::isZone)
                  .map(WorkPlace::id)
                  .collect(Collectors.toSet()),
              name);
        });
  }

  @Test
  void theSameWorkHasTheSameIds() {
    Worked w = ALL.values().iterator().next();
    assertEquals(w.work, work(w.chain, w.plan, w.boxes));
    Plan.PlannedRun gone = w.plan.runs().get(0);
    List<Plan.PlannedRun> others = w.plan.runs().stream().filter(r -> r != gone).toList();
    Plan fewer = w.plan.withRuns(others, w.plan.totals());
    Set<String> before = w.work.steps().stream().map(Step::id).collect(Collectors.toSet());
    WorkSchedule after = WorkPlanner.of(fewer, w.chain.house(), w.chain.request(), Map.of());
    long same = after.steps().stream().filter(s -> before.contains(s.id())).count();
    assertTrue(same * 2 > after.steps().size(), same + " of " + after.steps().size());
    assertFalse(after.steps().stream().anyMatch(s -> s.id().equals("test/" + gone.id())));
  }

  /**
   * Each step moved before one that makes what it needs: the referee, which believes no token, sees
   * it. Only that wider pull heads go first may do no harm.
   */
  @Test
  void whateverIsDoneTooEarlyIsSeen() {
    Map<String, Integer> kinds = new TreeMap<>();
    List<String> unseen = new ArrayList<>();
    Worked w = ALL.values().iterator().next();
    List<Step> steps = w.work.steps();
    for (Step s : steps) {
      for (String token : s.needs()) {
        String kind = token.substring(0, token.indexOf(':'));
        Step maker =
            steps.stream().filter(m -> m.makes().contains(token)).findFirst().orElseThrow();
        if (kind.equals("pulled") || kinds.getOrDefault(kind, 0) > MOST_OF_A_KIND) {
          continue;
        }
        kinds.merge(kind, 1, Integer::sum);
        List<Step> wrong = new ArrayList<>(steps);
        wrong.remove(s);
        wrong.add(wrong.indexOf(maker), s);
        if (WorkReferee.played(w.plan, inOrder(w, wrong)).isEmpty()) {
          unseen.add(s.id() + " before " + token);
        }
      }
    }
    assertEquals(List.of(), unseen);
    assertTrue(kinds.keySet().containsAll(ALWAYS), kinds.toString());
  }

  /**
   * What steps say they need is all they need: whatever order it allows can be done, not only the
   * one that is printed.
   */
  @Test
  void everyOrderThatTheNeedsAllowCanBeDone() {
    ALL.forEach(
        (name, w) -> {
          for (long seed = 1; seed <= 12; seed++) {
            List<Step> order = anyOrder(w.work.steps(), new Random(seed));
            List<String> faults = WorkReferee.played(w.plan, inOrder(w, order));
            assertEquals(List.of(), faults, name + ", order " + seed);
          }
        });
  }

  private static final String TWO_CABLES =
      """
house: Two Cables
place: none
built: 1990
levels:
  ground: { floor: slab, ceiling-height: 2.4 m }
  upper: { above: ground, ceiling-height: 2.4 m, floor: { joists: 2x10, every: 16 in, run: north-south } }
rooms:
  den: { level: ground, size: 4 m x 3 m }
  bed: { level: upper, size: 4 m x 3 m, above: den, align: south-west }
cabinet: { in: den, wall: south, from: west 1 m, height: 1.2 m }
outlets:
  - { name: desk, in: bed, wall: south, from: east 1 m, height: 400 mm, cables: [cat6, cat6] }
wishes: { bans: [outside, surface] }
""";

  /** Out of one box cables go one after another, and the string stays with the last. */
  @Test
  void outOfOneBoxEachGoesByItself() {
    Chain chain = Chain.of(TWO_CABLES);
    Plan bare = chain.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    Plan plan = TakeOff.of(bare, chain.request(), chain.placed());
    WorkSchedule work = WorkPlanner.of(plan, chain.house(), chain.request(), Map.of());
    assertEquals(List.of(), WorkReferee.faults(plan, work));
    List<Pull> blind = work.pulls().stream().filter(p -> p.feed().equals("fish")).toList();
    assertTrue(blind.size() > 1, plan.unrouted() + " " + work.pulls());
    assertTrue(blind.stream().allMatch(p -> p.strands().size() == 1), blind.toString());
    Worked one =
        new Worked(
            chain, plan, BoxPlanner.of(plan, chain.request().prices(), LocalRules.NONE), work);
    for (long seed = 1; seed <= 12; seed++) {
      List<Step> order = anyOrder(work.steps(), new Random(seed));
      assertEquals(List.of(), WorkReferee.played(plan, inOrder(one, order)), "order " + seed);
    }
  }

  /** Deep holes, each beside a face where screws go: a longer bit, and steel for both edges. */
  @Test
  void deepHolesAndThoseThatWantSteel() {
    for (Worked w : ALL.values()) {
      List<Plan.PlannedHole> deep = w.plan.holes().stream().map(WorkPlannerTest::deep).toList();
      List<Plan.FindingLine> steel = deep.stream().map(h -> steel(h.id())).toList();
      Plan plan =
          w.plan.withWork(deep, w.plan.works(), w.plan.totals().minutes()).withFindings(steel);
      WorkSchedule work = WorkPlanner.of(plan, w.chain.house(), w.chain.request(), new TreeMap<>());
      assertEquals(List.of(), WorkReferee.faults(plan, work));
    }
  }

  private static Plan.FindingLine steel(String hole) {
    return new Plan.FindingLine(
        "nail-plate", "law", Optional.empty(), "", "", true, hole, "", "", "");
  }

  private static Plan.PlannedHole deep(Plan.PlannedHole h) {
    return new Plan.PlannedHole(
        h.id(),
        h.label(),
        h.kind(),
        h.diameterMm(),
        300,
        h.at(),
        h.between(),
        h.method(),
        h.stand(),
        h.works(),
        h.minutes(),
        h.runs(),
        h.assumed(),
        h.otherMethods(),
        h.bores(),
        h.axis(),
        h.through());
  }

  private static List<Step> anyOrder(List<Step> steps, Random random) {
    List<Step> left = new ArrayList<>(steps);
    Set<String> made = new HashSet<>();
    List<Step> out = new ArrayList<>();
    while (!left.isEmpty()) {
      List<Step> ready = left.stream().filter(s -> made.containsAll(s.needs())).toList();
      Step next = ready.get(random.nextInt(ready.size()));
      left.remove(next);
      made.addAll(next.makes());
      out.add(next);
    }
    return out;
  }

  private static WorkSchedule inOrder(Worked w, List<Step> steps) {
    return new WorkSchedule(
        steps, w.work.pulls(), w.work.visits(), w.work.visitsBound(), 2, w.work.tests(), List.of());
  }

  @Test
  void aStepOutOfOrderIsSeen() {
    Worked w = ALL.values().iterator().next();
    List<Step> steps = new ArrayList<>(w.work.steps());
    Step pull =
        steps.stream()
            .filter(s -> s.kind() == Step.Kind.PULL && !s.needs().isEmpty())
            .findFirst()
            .orElseThrow();
    steps.remove(pull);
    steps.add(0, pull);
    WorkSchedule wrong =
        new WorkSchedule(
            steps,
            w.work.pulls(),
            w.work.visits(),
            w.work.visitsBound(),
            2,
            w.work.tests(),
            List.of());
    assertFalse(WorkReferee.played(w.plan, wrong).isEmpty());
    List<Visit> bare =
        w.work.visits().stream()
            .map(v -> new Visit(v.number(), v.zone(), v.person(), v.steps(), List.of()))
            .toList();
    WorkSchedule empty =
        new WorkSchedule(
            w.work.steps(),
            w.work.pulls(),
            bare,
            w.work.visitsBound(),
            2,
            w.work.tests(),
            List.of());
    assertFalse(WorkReferee.played(w.plan, empty).isEmpty());
  }
}
