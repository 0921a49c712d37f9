package holloway.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which pieces go into these boxes, so that what is left to be cut by the metre costs least: exact
 * branch and bound, longest piece first.
 */
final class Packing {
  /** The price of a piece that nobody cuts by the metre. */
  static final long NEVER = Long.MAX_VALUE / 4;

  private static final int MOST_TRIES = 100_000;
  private static final int LOOSE = -1;

  private final List<Cutting.Piece> pieces;
  private final long[] loose;
  private final Rate rate;
  private final long[] room;
  private final int[] chosen;

  /** Length of the pieces from each on. */
  private final long[] onwards;

  private int[] best;
  private long least;
  private int tries;

  /** The pieces of each box, in the order of the boxes, and those by the metre with their price. */
  record Packed(List<List<Cutting.Piece>> boxes, List<Cutting.Piece> loose, long spent) {}

  /** No piece costs less by the metre than so much a length. */
  record Rate(long cost, long mm) {
    /**
     * @param loose price of each piece by the metre
     */
    static Rate of(List<Cutting.Piece> pieces, long[] loose) {
      Rate out = new Rate(NEVER, 1);
      for (int p = 0; p < loose.length; p++) {
        long mm = pieces.get(p).mm();
        boolean less =
            loose[p] < NEVER && (out.cost() == NEVER || loose[p] * out.mm() < out.cost() * mm);
        out = less ? new Rate(loose[p], mm) : out;
      }
      return out;
    }

    /** The least that so much length costs, which no box holds. */
    long of(long over) {
      return over <= 0 ? 0 : cost == NEVER ? NEVER : (over * cost + mm - 1) / mm;
    }
  }

  /**
   * @param pieces longest first
   * @param bins longest first
   * @param loose price of each piece by the metre, or {@link #NEVER}
   */
  Packing(List<Cutting.Piece> pieces, List<Cutting.Size> bins, long[] loose) {
    this.pieces = pieces;
    this.loose = loose;
    this.rate = Rate.of(pieces, loose);
    this.room = bins.stream().mapToLong(Cutting.Size::usable).toArray();
    this.chosen = new int[pieces.size()];
    this.onwards = new long[pieces.size() + 1];
    for (int p = pieces.size() - 1; p >= 0; p--) {
      onwards[p] = onwards[p + 1] + pieces.get(p).mm();
    }
  }

  /** True when the search stopped before it knew. */
  boolean gaveUp() {
    return tries >= MOST_TRIES;
  }

  /** Work done so far. */
  int tries() {
    return tries;
  }

  /** The cheapest that is found under a price; empty where there is none. */
  Optional<Packed> cheapest(long under) {
    least = under;
    place(0, 0);
    if (best == null) {
      return Optional.empty();
    }
    List<List<Cutting.Piece>> out = new ArrayList<>();
    for (int b = 0; b < room.length; b++) {
      out.add(in(b));
    }
    return Optional.of(new Packed(List.copyOf(out), in(LOOSE), least));
  }

  private List<Cutting.Piece> in(int box) {
    List<Cutting.Piece> out = new ArrayList<>();
    for (int p = 0; p < best.length; p++) {
      if (best[p] == box) {
        out.add(pieces.get(p));
      }
    }
    return List.copyOf(out);
  }

  private void place(int p, long spent) {
    if (p == pieces.size()) {
      least = spent;
      best = chosen.clone();
      return;
    }
    if (++tries >= MOST_TRIES || spent + rate.of(onwards[p] - useful()) >= least) {
      return;
    }
    long mm = pieces.get(p).mm();
    for (int b = 0; b < room.length && !gaveUp(); b++) {
      if (room[b] < mm || seenBefore(b)) {
        continue;
      }
      room[b] -= mm;
      chosen[p] = b;
      place(p + 1, spent);
      boolean full = room[b] == 0;
      room[b] += mm;
      if (full) {
        // It fills this box to the end: in no other one is it better.
        break;
      }
    }
    if (loose[p] < NEVER && !gaveUp() && spent + loose[p] < least) {
      chosen[p] = LOOSE;
      place(p + 1, spent + loose[p]);
    }
  }

  /** Room of the boxes; what is too short for even the shortest piece is lost. */
  private long useful() {
    long shortest = pieces.get(pieces.size() - 1).mm();
    long out = 0;
    for (long r : room) {
      out += r < shortest ? 0 : r;
    }
    return out;
  }

  /** An earlier box with the same room was tried and failed. */
  private boolean seenBefore(int b) {
    for (int e = 0; e < b; e++) {
      if (room[e] == room[b]) {
        return true;
      }
    }
    return false;
  }
}
