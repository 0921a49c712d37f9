package holloway.housefile;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Prints maps, lists and texts as YAML: top keys as lines, what lies in them in braces. */
final class TreePrinter {
  private static final Pattern PLAIN =
      Pattern.compile("[A-Za-z0-9]([A-Za-z0-9 ./+'-]*[A-Za-z0-9'])?");
  private static final Pattern MEANS_NOTHING = Pattern.compile("(?i)null|~");

  private final StringBuilder out = new StringBuilder();

  private TreePrinter() {}

  /** Empty maps and lists at the top are left out. */
  static String print(Map<String, Object> root) {
    TreePrinter p = new TreePrinter();
    root.forEach(p::top);
    return p.out.toString();
  }

  private void top(String key, Object value) {
    if (value instanceof List<?> l) {
      out.append(l.isEmpty() ? "" : scalar(key) + ":\n");
      l.forEach(item -> line("  - ", item));
    } else if (value instanceof Map<?, ?> m
        && m.values().stream().anyMatch(Map.class::isInstance)) {
      out.append(scalar(key)).append(":\n");
      m.forEach((k, v) -> line("  " + scalar(String.valueOf(k)) + ": ", v));
    } else if (!(value instanceof Map<?, ?> m) || !m.isEmpty()) {
      line(scalar(key) + ": ", value);
    }
  }

  private void line(String begin, Object value) {
    out.append(begin);
    flow(value);
    out.append('\n');
  }

  private void flow(Object value) {
    if (value instanceof Map<?, ?> m) {
      String gap = "{ ";
      for (Map.Entry<?, ?> e : m.entrySet()) {
        out.append(gap).append(scalar(String.valueOf(e.getKey()))).append(": ");
        flow(e.getValue());
        gap = ", ";
      }
      out.append(m.isEmpty() ? "{}" : " }");
    } else if (value instanceof List<?> l) {
      String gap = "[";
      for (Object item : l) {
        out.append(gap);
        flow(item);
        gap = ", ";
      }
      out.append(l.isEmpty() ? "[]" : "]");
    } else {
      out.append(scalar(String.valueOf(value)));
    }
  }

  /** Quoted where YAML would read something else; letters that do not print are escaped. */
  private static String scalar(String text) {
    if (PLAIN.matcher(text).matches() && !MEANS_NOTHING.matcher(text).matches()) {
      return text;
    }
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
              } else if (c < ' ' || c >= 0x7f) {
                quoted.append("\\U%08X".formatted(c));
              } else {
                quoted.appendCodePoint(c);
              }
            });
    return quoted.append('"').toString();
  }
}
