package holloway.takeoff;

/** Moves and swaps runs between boxes as long as that saves pulls: a local search, no proof. */
final class Exchange {
  /** May a run be cut from this box, as things stand? */
  interface Room {
    boolean holds(int run, int box);
  }

  private final Pulls pulls;
  private final int[] from;
  private final Room room;

  /**
   * @param from box of each run; changed in place
   * @param room asked after a move has been made on {@code from}
   */
  Exchange(Pulls pulls, int[] from, Room room) {
    this.pulls = pulls;
    this.from = from;
    this.room = room;
  }

  void improve(int boxes) {
    boolean better = true;
    while (better) {
      better = false;
      for (int r = 0; r < from.length; r++) {
        better |= !pulls.ready(r) && (moves(r, boxes) || swaps(r));
      }
    }
  }

  private boolean moves(int r, int boxes) {
    int before = pulls.count(from);
    int was = from[r];
    for (int b = 0; b < boxes; b++) {
      from[r] = b;
      if (b != was && pulls.count(from) < before && room.holds(r, b)) {
        return true;
      }
    }
    from[r] = was;
    return false;
  }

  private boolean swaps(int r) {
    int before = pulls.count(from);
    for (int o = r + 1; o < from.length; o++) {
      if (!pulls.sameKind(r, o) || from[o] == from[r]) {
        continue;
      }
      swap(r, o);
      if (pulls.count(from) < before && room.holds(r, from[r]) && room.holds(o, from[o])) {
        return true;
      }
      swap(r, o);
    }
    return false;
  }

  private void swap(int a, int b) {
    int t = from[a];
    from[a] = from[b];
    from[b] = t;
  }
}
