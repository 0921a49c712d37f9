package holloway.routing;

import holloway.geometry.Point3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The places inside blind hollows where a hand can have the cable: cut-outs, mouths of conduits,
 * and what could be opened.
 */
final class Accesses {
  /**
   * @param stand last part of the {@code stand.*} key for boring through it from near by
   * @param words for a person, after "from"
   */
  record Access(int node, String hollow, Point3 at, String stand, String words, int[] works) {}

  private final Map<String, List<Access>> byHollow = new HashMap<>();

  void add(Access a) {
    byHollow.computeIfAbsent(a.hollow(), k -> new ArrayList<>()).add(a);
  }

  List<Access> in(String hollow) {
    return byHollow.getOrDefault(hollow, List.of());
  }
}
