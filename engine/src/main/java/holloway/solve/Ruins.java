package holloway.solve;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.TreeSet;

/** Chooses what to take out of a draft in one round of ruin and recreate. */
final class Ruins {
  /**
   * @param runs to be taken out
   * @param shutHole hole not to be used while putting back, or −1
   * @param work shut while putting back, or free if {@code gift}; −1 for none
   */
  record Ruin(int[] runs, int shutHole, int work, boolean gift) {}

  private static final int MOST_RUNS = 8;

  private final Draft draft;
  private final Network net;
  private final SplittableRandom random;
  private final Strands strands;

  Ruins(Draft draft, Strands strands, SplittableRandom random) {
    this.draft = draft;
    this.strands = strands;
    this.net = draft.net;
    this.random = random;
  }

  Ruin choose(int[] runs) {
    int kind = random.nextInt(10);
    int run = runs[random.nextInt(runs.length)];
    Path path = draft.paths[run];
    if (path == null || path.arcs().length == 0) {
      return new Ruin(some(runs, run), -1, -1, false);
    }
    int arc = path.arcs()[random.nextInt(path.arcs().length)];
    int[] holes = net.edgeHoles[arc >> 1];
    if (kind < 3 && holes.length > 0) {
      int hole = holes[random.nextInt(holes.length)];
      return new Ruin(limit(passing(runs, hole)), hole, -1, false);
    }
    if (kind < 5) {
      int work = any(worksAt(arc), true);
      return work < 0
          ? new Ruin(some(runs, run), -1, -1, false)
          : new Ruin(limit(needing(runs, work)), -1, work, false);
    }
    if (kind < 8) {
      int near = net.first[net.head[arc]];
      int degree = net.first[net.head[arc] + 1] - near;
      // Where all arcs are walked one way only, none may lead on.
      int next = degree == 0 ? arc : net.arcs[near + random.nextInt(degree)];
      int work = any(worksAt(next), false);
      return new Ruin(some(runs, run), -1, work, true);
    }
    return kind == 8
        ? new Ruin(endingWith(runs, run), -1, -1, false)
        : new Ruin(some(runs, run), -1, -1, false);
  }

  /** A run and a few more, those that share an edge with it first. */
  private int[] some(int[] runs, int run) {
    TreeSet<Integer> out = new TreeSet<>();
    out.add(run);
    int want = 1 + random.nextInt(4);
    Path p = draft.paths[run];
    for (int tries = 0; tries < 6 && out.size() < want; tries++) {
      if (p != null && p.arcs().length > 0 && random.nextInt(3) > 0) {
        int edge = p.arcs()[random.nextInt(p.arcs().length)] >> 1;
        int[] users = Arrays.stream(runs).filter(r -> uses(r, edge)).toArray();
        out.add(users[random.nextInt(users.length)]);
      } else {
        out.add(runs[random.nextInt(runs.length)]);
      }
    }
    return out.stream().mapToInt(Integer::intValue).toArray();
  }

  private boolean uses(int run, int edge) {
    return draft.paths[run] != null
        && Arrays.stream(draft.paths[run].arcs()).anyMatch(a -> a >> 1 == edge);
  }

  /** All runs of one end of the run, so that the end may move to another alternative. */
  private int[] endingWith(int[] runs, int run) {
    Demand d = draft.task.demands[run];
    int end = draft.task.ends[d.from()].length > 1 ? d.from() : d.to();
    int[] all =
        Arrays.stream(runs)
            .filter(r -> draft.task.demands[r].from() == end || draft.task.demands[r].to() == end)
            .toArray();
    return draft.task.ends[end].length > 1 ? all : limit(all);
  }

  private int[] passing(int[] runs, int hole) {
    return Arrays.stream(runs).filter(r -> passes(draft.paths[r], hole)).toArray();
  }

  private boolean passes(Path p, int hole) {
    return p != null && Arrays.stream(p.arcs()).anyMatch(a -> has(net.edgeHoles[a >> 1], hole));
  }

  private int[] needing(int[] runs, int work) {
    return Arrays.stream(runs).filter(r -> needs(draft.paths[r], work)).toArray();
  }

  private boolean needs(Path p, int work) {
    if (p == null) {
      return false;
    }
    if (has(net.nodeWorks[p.start()], work)) {
      return true;
    }
    return Arrays.stream(p.arcs()).anyMatch(a -> has(worksAt(a), work));
  }

  /** Works of the arc's edge, the node it leads to and its holes as they are made now. */
  private int[] worksAt(int arc) {
    IntList out = new IntList();
    addAll(out, net.nodeWorks[net.head[arc]]);
    addAll(out, net.edgeWorks[arc >> 1]);
    for (int h : net.edgeHoles[arc >> 1]) {
      int m = draft.holeUse(h) > 0 ? draft.method[h] : 0;
      if (net.methods[h].length > 0) {
        addAll(out, net.methods[h][m]);
      }
    }
    return out.toArray();
  }

  private static void addAll(IntList out, int[] works) {
    for (int w : works) {
      out.add(w);
    }
  }

  private int any(int[] works, boolean open) {
    int[] fit = Arrays.stream(works).filter(w -> draft.isOpen(w) == open).toArray();
    return fit.length == 0 ? -1 : fit[random.nextInt(fit.length)];
  }

  private int[] limit(int[] all) {
    int[] runs = strands.heads(all);
    int from = runs.length <= MOST_RUNS ? 0 : random.nextInt(runs.length - MOST_RUNS + 1);
    return Arrays.copyOfRange(runs, from, Math.min(runs.length, from + MOST_RUNS));
  }

  private static boolean has(int[] values, int value) {
    for (int v : values) {
      if (v == value) {
        return true;
      }
    }
    return false;
  }
}
