package holloway.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Which boxes to buy and which pieces to cut from which, at the least cost: sets of boxes are tried
 * in order of their cost, each by an exact packing, so that the first one that holds the pieces is
 * the cheapest and every cheaper one is known not to. Work is limited by counts; where a limit is
 * met the bound stays true and the plan says that it may be beaten. The method is ours: cutting
 * stock with several stock lengths, small enough to be enumerated.
 */
final class Cutting {
  /** Cable that is lost in each length bought, trade-facts G4: 5 % over what is used. */
  static final long WASTE_PERCENT = 5;

  private static final int MOST_SETS = 20_000;
  private static final long MOST_WORK = 3_000_000;

  /** A length to cut from one box, whole millimetres. */
  record Piece(String run, long mm) {}

  /** A length sold; {@code cost} in any one unit, above 0. */
  record Size(long mm, long cost) {
    /** What may be cut from it, waste taken off. */
    long usable() {
      return mm * 100 / (100 + WASTE_PERCENT);
    }
  }

  /** One box bought and what is cut from it, in the order given. */
  record Box(Size size, List<Piece> pieces) {
    long used() {
      return pieces.stream().mapToLong(Piece::mm).sum();
    }
  }

  /**
   * @param bound no set of boxes that holds the pieces costs less
   * @param tooLong pieces that no size holds
   */
  record Result(List<Box> boxes, long bound, List<Piece> tooLong) {
    long cost() {
      return boxes.stream().mapToLong(b -> b.size().cost()).sum();
    }

    boolean proven() {
      return bound == cost();
    }
  }

  /** How many of each size. */
  private record Counts(int[] of, int last, long cost, int boxes, long usable) {}

  private final List<Size> sizes;
  private final List<Piece> pieces;
  private final List<Piece> tooLong;
  private final long wanted;

  private Cutting(List<Piece> all, List<Size> sizes) {
    this.sizes =
        sizes.stream()
            .sorted(Comparator.comparingLong(Size::mm).reversed().thenComparing(Size::cost))
            .toList();
    long most = this.sizes.stream().mapToLong(Size::usable).max().orElse(0);
    Comparator<Piece> longest =
        Comparator.comparingLong(Piece::mm).reversed().thenComparing(Piece::run);
    this.pieces = all.stream().filter(p -> p.mm() <= most).sorted(longest).toList();
    this.tooLong = all.stream().filter(p -> p.mm() > most).sorted(longest).toList();
    this.wanted = pieces.stream().mapToLong(Piece::mm).sum();
  }

  static Result of(List<Piece> pieces, List<Size> sizes) {
    return new Cutting(pieces, sizes).solve();
  }

  private Result solve() {
    if (pieces.isEmpty()) {
      return new Result(List.of(), 0, tooLong);
    }
    PriorityQueue<Counts> queue =
        new PriorityQueue<>(
            Comparator.comparingLong(Counts::cost)
                .thenComparing(Counts::boxes)
                .thenComparing(Counts::of, java.util.Arrays::compare));
    queue.add(new Counts(new int[sizes.size()], 0, 0, 0, 0));
    long undecided = Long.MAX_VALUE;
    long reached = 0;
    long work = 0;
    for (int tried = 0; tried < MOST_SETS && work < MOST_WORK && !queue.isEmpty(); tried++) {
      Counts next = queue.remove();
      reached = next.cost();
      if (next.usable() >= wanted) {
        Packing packing = new Packing(pieces, bins(next));
        Optional<List<List<Piece>>> packed = packing.find();
        if (packed.isPresent()) {
          return new Result(boxes(next, packed.get()), Math.min(reached, undecided), tooLong);
        }
        work += packing.tries();
        undecided = packing.gaveUp() ? Math.min(undecided, reached) : undecided;
      }
      addOneMore(next, queue);
    }
    return new Result(Greedy.boxes(pieces, sizes), Math.min(reached, undecided), tooLong);
  }

  /** Each set is reached once: sizes are added in order. No more boxes than pieces are wanted. */
  private void addOneMore(Counts from, PriorityQueue<Counts> queue) {
    for (int s = from.last(); s < sizes.size() && from.boxes() < pieces.size(); s++) {
      int[] of = from.of().clone();
      of[s]++;
      Size size = sizes.get(s);
      queue.add(
          new Counts(
              of, s, from.cost() + size.cost(), from.boxes() + 1, from.usable() + size.usable()));
    }
  }

  private List<Size> bins(Counts counts) {
    List<Size> out = new ArrayList<>();
    for (int s = 0; s < sizes.size(); s++) {
      for (int n = 0; n < counts.of()[s]; n++) {
        out.add(sizes.get(s));
      }
    }
    return out;
  }

  private List<Box> boxes(Counts counts, List<List<Piece>> packed) {
    List<Size> bins = bins(counts);
    List<Box> out = new ArrayList<>();
    for (int b = 0; b < bins.size(); b++) {
      out.add(new Box(bins.get(b), packed.get(b)));
    }
    return List.copyOf(out);
  }
}
