package holloway.routing;

import holloway.hollow.Site;
import java.util.HashMap;
import java.util.Map;

/** Nodes where crossings end in hollows that may be worked from by hand. */
final class HandNodes {
  static final int NONE = -1;

  /** By crossing: its node in hollow A, and in hollow B. */
  private final Map<String, int[]> nodes = new HashMap<>();

  void put(Site s, String hollow, int node) {
    int[] both = nodes.computeIfAbsent(s.id(), k -> new int[] {NONE, NONE});
    both[0] = hollow.equals(s.hollowA()) ? node : both[0];
    both[1] = hollow.equals(s.hollowB()) ? node : both[1];
  }

  /** The node of a crossing in a hollow, {@link #NONE} where there is none. */
  int at(Site s, String hollow) {
    int[] both = nodes.get(s.id());
    if (both == null) {
      return NONE;
    }
    return hollow.equals(s.hollowA()) ? both[0] : hollow.equals(s.hollowB()) ? both[1] : NONE;
  }
}
