package holloway.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Do these pieces go into these boxes? Exact branch and bound, longest piece first. */
final class Packing {
  private static final int MOST_TRIES = 100_000;

  private final List<Cutting.Piece> pieces;
  private final long[] room;
  private final int[] chosen;
  private long spare;
  private int tries;

  /**
   * @param pieces longest first
   * @param bins longest first
   */
  Packing(List<Cutting.Piece> pieces, List<Cutting.Size> bins) {
    this.pieces = pieces;
    this.room = bins.stream().mapToLong(Cutting.Size::usable).toArray();
    this.chosen = new int[pieces.size()];
    for (long r : room) {
      spare += r;
    }
    for (Cutting.Piece p : pieces) {
      spare -= p.mm();
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

  /** The pieces of each box, in the order of the boxes. */
  Optional<List<List<Cutting.Piece>>> find() {
    if (spare < 0 || !place(0)) {
      return Optional.empty();
    }
    List<List<Cutting.Piece>> out = new ArrayList<>();
    for (int b = 0; b < room.length; b++) {
      List<Cutting.Piece> in = new ArrayList<>();
      for (int p = 0; p < chosen.length; p++) {
        if (chosen[p] == b) {
          in.add(pieces.get(p));
        }
      }
      out.add(List.copyOf(in));
    }
    return Optional.of(out);
  }

  private boolean place(int p) {
    if (p == pieces.size()) {
      return true;
    }
    if (++tries >= MOST_TRIES || lost(p) > spare) {
      return false;
    }
    long mm = pieces.get(p).mm();
    for (int b = 0; b < room.length; b++) {
      if (room[b] < mm || seenBefore(b)) {
        continue;
      }
      room[b] -= mm;
      chosen[p] = b;
      if (place(p + 1)) {
        return true;
      }
      room[b] += mm;
      if (room[b] == mm || gaveUp()) {
        // It fills this box to the end: nowhere else is it better.
        return false;
      }
    }
    return false;
  }

  /** Room that is too short for even the shortest piece left is lost. */
  private long lost(int p) {
    long shortest = pieces.get(pieces.size() - 1).mm();
    long out = 0;
    for (long r : room) {
      out += r < shortest ? r : 0;
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
