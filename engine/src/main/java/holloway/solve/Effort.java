package holloway.solve;

/** Counts steps that may still be taken, so that where a search gives up is the same everywhere. */
final class Effort {
  private static final int ASK_EVERY = 1 << 16;

  private final Watch watch;
  private final long most;
  private long spent;
  private long asked;
  private boolean over;

  /**
   * @param watch may end it too, where it looks at a clock
   */
  Effort(long most, Watch watch) {
    this.most = most;
    this.watch = watch;
  }

  /** Takes so many steps; false for good once there were not so many left. */
  boolean take(long steps) {
    spent += steps;
    over |= spent > most;
    if (!over && watch.timed() && spent - asked > ASK_EVERY) {
      asked = spent;
      over = watch.over();
    }
    return !over;
  }

  boolean over() {
    return over;
  }

  long spent() {
    return spent;
  }
}
