package holloway.solve;

/**
 * Puts runs on ways of which the other searches think too much: they count a work again at each
 * place of a path that needs it, so a chain of holes made from few openings looks dearer than it
 * is. Each run is taken out and put back where it adds least with every work paid once.
 */
final class PaidOnce {
  private static final int MOST_PASSES = 3;

  private final Draft draft;
  private final MarginalSearch search;
  private final Watch watch;
  private final MethodChoice methods;
  private final Strands strands;

  PaidOnce(Draft draft, MarginalSearch search, Watch watch) {
    this.draft = draft;
    this.search = search;
    this.watch = watch;
    methods = new MethodChoice(draft);
    strands = new Strands(draft);
  }

  /** Never leaves a dearer plan in the draft, nor one with fewer runs. */
  void improve(int[] runs, long mostLooks) {
    long stop = search.looks() + mostLooks;
    for (int pass = 0; pass < MOST_PASSES && search.mayMeetTwice(); pass++) {
      long before = draft.price();
      for (int run : runs) {
        if (search.looks() >= stop || watch.over()) {
          return;
        }
        if (draft.paths[run] != null && !strands.inStrand(run)) {
          again(run);
        }
      }
      if (draft.price() >= before) {
        return;
      }
    }
  }

  private void again(int run) {
    Solution kept = draft.save();
    draft.remove(run);
    Path p = search.once(run, kept.price() - draft.price());
    if (p != null) {
      draft.add(run, p);
      methods.improve();
      if (draft.price() >= kept.price()) {
        new MethodsExact(draft).settle();
      }
      if (draft.price() < kept.price()) {
        return;
      }
      draft.remove(run);
    }
    draft.add(run, kept.paths()[run]);
    draft.restoreMethods(kept);
  }
}
