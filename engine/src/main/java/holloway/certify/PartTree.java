package holloway.certify;

import holloway.plan.Certificate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Whether the parts of a certificate leave out no plan: each way a work may go is in some part. */
final class PartTree {
  private PartTree() {}

  static void require(List<Certificate.Part> parts, int works) {
    for (Certificate.Part p : parts) {
      for (int w : p.prepaid()) {
        if (p.shut().contains(w)) {
          throw new Unproven("a part both opens and shuts work " + w);
        }
      }
      if (p.prepaid().stream().anyMatch(w -> w < 0 || w >= works)
          || p.shut().stream().anyMatch(w -> w < 0 || w >= works)) {
        throw new Unproven("a part names a work that the house has not");
      }
    }
    split(parts, new ArrayList<>());
  }

  /** Parts that agree on the works decided so far; they have to split further by one and all. */
  private static void split(List<Certificate.Part> parts, List<Integer> decided) {
    if (parts.isEmpty()) {
      throw new Unproven("no part speaks of the plans that open or shut works " + decided);
    }
    if (parts.stream().anyMatch(p -> p.prepaid().size() + p.shut().size() == decided.size())) {
      return;
    }
    Optional<Integer> next = common(parts, decided);
    if (next.isEmpty()) {
      throw new Unproven("its parts do not divide the plans among them");
    }
    int work = next.get();
    List<Integer> further = new ArrayList<>(decided);
    further.add(work);
    split(parts.stream().filter(p -> p.prepaid().contains(work)).toList(), further);
    split(parts.stream().filter(p -> p.shut().contains(work)).toList(), further);
  }

  private static Optional<Integer> common(List<Certificate.Part> parts, List<Integer> decided) {
    TreeMap<Integer, Integer> count = new TreeMap<>();
    for (Certificate.Part p : parts) {
      p.prepaid().stream().distinct().forEach(w -> count.merge(w, 1, Integer::sum));
      p.shut().stream().distinct().forEach(w -> count.merge(w, 1, Integer::sum));
    }
    return count.keySet().stream()
        .filter(w -> count.get(w) == parts.size() && !decided.contains(w))
        .findFirst();
  }
}
