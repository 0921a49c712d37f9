package holloway.fuzz;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** A YAML text as maps, lists and strings, and back. */
final class TreeText {
  private TreeText() {}

  @SuppressWarnings("unchecked")
  static Map<String, Object> read(String text) {
    LoadSettings settings = LoadSettings.builder().build();
    return (Map<String, Object>) copy(new Load(settings).loadFromString(text));
  }

  /** A deep copy whose parts can be changed. */
  static Object copy(Object value) {
    if (value instanceof Map<?, ?> m) {
      Map<String, Object> out = new LinkedHashMap<>();
      m.forEach((k, v) -> out.put(String.valueOf(k), copy(v)));
      return out;
    }
    if (value instanceof List<?> l) {
      List<Object> out = new ArrayList<>();
      l.forEach(v -> out.add(copy(v)));
      return out;
    }
    return value == null ? "" : String.valueOf(value);
  }

  /** One top key a line, everything below in braces and brackets; JSON if asked. */
  static String write(Map<String, Object> root, boolean json) {
    StringBuilder out = new StringBuilder();
    if (json) {
      flow(root, true, out);
      return out.append('\n').toString();
    }
    root.forEach(
        (k, v) -> {
          out.append(scalar(k, false)).append(": ");
          flow(v, false, out);
          out.append('\n');
        });
    return out.toString();
  }

  private static void flow(Object value, boolean json, StringBuilder out) {
    if (value instanceof Map<?, ?> m) {
      String gap = "{";
      for (Map.Entry<?, ?> e : m.entrySet()) {
        out.append(gap).append(scalar(String.valueOf(e.getKey()), json)).append(": ");
        flow(e.getValue(), json, out);
        gap = ", ";
      }
      out.append(m.isEmpty() ? "{}" : "}");
    } else if (value instanceof List<?> l) {
      String gap = "[";
      for (Object item : l) {
        out.append(gap);
        flow(item, json, out);
        gap = ", ";
      }
      out.append(l.isEmpty() ? "[]" : "]");
    } else {
      String text = String.valueOf(value);
      out.append(text.isEmpty() ? (json ? "null" : "") : scalar(text, json));
    }
  }

  private static String scalar(String text, boolean json) {
    boolean plain = !json && text.matches("[A-Za-z0-9][A-Za-z0-9 ./+'-]*") && !text.endsWith(" ");
    return plain ? text : '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
