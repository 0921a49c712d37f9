package holloway.solve;

/** Asks a {@link Stop} whether time is up, and remembers whether it cut anything short. */
final class Watch {
  private final Stop stop;
  private double share = 1;
  private boolean cut;

  Watch(Stop stop) {
    this.stop = stop;
  }

  /** What follows may go on until this part of the time is gone. */
  void until(double part) {
    share = part;
  }

  /** To be asked only where there is more to do: true cuts it off. */
  boolean over() {
    boolean now = stop.spent().getAsDouble() >= share;
    cut |= now;
    return now;
  }

  /** The part of a plan's price that need not be proven. */
  double gap() {
    return stop.gap();
  }

  boolean timed() {
    return stop.timed();
  }

  boolean cut() {
    return cut;
  }

  /** The least bound, a multiple of the grain, that is enough for a plan of this price. */
  long enough(long price, long grain) {
    long least = price - (long) Math.floor(stop.gap() * price);
    return Math.min(price, Math.multiplyExact(Math.floorDiv(least + grain - 1, grain), grain));
  }
}
