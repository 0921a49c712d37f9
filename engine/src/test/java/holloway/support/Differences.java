package holloway.support;

import holloway.house.House.InputFile;
import holloway.house.Where;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where two values built of records differ; lines in files and fingerprints are not looked at. */
public final class Differences {
  private final List<String> found = new ArrayList<>();

  private Differences() {}

  public static List<String> between(Object one, Object other) {
    Differences d = new Differences();
    d.look("", one, other);
    return d.found;
  }

  private void look(String path, Object one, Object other) {
    if (one instanceof Where && other instanceof Where) {
      return;
    }
    boolean sameKind = one.getClass() == other.getClass();
    if (sameKind && one instanceof Record) {
      records(path, one, other);
    } else if (one instanceof List<?> a && other instanceof List<?> b) {
      lists(path, a, b);
    } else if (one instanceof Optional<?> a && other instanceof Optional<?> b) {
      lists(path, a.stream().toList(), b.stream().toList());
    } else if (one instanceof Map<?, ?> a && other instanceof Map<?, ?> b && sameKeys(a, b)) {
      a.forEach((k, v) -> look(path + "." + k, v, b.get(k)));
    } else if (!one.equals(other)) {
      found.add(path + ": " + one + " / " + other);
    }
  }

  private static boolean sameKeys(Map<?, ?> a, Map<?, ?> b) {
    return a.keySet().equals(b.keySet());
  }

  private void lists(String path, List<?> a, List<?> b) {
    if (a.size() != b.size()) {
      found.add(path + ": " + a + " / " + b);
      return;
    }
    for (int i = 0; i < a.size(); i++) {
      look(path + "[" + i + "]", a.get(i), b.get(i));
    }
  }

  private void records(String path, Object one, Object other) {
    if (one instanceof InputFile) {
      return;
    }
    try {
      for (RecordComponent c : one.getClass().getRecordComponents()) {
        c.getAccessor().setAccessible(true);
        Object a = c.getAccessor().invoke(one);
        look(path + "." + c.getName(), a, c.getAccessor().invoke(other));
      }
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
