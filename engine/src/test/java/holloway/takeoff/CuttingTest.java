package holloway.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The cutting plan against every way of sharing the pieces out, and by hand. */
class CuttingTest {
  private static List<Cutting.Piece> pieces(long... mm) {
    return IntStream.range(0, mm.length)
        .mapToObj(i -> new Cutting.Piece("run " + i, mm[i]))
        .toList();
  }

  /** Cost is the length bought. */
  private static Cutting.Size metres(long m) {
    return new Cutting.Size(m * 1000, m);
  }

  @Test
  void fivePercentAreKeptBack() {
    // 105 m bought are 100 m to use: 100 m just fit, a millimetre more takes the next box.
    List<Cutting.Size> sizes = List.of(metres(105), metres(210));
    assertEquals(105, Cutting.of(pieces(60_000, 40_000), sizes).cost());
    assertEquals(210, Cutting.of(pieces(60_000, 40_001), sizes).cost());
  }

  @Test
  void byHand() {
    // Usable 100 and 200. Pieces 90, 60, 60, 40, 40: 290 in all, so at least 315 m are bought
    // (105 + 210): 100 = 60 + 40 and 200 = 90 + 60 + 40, ten left. 210 + 105 holds it.
    Cutting.Result r =
        Cutting.of(
            pieces(90_000, 60_000, 60_000, 40_000, 40_000), List.of(metres(105), metres(210)));
    assertEquals(315, r.cost());
    assertTrue(r.proven());
    // 70, 70, 70: 210 m would do by length, but no two go into one 105 m box and 200 holds two.
    Cutting.Result three = Cutting.of(pieces(70_000, 70_000, 70_000), List.of(metres(105)));
    assertEquals(3, three.boxes().size());
    assertTrue(three.proven());
  }

  @Test
  void whatNoBoxHoldsIsSaid() {
    Cutting.Result r = Cutting.of(pieces(100_001, 5_000), List.of(metres(105)));
    assertEquals(List.of("run 0"), r.tooLong().stream().map(Cutting.Piece::run).toList());
    assertEquals(105, r.cost());
  }

  @Test
  void againstEveryWayOfSharingOut() {
    Random random = new Random(20261126);
    for (int round = 0; round < 400; round++) {
      List<Cutting.Size> sizes = new ArrayList<>();
      for (int s = 1 + random.nextInt(3); s > 0; s--) {
        sizes.add(new Cutting.Size(1000L * (20 + random.nextInt(90)), 1 + random.nextInt(120)));
      }
      long most = sizes.stream().mapToLong(Cutting.Size::usable).max().orElseThrow();
      int n = 1 + random.nextInt(7);
      long[] mm = random.longs(n, 1000, most + 1).toArray();
      Cutting.Result r = Cutting.of(pieces(mm), sizes);
      long exact = cheapest(mm, 0, new ArrayList<>(), sizes, NEVER);
      assertEquals(exact, r.cost(), "round " + round);
      assertEquals(exact, r.bound(), "round " + round);
      checkHolds(r, n);
      long metre = 1 + random.nextInt(4);
      Cutting.Result cut = Cutting.of(pieces(mm), sizes, OptionalLong.of(metre));
      long least = cheapest(mm, 0, new ArrayList<>(), sizes, metre);
      assertEquals(least, cut.cost(), "round " + round + ", " + metre + " a metre");
      assertEquals(least, cut.bound(), "round " + round + ", " + metre + " a metre");
      checkHolds(cut, n);
    }
  }

  /** 1 m of 76: the shop cuts two metres, because one less 5 % is too short. */
  @Test
  void aShortLengthIsCutByTheShop() {
    List<Cutting.Size> box = List.of(metres(76));
    Cutting.Result one = Cutting.of(pieces(1_000), box, OptionalLong.of(3));
    assertEquals(6, one.cost());
    assertTrue(one.proven() && one.boxes().get(0).cut());
    // 20 pieces of a metre cut would count 120, the box is less
    long[] many = new long[20];
    java.util.Arrays.fill(many, 1_000);
    assertEquals(76, Cutting.of(pieces(many), box, OptionalLong.of(3)).cost());
    // a box for what fills it, the rest cut: 72 m and 1 m
    Cutting.Result both = Cutting.of(pieces(72_000, 1_000), box, OptionalLong.of(3));
    assertEquals(82, both.cost());
    // longer than any box
    assertEquals(List.of(), Cutting.of(pieces(80_000), box, OptionalLong.of(3)).tooLong());
    assertEquals(84 * 3, Cutting.of(pieces(80_000), box, OptionalLong.of(3)).cost());
    // no boxes at all
    assertEquals(84 * 3, Cutting.of(pieces(80_000), List.of(), OptionalLong.of(3)).cost());
  }

  /**
   * Forty pieces of 8 to 39 m: no less than 5 % over what is used can be bought, and the plan comes
   * within 3 % of that, though not every packing can be tried.
   */
  @Test
  void aLargeOrderIsBoundNearItsCost() {
    Random random = new Random(20261127);
    long[] mm = random.longs(40, 8_000, 39_000).toArray();
    List<Cutting.Size> boxes = List.of(metres(152), metres(76));
    Cutting.Result r = Cutting.of(pieces(mm), boxes, OptionalLong.of(3));
    checkHolds(r, 40);
    long used = java.util.Arrays.stream(mm).sum();
    assertTrue(r.bound() * 100_000 >= used * 105, r.bound() + " m for " + used + " mm");
    assertTrue(r.cost() * 100 <= r.bound() * 103, r.cost() + " against " + r.bound());
  }

  private static void checkHolds(Cutting.Result r, int n) {
    assertEquals(n, r.boxes().stream().mapToInt(b -> b.pieces().size()).sum());
    assertEquals(
        n,
        r.boxes().stream()
            .flatMap(b -> b.pieces().stream())
            .map(Cutting.Piece::run)
            .distinct()
            .count());
    // 5 % over what is used, worked out the other way round than in the class.
    r.boxes().forEach(b -> assertTrue(b.used() * 105 <= b.size().mm() * 100, b.toString()));
  }

  private static final long NEVER = 1_000_000;

  /**
   * Every partition of the pieces; each part takes the cheapest size that holds it, or the shop
   * cuts it, whole metres and 5 % over (a part of several is no cheaper cut than each by itself, so
   * only parts of one are).
   */
  private static long cheapest(
      long[] mm, int i, List<List<Long>> parts, List<Cutting.Size> sizes, long metre) {
    if (i == mm.length) {
      long sum = 0;
      for (List<Long> part : parts) {
        long used = part.stream().mapToLong(Long::longValue).sum();
        long best = part.size() == 1 ? cut(used, metre) : NEVER;
        for (Cutting.Size s : sizes) {
          best = used * 105 <= s.mm() * 100 ? Math.min(best, s.cost()) : best;
        }
        sum += best;
      }
      return sum;
    }
    long best = Long.MAX_VALUE;
    for (List<Long> part : List.copyOf(parts)) {
      part.add(mm[i]);
      best = Math.min(best, cheapest(mm, i + 1, parts, sizes, metre));
      part.remove(part.size() - 1);
    }
    parts.add(new ArrayList<>(List.of(mm[i])));
    best = Math.min(best, cheapest(mm, i + 1, parts, sizes, metre));
    parts.remove(parts.size() - 1);
    return best;
  }

  private static long cut(long mm, long metre) {
    long n = 1;
    while (n * 1000 * 100 < mm * 105) {
      n++;
    }
    return Math.min(NEVER, n * metre);
  }

  @Test
  void aLargeOrderKeepsATrueBound() {
    Random random = new Random(7);
    long[] mm = random.longs(60, 5_000, 45_000).toArray();
    Cutting.Result r = Cutting.of(pieces(mm), List.of(metres(76), metres(152), metres(305)));
    long wanted = java.util.Arrays.stream(mm).sum();
    assertTrue(r.bound() <= r.cost());
    assertTrue(r.cost() * 1000 * 100 >= wanted * 105, "less bought than is used");
    assertTrue(r.cost() <= r.bound() * 1.1, r.cost() + " against " + r.bound());
    checkHolds(r, 60);
  }
}
