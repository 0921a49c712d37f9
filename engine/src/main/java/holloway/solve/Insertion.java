package holloway.solve;

/** Puts runs into a draft one after the other, each where it adds least. */
final class Insertion {
  private final Draft draft;
  private final MarginalSearch search;
  private final MethodChoice methods;
  private final Strands strands;

  Insertion(Draft draft, MarginalSearch search) {
    this.draft = draft;
    this.search = search;
    methods = new MethodChoice(draft);
    strands = new Strands(draft);
  }

  /** Inserts every run of the order that has no path yet; a run that finds none stays out. */
  void insert(int[] order) {
    for (int run : order) {
      if (draft.paths[run] == null && strands.inStrand(run)) {
        lead(strands.waiting(run, order));
      } else if (draft.paths[run] == null) {
        Path p = search.find(run);
        if (p != null) {
          draft.add(run, p);
        }
      }
    }
  }

  /** Runs that are alike on one path, or on as few as there is room for. */
  private void lead(int[] alike) {
    int done = 0;
    for (int many = alike.length; many > 0; ) {
      many = Math.min(many, alike.length - done);
      Path p = search.find(alike[0], many);
      for (int i = 0; p != null && i < many; i++) {
        draft.add(alike[done++], p);
      }
      many = done == alike.length ? 0 : p == null ? many / 2 : many;
    }
  }

  /**
   * Takes each run out and puts it back where it then adds least, until a whole pass changes
   * nothing.
   */
  void polish(int[] order, int mostPasses) {
    for (int pass = 0; pass < mostPasses; pass++) {
      long before = draft.price();
      for (int run : strands.heads(order)) {
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
    int[] strand = strands.of(run);
    Path old = draft.paths[run];
    remove(strand);
    insert(strand);
    if (draft.routed() < kept.routed() || draft.price() >= kept.price()) {
      remove(strand);
      for (int r : strand) {
        draft.add(r, old);
      }
      draft.restoreMethods(kept);
    }
  }

  private void remove(int[] runs) {
    for (int run : runs) {
      if (draft.paths[run] != null) {
        draft.remove(run);
      }
    }
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
