package holloway.certify;

import holloway.plan.Certificate;
import holloway.routing.RouteGraph;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Whether no more of a work is shared out than plans pay for it: its price, or nothing where it
 * counts as paid. One work of each method of a hole may also tell what the hole costs with n
 * cables; then no n cables may have shares of more than that and the rent of the hole: a plan makes
 * the hole one way or not at all, so it is over its price by the rent at most, which is paid back.
 * Besides, each class of thicker cables may have shares of a hole's room, or of its room by the
 * methods with one own work: of those that fit they come to no more than the rent of the class.
 */
final class Shared {
  /** What may be shared out once: a work, or with directions a work at one arc. */
  private record Row(int work, int at) {}

  /** Where a share's work is a class of cables. */
  private static final Set<String> NOT_OF_A_WORK =
      Set.of(Certificate.Share.RENT, Certificate.Share.ROOM, Certificate.Share.OWN_ROOM);

  private final Proof proof;

  /** By class of cables: how many of the thinnest jackets are left out. */
  private final Map<Integer, HolePrice> holePrices = new TreeMap<>();

  Shared(Proof proof) {
    this.proof = proof;
  }

  private HolePrice holePrice(int without) {
    return holePrices.computeIfAbsent(without, w -> new HolePrice(proof, w));
  }

  void require(List<Certificate.Share> shares, Set<Integer> paid, Tariff tariff) {
    Map<Row, long[]> rows = new HashMap<>();
    Map<Integer, Long> lends = new TreeMap<>();
    for (Certificate.Share s : shares) {
      if (s.place().equals(Certificate.Share.LIFT)) {
        requireLift(s);
        lends.merge(s.work(), s.units(), Math::addExact);
        rows.computeIfAbsent(new Row(s.work(), -1), r -> new long[proof.commodities.size()]);
        continue;
      }
      if (NOT_OF_A_WORK.contains(s.place())) {
        continue;
      }
      boolean arc = s.place().equals("arc") || s.place().equals("into");
      long[] byGroup =
          rows.computeIfAbsent(
              new Row(s.work(), arc ? s.at() : -1), r -> new long[proof.commodities.size()]);
      byGroup[s.group()] = Math.addExact(byGroup[s.group()], s.units());
    }
    Map<Integer, Set<Integer>> tellers = new TreeMap<>();
    rows.forEach(
        (row, byGroup) -> {
          long price = paid.contains(row.work()) ? 0 : proof.scale.works[row.work()];
          if (lends.containsKey(row.work())) {
            requireLender(row.work(), price, sum(byGroup), lends.get(row.work()));
          } else if (sum(byGroup) > price) {
            requireTeller(row.work(), price, byGroup, tariff);
            int hole = proof.meetings.hole[row.work()];
            tellers.computeIfAbsent(hole, h -> new TreeSet<>()).add(row.work());
          }
        });
    tellers.forEach((hole, works) -> requireOneEach(proof.graph.holes().get(hole), works));
    Map<Integer, Set<Integer>> roomers = roomers(tariff);
    for (RouteGraph.Hole h : proof.graph.holes()) {
      requireRoom(h, tariff, tellers.containsKey(h.id()));
      requireOwnRooms(h, tariff, roomers.getOrDefault(h.id(), Set.of()));
    }
  }

  /** By hole those of its own works that tell the room some methods have. */
  private Map<Integer, Set<Integer>> roomers(Tariff tariff) {
    Map<Integer, Set<Integer>> out = new TreeMap<>();
    for (int w = 0; w < proof.meetings.hole.length; w++) {
      if (!tariff.ownRoom(w).isEmpty()) {
        if (proof.meetings.hole[w] < 0) {
          throw new Unproven("work %d belongs to no hole alone, so it has no room".formatted(w));
        }
        out.computeIfAbsent(proof.meetings.hole[w], h -> new TreeSet<>()).add(w);
      }
    }
    return out;
  }

  private void requireTeller(int work, long price, long[] byGroup, Tariff tariff) {
    int hole = proof.meetings.hole[work];
    if (proof.directed
        || hole < 0
        || !holePrice(0)
            .covers(
                Sizes.with(proof.graph.holes().get(hole), work),
                Math.addExact(tariff.lent(work, 0), Math.addExact(price, tariff.rent(hole, 0))),
                byGroup)) {
      throw new Unproven(
          "it shares out %d units of %s, which costs %d"
              .formatted(sum(byGroup), proof.graph.works().get(work).name(), price));
    }
  }

  /**
   * A plan that makes the hole with its own work opens the lender too, once for all holes that it
   * lends to, and pays for it besides; so no method may have the own work without the lender.
   */
  private void requireLift(Certificate.Share s) {
    boolean known =
        s.units() >= 0
            && s.group() >= 0
            && s.at() >= 0
            && s.at() < proof.meetings.hole.length
            && s.work() >= 0
            && s.work() < proof.meetings.hole.length;
    int hole = known ? proof.meetings.hole[s.at()] : -1;
    boolean always =
        hole >= 0
            && s.at() != s.work()
            && proof.graph.holes().get(hole).methods().stream()
                .map(RouteGraph.Method::works)
                .filter(works -> Arrays.stream(works).anyMatch(w -> w == s.at()))
                .allMatch(works -> Arrays.stream(works).anyMatch(w -> w == s.work()));
    if (proof.directed || !always) {
      throw new Unproven("work %d lends nothing to work %d".formatted(s.work(), s.at()));
    }
  }

  private void requireLender(int work, long price, long shared, long lent) {
    if (Math.addExact(shared, lent) > price) {
      throw new Unproven(
          "it shares out and lends %d units of %s, which costs %d"
              .formatted(shared + lent, proof.graph.works().get(work).name(), price));
    }
  }

  /**
   * A plan pays for a hole what its cables cost beyond the works, which is told once: by the room
   * or by a teller, and the rent is paid back once.
   */
  private void requireRoom(RouteGraph.Hole h, Tariff tariff, boolean told) {
    tariff
        .room(h.id())
        .forEach(
            (without, byGroup) -> {
              if (without == 0 && told) {
                throw new Unproven(
                    "it shares out the room of %s, of which a work tells already"
                        .formatted(h.site()));
              }
              requireWithin(Sizes.ofAny(h), without, tariff.rent(h.id(), without), byGroup);
            });
  }

  private void requireWithin(Sizes sizes, int without, long rent, long[] byGroup) {
    HolePrice price = holePrice(without);
    boolean counts =
        IntStream.range(0, byGroup.length).allMatch(g -> byGroup[g] == 0 || price.counts(g));
    boolean within =
        without == 0 ? price.covers(sizes, rent, byGroup) : price.fitWithin(sizes, rent, byGroup);
    if (!counts || !within) {
      throw new Unproven(
          "it shares out %d units of the room of %s".formatted(sum(byGroup), sizes.hole().site()));
    }
  }

  /**
   * A plan makes the hole by one method, so the rent of a class covers its room by each; but not
   * twice by one method, nor the room by any method besides.
   */
  private void requireOwnRooms(RouteGraph.Hole h, Tariff tariff, Set<Integer> works) {
    Map<Integer, Set<Integer>> byClass = new TreeMap<>();
    for (int work : works) {
      tariff
          .ownRoom(work)
          .forEach(
              (without, byGroup) -> {
                if (without == 0 || tariff.room(h.id()).containsKey(without)) {
                  throw new Unproven("it shares out the room of %s twice".formatted(h.site()));
                }
                byClass.computeIfAbsent(without, c -> new TreeSet<>()).add(work);
                long rent = Math.addExact(tariff.rent(h.id(), without), tariff.lent(work, without));
                requireWithin(Sizes.with(h, work), without, rent, byGroup);
              });
    }
    byClass.values().forEach(some -> requireOneEach(h, some));
  }

  /** Two tellers in one method would count the larger bit twice. */
  private static void requireOneEach(RouteGraph.Hole h, Set<Integer> works) {
    for (RouteGraph.Method m : h.methods()) {
      if (Arrays.stream(m.works()).distinct().filter(works::contains).count() > 1) {
        throw new Unproven("two works of one method tell what more cables cost in " + h.site());
      }
    }
  }

  private static long sum(long[] units) {
    long sum = 0;
    for (long u : units) {
      sum = Math.addExact(sum, u);
    }
    return sum;
  }
}
