package holloway.session;

import holloway.pipeline.LiveHouse;
import holloway.pipeline.PlannedHouse;
import holloway.plan.Plan;
import holloway.request.Request;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * A house, what was changed in it, and the plan that follows, made beside the person's own thread
 * and in stages: first a sketch, soon after it the plan that is proven and judged. Only answers to
 * the latest question are ever shown; one that cannot be leaves the last good plan, and a plan that
 * is known already comes back at once. To be called on one thread.
 */
public final class Work {
  private static final int MOST_KNOWN = 24;

  /** A plan with all that is said of it. */
  record State(LiveHouse house, LiveHouse.Judged judged) {}

  private final Asking asking;

  /** Judged plans by what was wanted, the latest last; those of the files as they are now. */
  private final Map<Request, State> known = new LinkedHashMap<>(16, 0.75f, true);

  /** As the files want it. */
  private State files;

  /** The last that was judged. */
  private State now;

  private Optional<LiveHouse.Sketched> sketch = Optional.empty();
  private Set<String> moved = Set.of();
  private Optional<Plan> replaced = Optional.empty();
  private Changes changes = Changes.NONE;
  private int answered;
  private int sketches;
  private boolean fresh;
  private List<String> trouble = List.of();

  /**
   * @param sketching makes sketches; {@code judging} all that may take longer
   */
  public Work(LiveHouse house, LiveHouse.Judged judged, Executor sketching, Executor judging) {
    this.asking = new Asking(sketching, judging);
    this.files = new State(house, judged);
    this.now = files;
    known.put(house.request(), files);
  }

  /** The house as it was judged last. */
  public LiveHouse house() {
    return now.house();
  }

  /** What was judged last; not what is shown while there is a sketch. */
  public LiveHouse.Judged judged() {
    return now.judged();
  }

  /** What is shown: the sketch if there is one, else what was judged. */
  public PlannedHouse drawn() {
    return sketch.map(LiveHouse.Sketched::drawn).orElseGet(() -> now.house().drawn(now.judged()));
  }

  /** The plan that is shown. */
  public Plan plan() {
    return sketch.map(LiveHouse.Sketched::plan).orElse(now.judged().plan());
  }

  /** Whether the plan that is shown is neither proven nor judged. */
  public boolean isSketch() {
    return sketch.isPresent();
  }

  /** Ids of the runs that lie elsewhere in the sketch than they were judged; none without one. */
  public Set<String> moved() {
    return moved;
  }

  private static Set<String> moved(Plan before, Plan sketch) {
    Map<String, List<String>> ways = new HashMap<>();
    before.runs().forEach(r -> ways.put(r.id(), ids(r)));
    return sketch.runs().stream()
        .filter(r -> !ids(r).equals(ways.get(r.id())))
        .map(Plan.PlannedRun::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> ids(Plan.PlannedRun r) {
    return r.steps().stream().map(Plan.PlanStep::id).toList();
  }

  /** How many sketches have come in so far, however short each was shown. */
  public int sketches() {
    return sketches;
  }

  /** The sketch that the plan of now has taken the place of; empty where there was none. */
  public Optional<Plan> replaced() {
    return replaced;
  }

  /** What the referee has against the plan that is shown; nothing is known of a sketch. */
  public List<String> refusals() {
    return isSketch() ? List.of() : now.judged().refusals();
  }

  /** The house as its files want it, without any change of this session. */
  public LiveHouse filesHouse() {
    return files.house();
  }

  /** The plan without any change of this session. */
  public LiveHouse.Judged before() {
    return files.judged();
  }

  public Request asInFiles() {
    return files.house().request();
  }

  public Request wanted() {
    return Wanted.of(asInFiles(), changes);
  }

  public Changes changes() {
    return changes;
  }

  /** Whether an answer is still to come. */
  public boolean isPlanning() {
    return answered < asking.asked();
  }

  /** What was wrong with the last question or file; empty when nothing. */
  public List<String> trouble() {
    return trouble;
  }

  public void change(Change c) {
    changes = changes.then(c);
    trouble = List.of();
    ask();
  }

  /** Whether there was something to undo. */
  public boolean undo() {
    return step(changes.undo());
  }

  /** Whether there was something to do again. */
  public boolean redo() {
    return step(changes.redo());
  }

  private boolean step(Optional<Changes> next) {
    next.ifPresent(
        c -> {
          changes = c;
          trouble = List.of();
          ask();
        });
    return next.isPresent();
  }

  private void ask() {
    Request wanted = wanted();
    State was = known.get(wanted);
    replaced = Optional.empty();
    if (was != null) {
      show(was);
      answered = asking.nothing();
    } else {
      asking.ask(now.house(), wanted);
    }
  }

  private void show(State s) {
    now = s;
    sketch = Optional.empty();
    moved = Set.of();
    fresh = true;
  }

  /**
   * Opens the house anew, after its file was changed.
   *
   * @param forget the changes so far stand in the files now
   */
  public void reopen(Supplier<LiveHouse> open, boolean forget) {
    if (forget) {
      changes = Changes.NONE;
    }
    asking.open(open);
  }

  /** Takes answers that have come in; whether anything is new. */
  public boolean poll() {
    for (Asking.Answer a = asking.next(); a != null; a = asking.next()) {
      take(a);
    }
    boolean was = fresh;
    fresh = false;
    return was;
  }

  private void take(Asking.Answer a) {
    boolean latest = a.number() == asking.asked();
    if (a.opened()) {
      opened(a);
    } else if (latest && !a.trouble().isEmpty()) {
      // What cannot be is taken back; the plan on the screen is that of before.
      changes = changes.undo().map(c -> new Changes(c.done(), List.of())).orElse(changes);
      ask();
      trouble = a.trouble();
      fresh = true;
    } else if (latest && a.sketch().isPresent()) {
      sketch = a.sketch();
      sketches++;
      moved = moved(now.judged().plan(), plan());
      fresh = true;
    } else if (latest) {
      State judged = a.state().orElseThrow();
      replaced = sketch.map(LiveHouse.Sketched::plan);
      keep(judged);
      show(judged);
      answered = a.number();
    }
  }

  private void opened(Asking.Answer a) {
    answered = Math.max(answered, a.number());
    trouble = a.trouble();
    fresh = true;
    if (a.state().isPresent()) {
      files = a.state().get();
      known.clear();
      keep(files);
      replaced = Optional.empty();
      show(files);
      if (!changes.done().isEmpty()) {
        ask();
      }
    }
  }

  private void keep(State s) {
    known.put(s.house().request(), s);
    known.keySet().removeIf(r -> known.size() > MOST_KNOWN && !r.equals(asInFiles()));
  }
}
