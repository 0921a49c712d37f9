package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Nets of lines that were laid by hand in hollows of this house before, at the same prices. A net
 * hangs on its hollow, the works of the stand there, and where it is entered: where those are what
 * they were it is drawn again. May be used on several threads.
 */
final class NetMemory {
  /**
   * An entry without its number; {@code rank} among the entries by number decides between equals.
   */
  private record Into(
      String node, Point3 nodeAt, Point3 at, boolean hub, boolean overhead, int rank) {}

  private record Asked(Hollow hollow, List<Into> entries, List<String> stand) {}

  /** What was drawn, in order. */
  static final class Tape {
    private sealed interface Stroke {}

    private record Node(String name, Point3 at, List<String> works) implements Stroke {}

    private record Edge(String a, String b, Laid laid, long seen, int ways) implements Stroke {}

    private final List<Stroke> strokes = new ArrayList<>();

    void node(String name, Point3 at, List<String> works) {
      strokes.add(new Node(name, at, works));
    }

    void edge(String a, String b, Laid laid, long seen, int ways) {
      strokes.add(new Edge(a, b, laid, seen, ways));
    }

    private void drawIn(GraphDraft draft) {
      for (Stroke s : strokes) {
        if (s instanceof Node n) {
          int[] works = n.works().stream().mapToInt(draft::work).toArray();
          draft.node(n.name(), n.at(), works);
        } else if (s instanceof Edge e) {
          draft.edge(e.a(), e.b(), e.laid(), e.seen(), e.ways());
        }
      }
    }
  }

  private final Remembered<Asked, Tape> known = new Remembered<>();
  final LayMemory floors = new LayMemory();

  /**
   * Draws the net of a hollow.
   *
   * @param stand works of the stand there
   * @param lay draws it where it is not known
   */
  void net(GraphDraft draft, Hollow h, List<Entry> entries, int[] stand, Runnable lay) {
    Asked now = new Asked(h, into(draft, entries), draft.workNames(stand));
    boolean[] drawn = {false};
    Tape tape =
        known.of(
            h.id(),
            now,
            (before, then) -> {
              drawn[0] = true;
              return draft.taken(lay);
            });
    if (!drawn[0]) {
      tape.drawIn(draft);
    }
  }

  private static List<Into> into(GraphDraft draft, List<Entry> entries) {
    List<Integer> order = new ArrayList<>(entries.stream().map(Entry::node).toList());
    Collections.sort(order);
    List<Into> out = new ArrayList<>();
    for (Entry e : entries) {
      RouteGraph.Node n = draft.nodes.get(e.node());
      int rank = Collections.binarySearch(order, e.node());
      out.add(new Into(n.name(), n.at(), e.at(), e.hub(), e.overhead(), rank));
    }
    return out;
  }
}
