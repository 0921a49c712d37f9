package holloway.plan;

import com.fasterxml.jackson.databind.JsonNode;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A place in a JSON tree that knows its path, so that every complaint names the field. */
record JsonCursor(JsonNode node, String path) {
  /** Coordinates beyond this are a slip of the pen, millimetres. */
  private static final double MOST_MM = 1e9;

  JsonCursor object(String key) {
    JsonCursor field = field(key);
    return field.node.isObject() ? field : field.<JsonCursor>wrong("an object");
  }

  JsonCursor requireObject() {
    return node.isObject() ? this : this.<JsonCursor>wrong("an object");
  }

  String text(String key) {
    JsonCursor f = field(key);
    return f.node.isTextual() ? f.node.textValue() : f.<String>wrong("text");
  }

  long whole(String key) {
    return field(key).asWhole();
  }

  int count(String key) {
    return field(key).asCount();
  }

  double number(String key) {
    return field(key).asNumber();
  }

  boolean flag(String key) {
    JsonCursor f = field(key);
    return f.node.isBoolean() ? f.node.booleanValue() : f.<Boolean>wrong("true or false");
  }

  /** Empty when the key is absent or null. */
  <T> Optional<T> optional(String key, Function<JsonCursor, T> each) {
    JsonNode value = node.get(key);
    return value == null || value.isNull()
        ? Optional.empty()
        : Optional.of(each.apply(new JsonCursor(value, at(key))));
  }

  <T> List<T> list(String key, Function<JsonCursor, T> each) {
    return field(key).items(each);
  }

  List<String> words(String key) {
    return list(key, JsonCursor::asText);
  }

  String asText() {
    return node.isTextual() ? node.textValue() : this.<String>wrong("text");
  }

  boolean asTruth() {
    return node.isBoolean() ? node.booleanValue() : this.<Boolean>wrong("true or false");
  }

  double asNumber() {
    double v = node.isNumber() ? node.doubleValue() : Double.NaN;
    return Double.isFinite(v) ? v : this.<Double>wrong("a number");
  }

  long asWhole() {
    return node.isIntegralNumber() && node.canConvertToLong()
        ? node.longValue()
        : this.<Long>wrong("a whole number");
  }

  int asCount() {
    long v = asWhole();
    return v >= 0 && v <= Integer.MAX_VALUE
        ? (int) v
        : this.<Integer>wrong("a whole number from 0");
  }

  Point3 asPoint() {
    if (!node.isArray() || node.size() != 3) {
      return wrong("a point [x, y, z] in millimetres");
    }
    List<Long> nm = items(JsonCursor::asNanometres);
    return new Point3(nm.get(0), nm.get(1), nm.get(2));
  }

  Point2 asPlanPoint() {
    if (!node.isArray() || node.size() != 2) {
      return wrong("a point [x, y] in millimetres");
    }
    List<Long> nm = items(JsonCursor::asNanometres);
    return new Point2(nm.get(0), nm.get(1));
  }

  private long asNanometres() {
    double mm = asNumber();
    return Math.abs(mm) <= MOST_MM ? Math.round(mm * 1e6) : this.<Long>wrong("millimetres");
  }

  <T> List<T> items(Function<JsonCursor, T> each) {
    if (!node.isArray()) {
      return wrong("a list");
    }
    List<T> out = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      out.add(each.apply(new JsonCursor(node.get(i), path + "[" + i + "]")));
    }
    return List.copyOf(out);
  }

  JsonCursor field(String key) {
    JsonNode value = node.get(key);
    if (value == null) {
      throw new PlanJsonException(at(key) + " is missing");
    }
    return new JsonCursor(value, at(key));
  }

  <T> T wrong(String expected) {
    String read = node.toString();
    throw new PlanJsonException(
        "%s: read %s, expected %s"
            .formatted(
                path.isEmpty() ? "the whole file" : path,
                read.length() > 60 ? read.substring(0, 57) + "..." : read,
                expected));
  }

  private String at(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
