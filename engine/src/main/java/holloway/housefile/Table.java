package holloway.housefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The keys one kind of map may have.
 *
 * @param name of the schema's definition
 * @param kinds words of which exactly one stands alone as a key, or as the value of {@code kind}
 */
record Table(String name, String about, List<Key> keys, List<String> kinds) {
  /** One key. */
  record Key(String name, boolean required, Shape shape, String about) {}

  Table {
    keys = List.copyOf(keys);
    kinds = List.copyOf(kinds);
  }

  static Table of(String name, String about, Key... keys) {
    return new Table(name, about, List.of(keys), List.of());
  }

  /** The same with further keys. */
  Table plus(Key... more) {
    return plus(List.of(more));
  }

  Table plus(List<Key> more) {
    List<Key> all = new ArrayList<>(keys);
    all.addAll(more);
    return new Table(name, about, all, kinds);
  }

  /** The same with a {@code kind} that may stand alone as a key. */
  Table withKinds(Class<? extends Enum<?>> type) {
    List<String> words = ((Shape.Words) Shape.wordsOf(type)).words();
    List<Key> all = new ArrayList<>();
    all.add(new Key("kind", false, new Shape.Words(words), "what it is"));
    for (String w : words) {
      all.add(new Key(w, false, new Shape.Nothing(), "short for kind: " + w));
    }
    all.addAll(keys);
    return new Table(name, about, all, words);
  }

  static Key must(String name, Shape shape, String about) {
    return new Key(name, true, shape, about);
  }

  static Key may(String name, Shape shape, String about) {
    return new Key(name, false, shape, about);
  }

  Optional<Key> find(String key) {
    return keys.stream().filter(k -> k.name().equals(key)).findFirst();
  }

  List<String> names() {
    return keys.stream().map(Key::name).toList();
  }
}
