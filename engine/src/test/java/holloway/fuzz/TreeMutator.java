package holloway.fuzz;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Changes the structure of a house file: whole parts dropped, doubled, moved or of another kind.
 */
final class TreeMutator {
  private static final int DEEP = 60;

  private final Random r;
  private final Map<String, Object> root;
  private final List<Place> places = new ArrayList<>();

  /** A value by the map or list that holds it. */
  private record Place(Object holder, Object key) {
    @SuppressWarnings("unchecked")
    Object get() {
      return holder instanceof Map<?, ?> m ? m.get(key) : ((List<Object>) holder).get((int) key);
    }

    @SuppressWarnings("unchecked")
    void put(Object value) {
      if (holder instanceof Map<?, ?> m) {
        ((Map<String, Object>) m).put((String) key, value);
      } else {
        ((List<Object>) holder).set((int) key, value);
      }
    }

    void remove() {
      if (holder instanceof Map<?, ?> m) {
        m.remove(key);
      } else {
        ((List<?>) holder).remove((int) key);
      }
    }
  }

  private TreeMutator(Map<String, Object> root, Random r) {
    this.root = root;
    this.r = r;
  }

  static String mutate(Map<String, Object> from, Random r) {
    @SuppressWarnings("unchecked")
    Map<String, Object> root = (Map<String, Object>) TreeText.copy(from);
    TreeMutator m = new TreeMutator(root, r);
    for (int times = 1 + r.nextInt(3); times > 0; times--) {
      m.places.clear();
      m.gather(root);
      if (!m.places.isEmpty()) {
        m.once();
      }
    }
    return TreeText.write(root, r.nextInt(8) == 0);
  }

  private void gather(Object value) {
    if (value instanceof Map<?, ?> m) {
      for (Map.Entry<?, ?> e : m.entrySet()) {
        places.add(new Place(m, e.getKey()));
        gather(e.getValue());
      }
    } else if (value instanceof List<?> l) {
      for (int i = 0; i < l.size(); i++) {
        places.add(new Place(l, i));
        gather(l.get(i));
      }
    }
  }

  private void once() {
    Place p = any();
    Place other = any();
    switch (r.nextInt(20)) {
      case 0, 1 -> p.remove();
      case 2 -> addTo(p.holder(), TreeText.copy(p.get()), name(p));
      case 3 -> addTo(other.get(), TreeText.copy(p.get()), name(p));
      case 4 -> p.put(TreeText.copy(other.get()));
      case 5 -> exchange(p, other);
      case 6 -> p.put(otherKind(p.get()));
      case 7 -> p.put(nested(p.get()));
      case 8 -> rename(p);
      case 9 -> many(p);
      default -> likeAnother(p);
    }
  }

  private Place any() {
    return places.get(r.nextInt(places.size()));
  }

  private String name(Place p) {
    return p.key() instanceof String s ? s : TokenMutator.anyWord(r);
  }

  @SuppressWarnings("unchecked")
  private void addTo(Object holder, Object value, String name) {
    if (holder instanceof Map<?, ?> m) {
      ((Map<String, Object>) m).put(m.containsKey(name) ? name + " 2" : name, value);
    } else if (holder instanceof List<?> l) {
      ((List<Object>) l).add(r.nextInt(l.size() + 1), value);
    }
  }

  /** Copies first: one of the two may hold the other. */
  private static void exchange(Place p, Place other) {
    Object one = TreeText.copy(p.get());
    Object two = TreeText.copy(other.get());
    p.put(two);
    other.put(one);
  }

  private Object otherKind(Object value) {
    return switch (r.nextInt(6)) {
      case 0 -> new LinkedHashMap<String, Object>();
      case 1 -> new ArrayList<Object>();
      case 2 -> "";
      case 3 -> new ArrayList<>(List.of(value, TreeText.copy(value)));
      case 4 -> new LinkedHashMap<>(Map.of(TokenMutator.anyWord(r), value));
      default -> TokenMutator.anyWord(r);
    };
  }

  private Object nested(Object value) {
    Object out = value;
    for (int i = r.nextInt(DEEP); i > 0; i--) {
      out =
          r.nextBoolean()
              ? new ArrayList<>(List.of(out))
              : new LinkedHashMap<>(Map.of(TokenMutator.anyWord(r), out));
    }
    return out;
  }

  private void rename(Place p) {
    if (p.holder() instanceof Map<?, ?>) {
      Object value = p.get();
      p.remove();
      addTo(p.holder(), value, r.nextBoolean() ? TokenMutator.anyWord(r) : name(any()));
    }
  }

  /** Dozens of copies; names stay apart, so that many are read soundly. */
  @SuppressWarnings("unchecked")
  private void many(Place p) {
    int count = 2 + r.nextInt(40);
    for (int i = 0; i < count; i++) {
      Object copy = TreeText.copy(p.get());
      if (copy instanceof Map<?, ?> m && m.get("name") instanceof String s) {
        ((Map<String, Object>) m).put("name", s + " " + i);
      }
      if (p.holder() instanceof List<?> l) {
        ((List<Object>) l).add(copy);
      } else {
        addTo(p.holder(), copy, name(p) + " " + i);
      }
    }
  }

  /** A scalar of the same key elsewhere, or its own with other numbers: most often still sound. */
  private void likeAnother(Place p) {
    if (!(p.get() instanceof String text)) {
      return;
    }
    List<Place> alike =
        places.stream().filter(o -> o.key().equals(p.key()) && o.get() instanceof String).toList();
    p.put(
        r.nextBoolean() && !(p.key() instanceof Integer)
            ? alike.get(r.nextInt(alike.size())).get()
            : java.util.regex.Pattern.compile("\\d+(\\.\\d+)?")
                .matcher(text)
                .replaceAll(m -> TokenMutator.nudged(m.group(), r)));
  }
}
