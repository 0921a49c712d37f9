package holloway.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Iterator;
import java.util.Map;

/**
 * Writes a JSON tree the same way every time: keys in the order given, two blanks a level, LF,
 * short lists and paths of points on one line.
 */
public final class JsonText {
  private static final int WIDE = 96;

  private JsonText() {}

  /** The text of a tree, ended by a line feed. */
  public static String of(JsonNode node) {
    StringBuilder out = new StringBuilder();
    write(node, "", out);
    return out.append('\n').toString();
  }

  /** A number rounded half up to so many decimals, at least one of them written. */
  public static JsonNode real(double value, int decimals) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("JSON has no number " + value);
    }
    BigDecimal exact = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    BigDecimal shorter = exact.stripTrailingZeros();
    return DecimalNode.valueOf(shorter.scale() < 1 ? shorter.setScale(1) : shorter);
  }

  private static void write(JsonNode node, String indent, StringBuilder out) {
    if (node.isObject()) {
      writeObject(node, indent, out);
    } else if (node.isArray()) {
      writeArray(node, indent, out);
    } else {
      out.append(scalar(node));
    }
  }

  private static void writeObject(JsonNode node, String indent, StringBuilder out) {
    if (node.isEmpty()) {
      out.append("{}");
      return;
    }
    String deeper = indent + "  ";
    String before = "{\n";
    for (Iterator<Map.Entry<String, JsonNode>> i = node.fields(); i.hasNext(); ) {
      Map.Entry<String, JsonNode> field = i.next();
      out.append(before).append(deeper).append(quote(field.getKey())).append(": ");
      write(field.getValue(), deeper, out);
      before = ",\n";
    }
    out.append('\n').append(indent).append('}');
  }

  private static void writeArray(JsonNode node, String indent, StringBuilder out) {
    String line = inline(node);
    if (line != null && (line.length() <= WIDE || isPath(node))) {
      out.append(line);
      return;
    }
    String deeper = indent + "  ";
    String before = "[\n";
    for (JsonNode item : node) {
      out.append(before).append(deeper);
      write(item, deeper, out);
      before = ",\n";
    }
    out.append('\n').append(indent).append(']');
  }

  private static boolean isPath(JsonNode node) {
    return !node.isEmpty() && (node.get(0).isArray() || node.get(0).isNumber());
  }

  /** The list on one line, or null when it holds an object. */
  private static String inline(JsonNode node) {
    StringBuilder out = new StringBuilder("[");
    for (JsonNode item : node) {
      String text = item.isObject() ? null : item.isArray() ? inline(item) : scalar(item);
      if (text == null) {
        return null;
      }
      out.append(out.length() > 1 ? ", " : "").append(text);
    }
    return out.append(']').toString();
  }

  private static String scalar(JsonNode node) {
    if (node.isTextual()) {
      return quote(node.textValue());
    }
    return node.isBigDecimal() ? node.decimalValue().toPlainString() : node.asText();
  }

  private static String quote(String text) {
    return TextNode.valueOf(text).toString();
  }
}
