package holloway.housefile;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The names a house file gives, gathered before anything refers to them. */
record Names(Set<String> levels, Set<String> rooms, Set<String> outlets) {
  private static final int MOST_LISTED = 30;

  static Names of(Marked root) {
    return new Names(keysOf(root, "levels"), keysOf(root, "rooms"), outlets(root));
  }

  private static Set<String> keysOf(Marked root, String key) {
    return child(root, key) instanceof Marked.Mapping m
        ? new TreeSet<>(m.values().keySet())
        : Set.of();
  }

  private static Set<String> outlets(Marked root) {
    Set<String> names = new TreeSet<>();
    if (child(root, "outlets") instanceof Marked.Sequence list) {
      for (Marked item : list.items()) {
        if (child(item, "name") instanceof Marked.Scalar s) {
          names.add(s.text());
        }
      }
    }
    return names;
  }

  static Marked child(Marked parent, String key) {
    return parent instanceof Marked.Mapping m ? m.values().get(key) : null;
  }

  /** The names and one more that is always there; still empty if there are none. */
  static Set<String> and(Set<String> names, String more) {
    Set<String> all = new TreeSet<>(names);
    if (!names.isEmpty()) {
      all.add(more);
    }
    return all;
  }

  /** The names in order, the first few of many. */
  static String list(Collection<String> names) {
    String some = names.stream().sorted().limit(MOST_LISTED).collect(Collectors.joining(", "));
    return names.size() > MOST_LISTED ? some + ", ..." : some;
  }

  /** Refuses a name that is not among the given ones; an empty set is a fault told elsewhere. */
  static String known(String name, Set<String> names, String what) {
    if (names.isEmpty() || names.contains(name)) {
      return name;
    }
    throw new Refused(
        "there is no " + what + " '" + name + "'",
        "one of: " + list(names),
        Nearest.of(name, names));
  }
}
