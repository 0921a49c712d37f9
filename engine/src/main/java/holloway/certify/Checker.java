package holloway.certify;

import holloway.plan.Certificate;
import holloway.routing.RouteGraph;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;

/**
 * Recomputes the bound of a certificate and refuses one that claims more than it proves. Nothing in
 * the certificate is believed but its shares and how it divides the plans: prices, what is paid by
 * all, what is forbidden, what fits and what shares out too much is found from the graph again.
 */
public final class Checker {
  private Checker() {}

  /**
   * Judges a certificate.
   *
   * @param graph of the very house the plan is for
   */
  public static Verdict check(RouteGraph graph, Question question, Certificate certificate) {
    long bound = 0;
    try {
      Proof proof = new Proof(graph, question, certificate);
      bound = recompute(proof, certificate);
      if (certificate.bound() > bound) {
        throw new Unproven("it claims %d and proves %d".formatted(certificate.bound(), bound));
      }
      return new Verdict(bound, Optional.empty());
    } catch (Unproven e) {
      return new Verdict(bound, Optional.of("the bound is not proven: " + e.getMessage()));
    } catch (ArithmeticException e) {
      return new Verdict(0, Optional.of("the bound is not proven: its figures are too large"));
    }
  }

  /** The least of the parts, rounded up to what plans can cost. */
  private static long recompute(Proof proof, Certificate c) {
    PartTree.require(c.parts(), proof.graph.works().size());
    Set<Integer> paid = new TreeSet<>();
    for (int w : c.paidByAll()) {
      if (!proof.paidByAll(w)) {
        throw new Unproven("it takes work " + w + " as paid by every plan, and it is not");
      }
      paid.add(w);
    }
    Shared shared = new Shared(proof);
    LeastWay search = new LeastWay(proof.graph);
    long least = Long.MAX_VALUE;
    for (int i = 0; i < c.parts().size(); i++) {
      Certificate.Part part = c.parts().get(i);
      OptionalLong value = value(proof, part, paid, shared, search);
      boolean more = value.isPresent() && (part.impossible() || part.bound() > value.getAsLong());
      if (more) {
        throw new Unproven(
            "part %d claims %s and proves %d"
                .formatted(
                    i + 1,
                    part.impossible() ? "that it holds no plan" : part.bound(),
                    value.getAsLong()));
      }
      least = Math.min(least, value.orElse(Long.MAX_VALUE));
    }
    if (least == Long.MAX_VALUE) {
      throw new Unproven("it says that there is no plan at all");
    }
    long grain = proof.grain();
    return Math.multiplyExact(Math.floorDiv(Math.addExact(least, grain - 1), grain), grain);
  }

  /** What the plans of a part cost at least; empty if some run has no route in it. */
  private static OptionalLong value(
      Proof proof, Certificate.Part part, Set<Integer> always, Shared shared, LeastWay search) {
    Set<Integer> paid = new TreeSet<>(always);
    paid.addAll(part.prepaid());
    Tariff tariff =
        new Tariff(proof.graph, proof.commodities.size(), proof.directed, part.shares());
    shared.require(part.shares(), paid, tariff);
    long sum = -tariff.rents();
    for (int w : paid) {
      sum = Math.addExact(sum, proof.scale.works[w]);
    }
    Terrain terrain = new Terrain(proof.graph, proof.forbidden, part.shut());
    for (int g = 0; g < proof.commodities.size(); g++) {
      OptionalLong way = search.of(proof.commodities.get(g), new Tolls(proof, terrain, tariff, g));
      if (way.isEmpty()) {
        return OptionalLong.empty();
      }
      sum = Math.addExact(sum, way.getAsLong());
    }
    return OptionalLong.of(sum);
  }
}
