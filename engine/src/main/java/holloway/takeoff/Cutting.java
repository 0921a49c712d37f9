package holloway.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.PriorityQueue;
import java.util.function.Predicate;

/**
 * Which boxes to buy, which pieces to cut from which, and which to have cut by the metre, at the
 * least cost: sets of boxes are tried in order of what any plan with them costs at least, each by
 * an exact packing, until that is as much as the best found. Work is limited by counts; where a
 * limit is met the bound stays true and the plan says that it may be beaten. The method is ours:
 * cutting stock with several stock lengths, small enough to be enumerated.
 */
final class Cutting {
  /** Cable that is lost in each length bought, trade-facts G4: 5 % over what is used. */
  static final long WASTE_PERCENT = 5;

  private static final int MOST_SETS = 20_000;
  private static final long MOST_WORK = 3_000_000;

  /** A length to cut from one box, whole millimetres. */
  record Piece(String run, long mm) {
    /** Whole metres to ask for where the shop cuts it, waste added. */
    long metres() {
      return (mm * (100 + WASTE_PERCENT) + 99_999) / 100_000;
    }
  }

  /** A length sold; {@code cost} in any one unit, above 0. */
  record Size(long mm, long cost) {
    /** What may be cut from it, waste taken off. */
    long usable() {
      return mm * 100 / (100 + WASTE_PERCENT);
    }
  }

  /**
   * One box bought and what is cut from it, in the order given.
   *
   * @param cut by the shop, by the metre, for one piece
   */
  record Box(Size size, List<Piece> pieces, boolean cut) {
    Box(Size size, List<Piece> pieces) {
      this(size, pieces, false);
    }

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
      return Cutting.cost(boxes);
    }

    boolean proven() {
      return bound == cost();
    }
  }

  /**
   * How many of each size.
   *
   * @param whole no more boxes are bought, else at least what these are
   * @param bound nothing that holds the pieces with these boxes and the rest by the metre costs
   *     less; unless it is whole, with more of the last size or of later ones too
   */
  private record Counts(
      int[] of, int last, long cost, int boxes, long usable, boolean whole, long bound) {
    Counts asWhole(long bound) {
      return new Counts(of, last, cost, boxes, usable, true, bound);
    }
  }

  private final List<Size> sizes;
  private final List<Piece> pieces;
  private final List<Piece> tooLong;
  private final long wanted;

  /** Price of each piece by the metre. */
  private final long[] loose;

  private final Packing.Rate rate;

  private final OptionalLong metre;

  private Cutting(List<Piece> all, List<Size> sizes, OptionalLong metre) {
    this.sizes =
        sizes.stream()
            .sorted(Comparator.comparingLong(Size::mm).reversed().thenComparing(Size::cost))
            .toList();
    this.metre = metre;
    long most = this.sizes.stream().mapToLong(Size::usable).max().orElse(0);
    Comparator<Piece> longest =
        Comparator.comparingLong(Piece::mm).reversed().thenComparing(Piece::run);
    Predicate<Piece> held = p -> metre.isPresent() || p.mm() <= most;
    this.pieces = all.stream().filter(held).sorted(longest).toList();
    this.tooLong = all.stream().filter(held.negate()).sorted(longest).toList();
    this.wanted = pieces.stream().mapToLong(Piece::mm).sum();
    this.loose = pieces.stream().mapToLong(this::loose).toArray();
    this.rate = Packing.Rate.of(pieces, loose);
  }

  static Result of(List<Piece> pieces, List<Size> sizes) {
    return of(pieces, sizes, OptionalLong.empty());
  }

  /**
   * @param metre what one metre costs that the shop cuts off its own drum, if it does that
   */
  static Result of(List<Piece> pieces, List<Size> sizes, OptionalLong metre) {
    return new Cutting(pieces, sizes, metre).solve();
  }

  private long loose(Piece p) {
    return metre.isPresent() ? p.metres() * metre.getAsLong() : Packing.NEVER;
  }

  private Result solve() {
    if (pieces.isEmpty()) {
      return new Result(List.of(), 0, tooLong);
    }
    PriorityQueue<Counts> queue =
        new PriorityQueue<>(
            Comparator.comparingLong(Counts::bound)
                .thenComparing(Counts::whole)
                .thenComparing(Counts::cost)
                .thenComparing(Counts::boxes)
                .thenComparing(Counts::of, java.util.Arrays::compare));
    queue.add(counts(new int[sizes.size()], 0, 0, 0, 0));
    List<Box> best = metre.isPresent() ? pieces.stream().map(this::byTheMetre).toList() : List.of();
    long least = metre.isPresent() ? cost(best) : Packing.NEVER;
    long undecided = Long.MAX_VALUE;
    long reached = 0;
    long work = 0;
    for (int tried = 0; tried < MOST_SETS && work < MOST_WORK && !queue.isEmpty(); tried++) {
      Counts next = queue.remove();
      reached = next.bound();
      if (reached >= least) {
        return new Result(best, Math.min(least, undecided), tooLong);
      }
      if (!next.whole()) {
        long rest = rate.of(wanted - next.usable());
        if (rest < Packing.NEVER) {
          queue.add(next.asWhole(next.cost() + rest));
        }
        addOneMore(next, queue);
      } else {
        Packing packing = new Packing(pieces, bins(next), loose);
        Optional<Packing.Packed> packed = packing.cheapest(least - next.cost());
        if (packed.isPresent()) {
          best = boxes(next, packed.get());
          least = next.cost() + packed.get().spent();
        }
        work += packing.tries();
        undecided = packing.gaveUp() ? Math.min(undecided, reached) : undecided;
      }
    }
    if (queue.isEmpty() && !best.isEmpty()) {
      return new Result(best, Math.min(least, undecided), tooLong);
    }
    List<Box> fallback = greedy();
    boolean better = best.isEmpty() || cost(fallback) < least;
    return new Result(better ? fallback : best, Math.min(reached, undecided), tooLong);
  }

  private static long cost(List<Box> boxes) {
    return boxes.stream().mapToLong(b -> b.size().cost()).sum();
  }

  private Box byTheMetre(Piece p) {
    return new Box(new Size(p.metres() * 1000, loose(p)), List.of(p), true);
  }

  /** First fit, and each box against what it holds by the metre. */
  private List<Box> greedy() {
    long most = sizes.stream().mapToLong(Size::usable).max().orElse(0);
    List<Piece> held = pieces.stream().filter(p -> p.mm() <= most).toList();
    List<Box> out = new ArrayList<>();
    pieces.stream().filter(p -> p.mm() > most).map(this::byTheMetre).forEach(out::add);
    for (Box b : held.isEmpty() ? List.<Box>of() : Greedy.boxes(held, sizes)) {
      List<Box> cut =
          metre.isPresent() ? b.pieces().stream().map(this::byTheMetre).toList() : List.of();
      out.addAll(!cut.isEmpty() && cost(cut) < b.size().cost() ? cut : List.of(b));
    }
    return List.copyOf(out);
  }

  /** Each set is reached once: sizes are added in order. No more boxes than pieces are wanted. */
  private void addOneMore(Counts from, PriorityQueue<Counts> queue) {
    for (int s = from.last(); s < sizes.size() && from.boxes() < pieces.size(); s++) {
      int[] of = from.of().clone();
      of[s]++;
      Size size = sizes.get(s);
      queue.add(
          counts(
              of, s, from.cost() + size.cost(), from.boxes() + 1, from.usable() + size.usable()));
    }
  }

  /**
   * What no box of the set holds costs at least what a length costs in the best of those to come.
   */
  private Counts counts(int[] of, int last, long cost, int boxes, long usable) {
    long need = Math.max(0, wanted - usable);
    long onward = rate.of(need);
    for (int s = last; s < sizes.size(); s++) {
      long whole = sizes.get(s).usable();
      onward = Math.min(onward, (need * sizes.get(s).cost() + whole - 1) / whole);
    }
    return new Counts(of, last, cost, boxes, usable, false, cost + onward);
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

  private List<Box> boxes(Counts counts, Packing.Packed packed) {
    List<Size> bins = bins(counts);
    List<Box> out = new ArrayList<>();
    for (int b = 0; b < bins.size(); b++) {
      out.add(new Box(bins.get(b), packed.boxes().get(b)));
    }
    packed.loose().forEach(p -> out.add(byTheMetre(p)));
    return List.copyOf(out);
  }
}
