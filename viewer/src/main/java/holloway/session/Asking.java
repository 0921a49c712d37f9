package holloway.session;

import holloway.pipeline.InputTrouble;
import holloway.pipeline.LiveHouse;
import holloway.request.Request;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Supplier;

/**
 * Questions on their way to an answer, on threads of their own. A question that another has
 * followed is given up wherever it is; a file that is opened is always read to its end. To be asked
 * on one thread.
 */
final class Asking {
  private final Executor sketching;
  private final Executor judging;
  private final Queue<Answer> answers = new ConcurrentLinkedQueue<>();

  /** Number of the latest question. */
  private volatile int asked;

  /**
   * What came back for a question: one of trouble, a sketch, or a state.
   *
   * @param opened a file was read, so that it is the files' own plan
   */
  record Answer(
      int number,
      boolean opened,
      List<String> trouble,
      Optional<LiveHouse.Sketched> sketch,
      Optional<Work.State> state) {}

  Asking(Executor sketching, Executor judging) {
    this.sketching = sketching;
    this.judging = judging;
  }

  int asked() {
    return asked;
  }

  /** A question whose answer is known: all others are overtaken. Its number. */
  int nothing() {
    return ++asked;
  }

  /** An answer that has come in, the earliest first; null where there is none. */
  Answer next() {
    return answers.poll();
  }

  /**
   * Asks for the plan of what is wanted: for its sketch, and then for all of it.
   *
   * @param from what was judged last
   */
  void ask(LiveHouse from, Request wanted) {
    int number = ++asked;
    sketching.execute(
        () -> {
          if (number == asked && sketched(number, from, wanted)) {
            judge(number, from, wanted);
          }
        });
  }

  /** Whether it is worth going on. */
  private boolean sketched(int number, LiveHouse from, Request wanted) {
    try {
      LiveHouse.Sketched s = from.sketch(wanted);
      answers.add(new Answer(number, false, List.of(), Optional.of(s), Optional.empty()));
    } catch (InputTrouble e) {
      answers.add(trouble(number, false, e.lines()));
      return false;
    } catch (RuntimeException e) {
      // A sketch is a convenience: where it fails the plan itself still says what is wrong.
      return true;
    }
    return true;
  }

  private void judge(int number, LiveHouse from, Request wanted) {
    try {
      judging.execute(
          () -> {
            if (number == asked) {
              answer(number, false, () -> from.with(wanted, () -> number != asked));
            }
          });
    } catch (RejectedExecutionException e) {
      // The window is being closed: nobody waits any more.
    }
  }

  /** Reads a house; what comes of it is of use whatever is asked meanwhile. */
  void open(Supplier<LiveHouse> open) {
    int number = ++asked;
    judging.execute(() -> answer(number, true, open));
  }

  private void answer(int number, boolean opens, Supplier<LiveHouse> question) {
    try {
      LiveHouse house = question.get();
      if (opens || number == asked) {
        Work.State s = new Work.State(house, house.judged());
        answers.add(new Answer(number, opens, List.of(), Optional.empty(), Optional.of(s)));
      }
    } catch (CancellationException e) {
      // Another question has followed.
    } catch (InputTrouble e) {
      answers.add(trouble(number, opens, e.lines()));
    } catch (RuntimeException e) {
      String says = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
      answers.add(trouble(number, opens, List.of("our fault: " + says)));
    }
  }

  private static Answer trouble(int number, boolean opened, List<String> lines) {
    return new Answer(number, opened, lines, Optional.empty(), Optional.empty());
  }
}
