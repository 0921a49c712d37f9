package holloway.desk;

import holloway.pipeline.LiveHouse;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.session.Changes;
import holloway.session.Wanted;
import holloway.session.Work;
import holloway.view.Pictures;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;

/**
 * Slides tried before a person asks for one: each outlet of a house by one press of the key, to
 * either side. The first slides in a house take several times what later ones take, because the
 * program has not run that part of itself yet and the surroundings of the outlets were not looked
 * at. Nothing that is tried is ever shown or kept as a plan, no plan comes out otherwise for it,
 * and nothing is tried while a person waits. Asked on the person's own thread.
 */
final class Rehearsal {
  private final Work work;
  private final Executor beside;
  private final Deque<Request> left = new ArrayDeque<>();
  private boolean wanted;
  private LiveHouse of;

  /** Written by the thread that tries. */
  private volatile boolean busy;

  Rehearsal(Work work, Executor beside) {
    this.work = work;
    this.beside = beside;
  }

  void begin() {
    wanted = true;
  }

  /** Whether something is still to be tried. */
  boolean isOn() {
    return wanted && (of != work.filesHouse() || !left.isEmpty());
  }

  /** Tries the next one, if nobody is waiting for anything. */
  void goOn() {
    if (!isOn() || busy || work.isPlanning()) {
      return;
    }
    if (of != work.filesHouse()) {
      list(work.filesHouse());
    }
    Request next = left.poll();
    if (next == null) {
      return;
    }
    busy = true;
    LiveHouse house = of;
    try {
      beside.execute(() -> attempt(house, next));
    } catch (RejectedExecutionException e) {
      // The window is being closed.
      left.clear();
    }
  }

  private void list(LiveHouse house) {
    of = house;
    left.clear();
    Request now = house.request();
    for (int by : new int[] {1, -1}) {
      for (Outlet o : now.outlets()) {
        if (Wanted.slides(o)) {
          left.add(Wanted.of(now, Changes.NONE.then(Acts.slide(house, o.name(), by))));
        }
      }
    }
  }

  private void attempt(LiveHouse house, Request wanted) {
    try {
      new Pictures(house.rehearse(wanted).drawn());
    } catch (RuntimeException e) {
      // At the end of its wall, say: a person who asks for it is told.
    } finally {
      busy = false;
    }
  }
}
