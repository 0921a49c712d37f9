package holloway.housefile;

import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Room;
import holloway.house.Timber;
import holloway.house.Where;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * One map of the file with the keys of its table. A value that does not parse is empty here: {@link
 * ShapeCheck} has reported it. Asking for a key that the table does not have is a bug.
 */
final class Entry {
  private final Marked.Mapping map;
  private final Table table;
  private final Desk desk;

  Entry(Marked.Mapping map, Table table, Desk desk) {
    this.map = map;
    this.table = table;
    this.desk = desk;
  }

  static Optional<Entry> of(Marked value, Table table, Desk desk) {
    return value instanceof Marked.Mapping m
        ? Optional.of(new Entry(m, table, desk))
        : Optional.empty();
  }

  Desk desk() {
    return desk;
  }

  Where where() {
    return map.where();
  }

  /** Where the value of a key stands, or the map if the key is absent. */
  Where where(String key) {
    return raw(key).map(Marked::where).orElse(map.where());
  }

  /** May this map have the key at all? */
  boolean knows(String key) {
    return table.find(key).isPresent();
  }

  boolean has(String key) {
    return raw(key).isPresent();
  }

  Optional<Marked> raw(String key) {
    if (table.find(key).isEmpty()) {
      throw new IllegalStateException("the table '" + table.name() + "' has no key '" + key + "'");
    }
    return Optional.ofNullable(map.values().get(key));
  }

  void problem(String key, String expected, String nearest, String text) {
    String read = raw(key).map(Marked::show).orElse("");
    desk.problems().add(where(key), read, expected, nearest, text);
  }

  Optional<Marked.Scalar> scalar(String key) {
    return raw(key)
        .filter(v -> v instanceof Marked.Scalar s && !s.isNothing())
        .map(Marked.Scalar.class::cast);
  }

  <T> Optional<T> parsed(String key, Function<Marked.Scalar, T> parse) {
    return scalar(key).flatMap(s -> quietly(() -> parse.apply(s)));
  }

  static <T> Optional<T> quietly(java.util.function.Supplier<T> parse) {
    try {
      return Optional.of(parse.get());
    } catch (Refused reported) {
      return Optional.empty();
    }
  }

  Optional<String> text(String key) {
    return scalar(key).map(Marked.Scalar::text);
  }

  Optional<Fact<Length>> length(String key) {
    Shape shape = table.find(key).map(Table.Key::shape).orElseThrow();
    if (!(shape instanceof Shape.Len len)) {
      throw new IllegalStateException(table.name() + "." + key + " is not a length");
    }
    return parsed(key, s -> Forms.length(s.text(), len.least(), len.most(), s.where()));
  }

  Optional<Along> along(String key) {
    return parsed(key, s -> Forms.along(s.text(), s.where()));
  }

  Optional<FaceRef> face(String key) {
    return parsed(key, s -> Forms.face(s.text(), desk.names(), s.where()));
  }

  Optional<Room.Size> size(String key) {
    return parsed(key, s -> Forms.size(s.text(), s.where()));
  }

  Optional<Fact<Timber>> timber(String key) {
    return parsed(key, s -> Fact.stated(Timbers.parse(s.text(), desk.era().built()), s.where()));
  }

  Optional<Boolean> yesNo(String key) {
    return text(key).flatMap(Forms::yesNo);
  }

  Optional<Integer> whole(String key) {
    return text(key).filter(t -> t.matches("-?\\d{1,9}")).map(Integer::parseInt);
  }

  <E extends Enum<E>> Optional<E> choice(String key, Class<E> type) {
    return text(key).flatMap(t -> choiceOf(t, type));
  }

  static <E extends Enum<E>> Optional<E> choiceOf(String text, Class<E> type) {
    return Arrays.stream(type.getEnumConstants())
        .filter(e -> Shape.word(e).equals(text))
        .findFirst();
  }

  /** The kind of a map that says it by {@code kind:} or by a key that stands alone. */
  <E extends Enum<E>> Optional<E> kind(Class<E> type) {
    return table.kinds().stream()
        .filter(this::has)
        .findFirst()
        .or(() -> text("kind"))
        .flatMap(t -> choiceOf(t, type));
  }

  Optional<Entry> map(String key, Table of) {
    return raw(key).flatMap(v -> of(v, of, desk));
  }

  List<Marked> items(String key) {
    return raw(key)
        .map(v -> v instanceof Marked.Sequence s ? s.items() : List.<Marked>of())
        .orElse(List.of());
  }

  List<Marked.Scalar> texts(String key) {
    List<Marked.Scalar> out = new ArrayList<>();
    for (Marked item : items(key)) {
      if (item instanceof Marked.Scalar s && !s.isNothing()) {
        out.add(s);
      }
    }
    return out;
  }

  List<Entry> maps(String key, Table of) {
    return items(key).stream().flatMap(v -> of(v, of, desk).stream()).toList();
  }

  /** Named maps, sorted by name, so that the order of keys means nothing. */
  Map<String, Entry> named(String key, Table of) {
    Map<String, Entry> out = new TreeMap<>();
    if (raw(key).orElse(null) instanceof Marked.Mapping m) {
      m.values().forEach((name, v) -> of(v, of, desk).ifPresent(e -> out.put(name, e)));
    }
    return out;
  }
}
