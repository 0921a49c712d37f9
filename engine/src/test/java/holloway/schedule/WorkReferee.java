package holloway.schedule;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Plays a schedule step by step against the plan alone: where each cable's end is, which holes are
 * bored, what is open, what lies in each hole, what each person has along. It believes no token.
 */
public final class WorkReferee {
  private final Plan plan;
  private final WorkSchedule schedule;
  private final List<String> faults = new ArrayList<>();
  private final Map<String, Plan.PlannedHole> holes = new TreeMap<>();
  private final Map<String, Plan.PlannedRun> runs = new TreeMap<>();
  private final Set<String> bored = new HashSet<>();
  private final Set<String> open = new HashSet<>();
  private final Set<String> shut = new HashSet<>();
  private final Map<String, List<String>> inHole = new HashMap<>();

  /** Index of the plan's step that each cable's end has passed. */
  private final Map<String, Integer> reached = new HashMap<>();

  private final Set<String> tested = new HashSet<>();
  private final Set<String> marked = new HashSet<>();
  private final Map<String, Set<String>> finished = new HashMap<>();
  private final Map<String, Set<String>> labelled = new HashMap<>();

  /** Holes that were sealed. */
  private final Set<String> sealed = new HashSet<>();

  private final StringsLeft strings = new StringsLeft();

  private WorkReferee(Plan plan, WorkSchedule schedule) {
    this.plan = plan;
    this.schedule = schedule;
    plan.holes().forEach(h -> holes.put(h.id(), h));
    plan.runs().forEach(r -> runs.put(r.id(), r));
  }

  /** What is wrong with the order of work; nothing where it can be done as written. */
  public static List<String> faults(Plan plan, WorkSchedule schedule) {
    List<String> out = played(plan, schedule);
    out.addAll(VisitReferee.faults(schedule));
    return out;
  }

  /** The same without a look at who goes where when: for steps in another order. */
  static List<String> played(Plan plan, WorkSchedule schedule) {
    WorkReferee r = new WorkReferee(plan, schedule);
    r.play();
    r.faults.addAll(BringReferee.faults(plan, schedule));
    return r.faults;
  }

  private void play() {
    Set<String> ids = new HashSet<>();
    for (Step s : schedule.steps()) {
      if (!ids.add(s.id())) {
        faults.add("twice: " + s.id());
      }
      visit(s, s.at(), s.visit(), s.bring());
      s.other().ifPresent(o -> visit(s, o, s.otherVisit(), s.bringOther()));
      switch (s.kind()) {
        case OPEN, CUT -> open.add(s.subject());
        case PILOT -> {
          opened(s, holes.get(s.subject()));
          ahead(s);
        }
        case DRILL -> drill(s);
        case MARK -> marked.addAll(s.runs());
        case PULL -> pull(s);
        case SEAL -> seal(s);
        case TERMINATE -> s.runs().forEach(r -> terminate(s, r));
        case LABEL -> s.runs().forEach(r -> label(s, r));
        case TEST -> test(s);
        case CLOSE -> close(s);
        case CHECK_FIRST -> ahead(s);
      }
    }
    end();
  }

  private void visit(Step s, WorkPlace place, int visit, List<Bring> uses) {
    if (!place.isZone()) {
      return;
    }
    if (visit < 1 || visit > schedule.visits().size()) {
      faults.add(s.id() + ": in a zone without a visit");
      return;
    }
    Visit v = schedule.visits().get(visit - 1);
    if (!v.zone().equals(place) || !v.steps().contains(s.id())) {
      faults.add(s.id() + ": not in visit " + visit);
    }
    for (Bring b : uses) {
      if (v.bring().stream().noneMatch(x -> x.key().equals(b.key()) && x.amount() >= b.amount())) {
        faults.add(s.id() + ": " + b + " was left below");
      }
    }
    if (s.kind() == Step.Kind.DRILL && place.equals(s.at())) {
      int mm = holes.get(s.subject()).diameterMm();
      if (v.bring().stream().noneMatch(b -> b.sizeMm() == mm)) {
        faults.add(s.id() + ": no bit of " + mm + " mm along");
      }
    }
  }

  private void ahead(Step s) {
    if (bored.contains(s.subject())) {
      faults.add(s.id() + ": bored already");
    }
  }

  private void opened(Step s, Plan.PlannedHole h) {
    for (Plan.PlannedWork w : plan.works()) {
      boolean mine = h.works().contains(w.id());
      boolean opens = Set.of("cut-out", "patch", "access", "channel").contains(w.kind());
      if (mine && opens && (!open.contains(w.id()) || shut.contains(w.id()))) {
        faults.add(s.id() + ": " + w.id() + " is not open");
      }
    }
  }

  private void drill(Step s) {
    opened(s, holes.get(s.subject()));
    bored.add(s.subject());
  }

  private void pull(Step s) {
    Pull p =
        schedule.pulls().stream().filter(x -> x.id().equals(s.subject())).findFirst().orElseThrow();
    Set<String> drawn = new HashSet<>();
    for (Pull.Strand strand : p.strands()) {
      if (p.feed().equals("fish") && !strand.readyMade() && !drawn.add(strand.box())) {
        faults.add(s.id() + ": two out of " + strand.box());
      }
      String cutOut = runs.get(strand.run()).to() + "/cut-out";
      boolean made = plan.works().stream().anyMatch(w -> w.id().equals(cutOut));
      if (strand.last() && made && !open.contains(cutOut)) {
        faults.add(s.id() + ": " + cutOut + " is not open");
      }
      if (strand.cutM() != runs.get(strand.run()).cableM()) {
        faults.add(s.id() + ": " + strand.run() + " is cut at " + strand.cutM());
      }
      if (!marked.contains(strand.run())) {
        faults.add(s.id() + ": " + strand.run() + " is not marked");
      }
      pass(s, p, runs.get(strand.run()), strand);
    }
  }

  /** The cable's end goes on over the hollows of the pull, and must begin where it was left. */
  private void pass(Step s, Pull p, Plan.PlannedRun run, Pull.Strand strand) {
    int at = reached.getOrDefault(run.id(), 0);
    double metres = 0;
    double mine = 0;
    List<String> legs = new ArrayList<>();
    List<Plan.PlanStep> way = new ArrayList<>();
    int to = at;
    for (int i = 0; i < run.steps().size(); i++) {
      metres += run.steps().get(i).m();
      if (i < at) {
        continue;
      }
      if (metres > strand.firstM() + 1e-6) {
        break;
      }
      Plan.PlanStep step = run.steps().get(i);
      to = i + 1;
      mine += step.m();
      way.add(step);
      if (step.kind().equals("leg")) {
        legs.add(step.id());
      } else {
        through(s, run, step.id());
      }
    }
    if (!legs.stream().distinct().toList().equals(p.hollows())) {
      faults.add(s.id() + ": " + run.id() + " lies in " + legs + " and not " + p.hollows());
    }
    reached.put(run.id(), to);
    if (mine > p.metres() + 1e-6) {
      faults.add(s.id() + ": " + run.id() + " goes on for " + mine + " m, not " + p.metres());
    }
    if (p.feed().equals("fish")) {
      strings.drawn(legs + " from " + first(run, at), mine, p.stringM());
    }
    DragReferee.fault(p, way).ifPresent(f -> faults.add(s.id() + ": " + f));
    if (strand.last() != (to == run.steps().size())) {
      faults.add(s.id() + ": " + run.id() + " is not at its end");
    }
  }

  private static String first(Plan.PlannedRun run, int at) {
    return run.steps().stream()
        .skip(at)
        .filter(x -> x.kind().equals("leg"))
        .map(x -> x.path().get(0).toString())
        .findFirst()
        .orElse("nowhere");
  }

  private void through(Step s, Plan.PlannedRun run, String id) {
    if (shut.contains(id)) {
      faults.add(s.id() + ": " + id + " is closed");
    }
    boolean work = plan.works().stream().anyMatch(w -> w.id().equals(id));
    if (work && !open.contains(id)) {
      faults.add(s.id() + ": " + id + " is not open");
    }
    if (!holes.containsKey(id)) {
      return;
    }
    if (!bored.contains(id)) {
      faults.add(s.id() + ": " + id + " is not bored");
    }
    List<String> there = inHole.computeIfAbsent(id, k -> new ArrayList<>());
    Plan.PlannedHole h = holes.get(id);
    if (h.bores() == 1) {
      fits(s, h, there, Cable.get(run.cable()));
    }
    there.add(run.id());
  }

  private void fits(Step s, Plan.PlannedHole h, List<String> there, Cable next) {
    double area = 0;
    double widest = 0;
    List<Cable> all = new ArrayList<>(List.of(next));
    for (String r : there) {
      Cable c = Cable.get(runs.get(r).cable());
      all.add(c);
      area += Math.pow(c.outside().toMm(), 2);
      widest = Math.max(widest, c.outside().toMm());
    }
    double head = next.pullHead().toMm();
    boolean passes = head + widest <= h.diameterMm() && head * head + area <= 0.8 * sq(h);
    if (!passes || !Fit.fits(all, h.diameterMm())) {
      faults.add(s.id() + ": " + h.id() + " is too full for " + next.kind() + " beside " + there);
    }
  }

  private static double sq(Plan.PlannedHole h) {
    return (double) h.diameterMm() * h.diameterMm();
  }

  private void seal(Step s) {
    if (!bored.contains(s.subject())) {
      faults.add(s.id() + ": sealed before it was bored");
    }
    shut.add(s.subject());
    sealed.add(s.subject());
  }

  private void atEnd(Step s, String run) {
    if (reached.getOrDefault(run, 0) != runs.get(run).steps().size()) {
      faults.add(s.id() + ": " + run + " is not there yet");
    }
  }

  private void terminate(Step s, String run) {
    atEnd(s, run);
    finished.computeIfAbsent(run, k -> new TreeSet<>()).add(s.subject());
  }

  private void label(Step s, String run) {
    atEnd(s, run);
    labelled.computeIfAbsent(run, k -> new TreeSet<>()).add(s.subject());
  }

  private void test(Step s) {
    Plan.PlannedRun r = runs.get(s.subject());
    if (!labelled.getOrDefault(r.id(), Set.of()).containsAll(List.of(r.from(), r.to()))) {
      faults.add(s.id() + ": not labelled at both ends");
    }
    if (!finished.getOrDefault(r.id(), Set.of()).containsAll(List.of(r.from(), r.to()))) {
      faults.add(s.id() + ": not terminated at both ends");
    }
    tested.add(r.id());
  }

  private void close(Step s) {
    shut.add(s.subject());
    for (Plan.PlannedRun r : plan.runs()) {
      boolean through = r.steps().stream().anyMatch(x -> x.id().equals(s.subject()));
      if (through && !tested.contains(r.id())) {
        faults.add(s.id() + ": closed before " + r.id() + " was tested");
      }
    }
    for (Step seal : schedule.steps()) {
      boolean mine = seal.kind() == Step.Kind.SEAL && !sealed.contains(seal.subject());
      if (mine && holes.get(seal.subject()).works().contains(s.subject())) {
        faults.add(s.id() + ": closed before " + seal.subject() + " was sealed");
      }
    }
  }

  private void end() {
    faults.addAll(strings.faults());
    for (Plan.PlannedRun r : plan.runs()) {
      if (!tested.contains(r.id())) {
        faults.add(r.id() + " is never tested");
      }
    }
    holes.keySet().stream()
        .filter(h -> !bored.contains(h))
        .forEach(h -> faults.add(h + " not bored"));
    int steps = schedule.visits().stream().mapToInt(v -> v.steps().size()).sum();
    if (steps == 0 && !schedule.visits().isEmpty()) {
      faults.add("visits in which nothing is done");
    }
    if (schedule.visitsBound() > schedule.visits().size()) {
      faults.add("the bound is over the visits");
    }
  }
}
