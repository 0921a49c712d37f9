package holloway.support;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * The same YAML with the keys of every map in another order, each on a line of its own, so that
 * lines and columns change too. Lists keep their order; words keep their quotes.
 */
public final class ShuffledKeys {
  private final Random random;
  private final StringBuilder out = new StringBuilder();

  private ShuffledKeys(long seed) {
    random = new Random(seed);
  }

  /** The same text for the same seed; comments are lost. */
  public static String of(String yaml, long seed) {
    Node root = new Compose(LoadSettings.builder().build()).composeString(yaml).orElseThrow();
    ShuffledKeys s = new ShuffledKeys(seed);
    s.write(root, 0);
    return s.out.append('\n').toString();
  }

  private void write(Node node, int depth) {
    if (node instanceof ScalarNode s) {
      out.append(' ').append(word(s));
    } else if (node instanceof MappingNode m) {
      map(m, depth);
    } else {
      list((SequenceNode) node, depth);
    }
  }

  private void map(MappingNode map, int depth) {
    List<NodeTuple> keys = new ArrayList<>(map.getValue());
    Collections.shuffle(keys, random);
    out.append(keys.isEmpty() ? " {}" : "");
    for (NodeTuple t : keys) {
      line(depth).append(word((ScalarNode) t.getKeyNode())).append(':');
      write(t.getValueNode(), depth + 1);
    }
  }

  private void list(SequenceNode list, int depth) {
    out.append(list.getValue().isEmpty() ? " []" : "");
    for (Node n : list.getValue()) {
      line(depth).append('-');
      write(n, depth + 1);
    }
  }

  private StringBuilder line(int depth) {
    return out.append('\n').append("  ".repeat(depth));
  }

  private static String word(ScalarNode s) {
    return s.getScalarStyle() == ScalarStyle.PLAIN
        ? s.getValue()
        : '"' + s.getValue().replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
