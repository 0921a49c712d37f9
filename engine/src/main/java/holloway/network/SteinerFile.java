package holloway.network;

import holloway.catalog.Cable;
import holloway.units.Length;
import java.util.List;
import java.util.TreeSet;

/**
 * A Steiner tree in the lines of the SteinLib collection (T. Koch, A. Martin, S. Voss, 2001): each
 * edge is a work of its own, travel costs nothing, the first terminal is where all runs start.
 */
final class SteinerFile {
  private static final Cable THREAD =
      new Cable("thread", Length.ZERO, Length.ZERO, Length.ZERO, false, false, false, "reckoned");

  private SteinerFile() {}

  static Instance read(List<String> lines) {
    NetDraft draft = new NetDraft();
    TreeSet<Integer> terminals = new TreeSet<>();
    for (int i = 0; i < lines.size(); i++) {
      Fields f = Fields.of(i + 1, lines.get(i));
      if (f.word().equals("E")) {
        draft.edge(f.whole(1, 0), f.whole(2, 0), f.cost(3));
      } else if (f.word().equals("T")) {
        terminals.add(f.whole(1, 0));
      } else if (f.word().equals("A")) {
        throw f.wrong("arcs of directed Steiner trees are not read, only edges (E)");
      }
    }
    if (terminals.isEmpty()) {
      throw new NetworkException("no line 'T node' names a terminal");
    }
    int first = terminals.first();
    for (int t : terminals) {
      if (!draft.hasNode(t)) {
        throw new NetworkException("terminal " + t + " is on no edge");
      }
      if (t != first) {
        draft.run("run " + t, first, t, THREAD);
      }
    }
    return draft.finish();
  }
}
