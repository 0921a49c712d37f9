package holloway.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A plan for orders that are too large to enumerate: first fit in one size, then smaller boxes. */
final class Greedy {
  private Greedy() {}

  /**
   * @param pieces longest first, each held by some size
   */
  static List<Cutting.Box> boxes(List<Cutting.Piece> pieces, List<Cutting.Size> sizes) {
    List<Cutting.Box> best = List.of();
    for (Cutting.Size size : sizes) {
      if (size.usable() >= pieces.get(0).mm()) {
        List<Cutting.Box> one = firstFit(pieces, size, sizes);
        best = best.isEmpty() || cost(one) < cost(best) ? one : best;
      }
    }
    return best;
  }

  private static long cost(List<Cutting.Box> boxes) {
    return boxes.stream().mapToLong(b -> b.size().cost()).sum();
  }

  private static List<Cutting.Box> firstFit(
      List<Cutting.Piece> pieces, Cutting.Size size, List<Cutting.Size> sizes) {
    List<List<Cutting.Piece>> open = new ArrayList<>();
    List<Long> room = new ArrayList<>();
    for (Cutting.Piece p : pieces) {
      int b = 0;
      while (b < open.size() && room.get(b) < p.mm()) {
        b++;
      }
      if (b == open.size()) {
        open.add(new ArrayList<>());
        room.add(size.usable());
      }
      open.get(b).add(p);
      room.set(b, room.get(b) - p.mm());
    }
    return open.stream().map(in -> cheapest(in, sizes)).toList();
  }

  private static Cutting.Box cheapest(List<Cutting.Piece> in, List<Cutting.Size> sizes) {
    long used = in.stream().mapToLong(Cutting.Piece::mm).sum();
    Cutting.Size size =
        sizes.stream()
            .filter(s -> s.usable() >= used)
            .min(Comparator.comparingLong(Cutting.Size::cost).thenComparing(Cutting.Size::mm))
            .orElseThrow();
    return new Cutting.Box(size, List.copyOf(in));
  }
}
