package holloway.schedule;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The least number of times somebody gets set up in a zone, exactly: a search over what is done and
 * where each person is, by number of visits. Whatever can be done where people are is done at once,
 * for that never makes anything later impossible; so only moves are chosen.
 */
final class FewestVisits {
  /** Outside every zone. */
  static final int OUT = -1;

  /** States looked at before the rest is done as it comes. */
  private static final int MOST = 40_000;

  /**
   * One step as this search sees it.
   *
   * @param at zone of each place that has to be occupied at the same time, or {@link #OUT}
   * @param needs numbers of the tasks before it
   */
  record Task(List<Integer> at, List<Integer> needs) {}

  /**
   * @param moves positions of the crew one after another; everything that can be done at each is
   *     done there
   * @param visits how often somebody goes into a zone
   * @param bound no order has fewer
   */
  record Answer(List<List<Integer>> moves, int visits, int bound) {}

  private record State(BitSet done, List<Integer> crew, State before, int visits) {}

  private final List<Task> tasks;
  private final int zones;
  private final int crew;
  private final int most;

  FewestVisits(List<Task> tasks, int zones, int crew) {
    this(tasks, zones, crew, MOST);
  }

  /**
   * @param most states looked at before the rest is done as it comes
   */
  FewestVisits(List<Task> tasks, int zones, int crew, int most) {
    this.tasks = tasks;
    this.zones = zones;
    this.crew = crew;
    this.most = most;
  }

  /**
   * @throws IllegalArgumentException when tasks wait for one another or need more people than there
   *     are
   */
  Answer solve() {
    Deque<State> now = new ArrayDeque<>();
    now.add(new State(close(new BitSet(), outside()), outside(), null, 0));
    Map<List<Integer>, List<BitSet>> seen = new HashMap<>();
    int looked = 0;
    for (int visits = 0; !now.isEmpty(); visits++) {
      Deque<State> next = new ArrayDeque<>();
      while (!now.isEmpty()) {
        State s = now.poll();
        if (s.done().cardinality() == tasks.size()) {
          return new Answer(path(s), visits, visits);
        }
        if (isKnown(seen, s)) {
          continue;
        }
        if (++looked > most) {
          return greedy(s, visits);
        }
        for (State to : moves(s)) {
          (to.visits() == visits ? now : next).add(to);
        }
      }
      now = next;
    }
    throw new IllegalArgumentException("steps wait for one another");
  }

  private List<Integer> outside() {
    return java.util.Collections.nCopies(crew, OUT);
  }

  /** True when at these places as much was done with no more visits. */
  private static boolean isKnown(Map<List<Integer>, List<BitSet>> seen, State s) {
    List<BitSet> there = seen.computeIfAbsent(s.crew(), k -> new ArrayList<>());
    for (BitSet b : there) {
      BitSet rest = (BitSet) s.done().clone();
      rest.andNot(b);
      if (rest.isEmpty()) {
        return true;
      }
    }
    there.add(s.done());
    return false;
  }

  private List<State> moves(State s) {
    List<State> out = new ArrayList<>();
    Set<List<Integer>> tried = new HashSet<>();
    for (int p = crew - 1; p >= 0; p--) {
      for (int z = OUT; z < zones; z++) {
        List<Integer> to = new ArrayList<>(s.crew());
        to.set(p, z);
        if (z == s.crew().get(p) || (z != OUT && s.crew().contains(z)) || !tried.add(to)) {
          continue;
        }
        int visits = s.visits() + (z == OUT ? 0 : 1);
        out.add(new State(close(s.done(), to), List.copyOf(to), s, visits));
      }
    }
    return out;
  }

  /** All that can be done with people at these places. */
  private BitSet close(BitSet done, List<Integer> at) {
    BitSet out = (BitSet) done.clone();
    boolean more = true;
    while (more) {
      more = false;
      for (int t = out.nextClearBit(0); t < tasks.size(); t = out.nextClearBit(t + 1)) {
        if (canDo(tasks.get(t), at) && tasks.get(t).needs().stream().allMatch(out::get)) {
          out.set(t);
          more = true;
        }
      }
    }
    return out;
  }

  /** Whether each place of a task can have a person of its own. */
  static boolean canDo(Task task, List<Integer> crew) {
    List<Integer> free = new ArrayList<>(crew);
    for (Integer place : task.at()) {
      if (!free.remove(place)) {
        return false;
      }
    }
    return true;
  }

  /** Past the limit: always the move that gets most done; what was exhausted stays a bound. */
  private Answer greedy(State from, int bound) {
    State s = from;
    while (s.done().cardinality() < tasks.size()) {
      State best = null;
      for (State one : moves(s)) {
        List<State> both = new ArrayList<>(moves(one));
        both.add(one);
        for (State to : both) {
          boolean more = best == null || to.done().cardinality() > best.done().cardinality();
          best = more ? to : best;
        }
      }
      if (best == null || best.done().cardinality() == s.done().cardinality()) {
        throw new IllegalArgumentException("steps wait for one another");
      }
      s = best;
    }
    return new Answer(path(s), s.visits(), bound);
  }

  private static List<List<Integer>> path(State end) {
    List<List<Integer>> out = new ArrayList<>();
    for (State s = end; s != null; s = s.before()) {
      out.add(0, s.crew());
    }
    return out;
  }
}
