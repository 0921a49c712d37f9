package holloway.survey;

import java.util.ArrayList;
import java.util.List;

/**
 * How the loops of one or more networks close.
 *
 * @param lone verdicts on measurements that stand out although each loop through them closes
 */
record Closures(List<Misclosure> misclosures, List<SharedOut> shared, List<String> lone) {
  Closures {
    misclosures = List.copyOf(misclosures);
    shared = List.copyOf(shared);
    lone = List.copyOf(lone);
  }

  Closures and(Closures o) {
    return new Closures(
        joined(misclosures, o.misclosures), joined(shared, o.shared), joined(lone, o.lone));
  }

  private static <T> List<T> joined(List<T> a, List<T> b) {
    List<T> all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }
}
