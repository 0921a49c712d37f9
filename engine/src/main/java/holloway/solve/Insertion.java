package holloway.solve;

/** Puts runs into a draft one after the other, each where it adds least. */
final class Insertion {
  private final Draft draft;
  private final MarginalSearch search;
  private final MethodChoice methods;

  Insertion(Draft draft, MarginalSearch search) {
    this.draft = draft;
    this.search = search;
    methods = new MethodChoice(draft);
  }

  /** Inserts every run of the order that has no path yet; a run that finds none stays out. */
  void insert(int[] order) {
    for (int run : order) {
      if (draft.paths[run] == null) {
        Path p = search.find(run);
        if (p != null) {
          draft.add(run, p);
        }
      }
    }
  }

  /**
   * Takes each run out and puts it back where it then adds least, until a whole pass changes
   * nothing.
   */
  void polish(int[] order, int mostPasses) {
    for (int pass = 0; pass < mostPasses; pass++) {
      long before = draft.price();
      for (int run : order) {
        if (draft.paths[run] != null) {
          again(run);
        }
      }
      methods.improve();
      if (draft.price() >= before) {
        return;
      }
    }
  }

  private void again(int run) {
    Solution kept = draft.save();
    Path old = draft.paths[run];
    draft.remove(run);
    Path p = search.find(run);
    if (p != null) {
      draft.add(run, p);
      if (draft.price() < kept.price()) {
        return;
      }
      draft.remove(run);
    }
    draft.add(run, old);
    draft.restoreMethods(kept);
  }

  /**
   * Every run on its own shortest path, as if the others were not there; works are shared only
   * where the paths happen to meet. Runs that then do not fit are inserted afterwards.
   */
  void independent(int[] order) {
    Path[] alone = new Path[draft.paths.length];
    int[][] ends = draft.task.ends.clone();
    for (int run : order) {
      Demand d = draft.task.demands[run];
      Path p = search.find(run, ends[d.from()], ends[d.to()]);
      if (p != null) {
        ends[d.from()] = new int[] {p.start()};
        ends[d.to()] = new int[] {p.end(draft.net)};
      }
      alone[run] = p;
    }
    for (int run : order) {
      if (alone[run] != null) {
        draft.add(run, alone[run]);
        if (draft.price() >= Network.SHUT) {
          draft.remove(run);
        }
      }
    }
    methods.improve();
    insert(order);
  }
}
