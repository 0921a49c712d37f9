package holloway.housefile;

import holloway.house.Where;
import java.util.Map;

/** Names given in lists must not be given twice. */
final class Unique {
  private Unique() {}

  static void claim(Entry e, String key, String name, Map<String, Where> taken, String what) {
    Where first = taken.putIfAbsent(name, e.where(key));
    if (first != null) {
      e.problem(
          key,
          "another name",
          "",
          "the %s '%s' is already there, on line %d".formatted(what, name, first.line()));
    }
  }
}
