package holloway.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The string in each way that nobody sees into, as the cables are drawn: the last go leaves one
 * that comes out of both ends, for what is wanted later; before that it would only be in the way.
 */
final class StringsLeft {
  /** To take hold of, metres: both ends together. */
  private static final double TAIL_M = 0.5;

  private final Map<String, Double> longest = new TreeMap<>();
  private final Map<String, List<Double>> left = new TreeMap<>();

  /**
   * @param way in one piece
   * @param metres of a cable that was drawn through it
   * @param stringM that this go leaves
   */
  void drawn(String way, double metres, double stringM) {
    longest.merge(way, metres, Math::max);
    left.computeIfAbsent(way, k -> new ArrayList<>()).add(stringM);
  }

  List<String> faults() {
    List<String> out = new ArrayList<>();
    left.forEach(
        (way, goes) -> {
          double last = goes.get(goes.size() - 1);
          if (last < longest.get(way) + TAIL_M) {
            out.add(way + ": " + last + " m of string for " + longest.get(way) + " m");
          }
          if (goes.stream().anyMatch(g -> g != last && g > 0)) {
            out.add(way + ": a string is left, then another cable is drawn: " + goes);
          }
        });
    return out;
  }
}
