package holloway.session;

import holloway.pipeline.InputTrouble;
import holloway.pipeline.LiveHouse;
import holloway.request.Request;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/**
 * A house, what was changed in it, and the plan that follows, made beside the person's own thread.
 * Only the answer to the latest question is ever shown; one that cannot be leaves the last good
 * one. To be called on one thread; the executor may use another.
 */
public final class Work {
  private final Executor executor;

  /** As the files want it. */
  private LiveHouse files;

  private LiveHouse.Judged filesJudged;
  private LiveHouse now;
  private LiveHouse.Judged judged;
  private Changes changes = Changes.NONE;
  private volatile int asked;
  private int answered;
  private List<String> trouble = List.of();
  private volatile Answer waiting;

  /** What came back for a question. */
  private record Answer(
      int number, LiveHouse house, LiveHouse.Judged judged, boolean opened, List<String> trouble) {}

  public Work(LiveHouse house, LiveHouse.Judged judged, Executor executor) {
    this.files = house;
    this.filesJudged = judged;
    this.now = house;
    this.judged = judged;
    this.executor = executor;
  }

  public LiveHouse house() {
    return now;
  }

  public LiveHouse.Judged judged() {
    return judged;
  }

  /** The house as its files want it, without any change of this session. */
  public LiveHouse filesHouse() {
    return files;
  }

  /** The plan without any change of this session. */
  public LiveHouse.Judged before() {
    return filesJudged;
  }

  public Request asInFiles() {
    return files.request();
  }

  public Request wanted() {
    return Wanted.of(files.request(), changes);
  }

  public Changes changes() {
    return changes;
  }

  public boolean isPlanning() {
    return answered < asked;
  }

  /** What was wrong with the last question or file; empty when nothing. */
  public List<String> trouble() {
    return trouble;
  }

  public void change(Change c) {
    changes = changes.then(c);
    plan();
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
          plan();
        });
    return next.isPresent();
  }

  private void plan() {
    LiveHouse from = now;
    LiveHouse base = files;
    Changes all = changes;
    ask(
        false,
        () -> {
          Request wanted = Wanted.of(base.request(), all);
          return wanted.equals(base.request()) ? base : from.with(wanted);
        });
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
    ask(true, open);
  }

  private void ask(boolean opens, Supplier<LiveHouse> question) {
    int number = ++asked;
    executor.execute(
        () -> {
          // A question that another has followed need not be answered; a file is always read.
          if (number == asked || opens) {
            waiting = answer(number, opens, question);
          }
        });
  }

  private static Answer answer(int number, boolean opens, Supplier<LiveHouse> question) {
    try {
      LiveHouse house = question.get();
      return new Answer(number, house, house.judged(), opens, List.of());
    } catch (InputTrouble e) {
      return new Answer(number, null, null, opens, e.lines());
    } catch (RuntimeException e) {
      String says = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
      return new Answer(number, null, null, opens, List.of("our fault: " + says));
    }
  }

  /** Takes an answer that has come in; whether anything is new. */
  public boolean poll() {
    Answer a = waiting;
    if (a == null || a.number <= answered) {
      return false;
    }
    answered = a.number;
    trouble = a.trouble;
    if (!a.trouble.isEmpty()) {
      if (!a.opened) {
        // What cannot be is taken back; the plan on the screen is that of before.
        changes = changes.undo().map(c -> new Changes(c.done(), List.of())).orElse(changes);
      }
      return true;
    }
    if (a.opened) {
      files = a.house;
      filesJudged = a.judged;
    }
    now = a.house;
    judged = a.judged;
    if (a.opened && !changes.done().isEmpty()) {
      plan();
    }
    return true;
  }
}
