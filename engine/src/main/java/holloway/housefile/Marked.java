package holloway.housefile;

import holloway.house.Where;
import java.util.List;
import java.util.Map;

/** A value of a file that knows where it stands. */
sealed interface Marked {
  Where where();

  /** How the value reads in a message. */
  String show();

  /** A text; {@code plain} is false when it was quoted. */
  record Scalar(String text, boolean plain, Where where) implements Marked {
    boolean isNothing() {
      return plain && (text.isEmpty() || text.equals("~") || text.equals("null"));
    }

    @Override
    public String show() {
      return isNothing() ? "nothing" : text;
    }
  }

  /** A value that has been refused and reported; nothing more is said of it. */
  record Told(Where where) implements Marked {
    @Override
    public String show() {
      return "";
    }
  }

  /** A list in the order written. */
  record Sequence(List<Marked> items, Where where) implements Marked {
    @Override
    public String show() {
      return "a list of " + items.size();
    }
  }

  /** A map; keys in the order written, {@code keys} says where each key stands. */
  record Mapping(Map<String, Marked> values, Map<String, Where> keys, Where where)
      implements Marked {
    @Override
    public String show() {
      return values.isEmpty()
          ? "an empty map"
          : "a map with '" + values.keySet().iterator().next() + "'";
    }
  }
}
