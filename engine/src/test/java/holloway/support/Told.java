package holloway.support;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A thing in words that must be the same, and measures that rounding may change.
 *
 * @param id what it is called in its own house, only to find it there
 * @param measures each with what it may be off by
 */
record Told(String id, String words, List<Measure> measures) {
  /** How much, and by how much it may be off. */
  record Measure(String what, long value, long slack) {
    boolean is(Measure o) {
      return Math.abs(value - o.value) <= slack;
    }
  }

  Told(String id, String words, Measure... measures) {
    this(id, words, Arrays.asList(measures));
  }

  private boolean is(Told o) {
    boolean out = true;
    for (int i = 0; i < measures.size(); i++) {
      out &= measures.get(i).is(o.measures.get(i));
    }
    return out;
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder(words);
    measures.forEach(m -> out.append(' ').append(m.what).append(' ').append(m.value));
    return out.append(" (").append(id).append(')').toString();
  }

  /** What only one of them has, or has more often: first those of {@code one}. */
  static List<List<Told>> apart(List<Told> one, List<Told> other) {
    Map<String, List<Told>> left = new TreeMap<>();
    other.forEach(t -> left.computeIfAbsent(t.words, k -> new ArrayList<>()).add(t));
    List<Told> here = new ArrayList<>();
    for (Told t : one) {
      List<Told> alike = left.getOrDefault(t.words, new ArrayList<>());
      int found = 0;
      while (found < alike.size() && !t.is(alike.get(found))) {
        found++;
      }
      if (found < alike.size()) {
        alike.remove(found);
      } else {
        here.add(t);
      }
    }
    List<Told> there = left.values().stream().flatMap(List::stream).toList();
    return List.of(here, there);
  }
}
