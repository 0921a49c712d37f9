package holloway.housefile;

import holloway.house.Where;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Holds a value against its shape and reports everything that does not fit. The readers that follow
 * may then take a value that does not parse for one that has been reported.
 */
final class ShapeCheck {
  private final Desk desk;

  ShapeCheck(Desk desk) {
    this.desk = desk;
  }

  void check(Marked value, Shape shape, String what) {
    if (value instanceof Marked.Told) {
      return;
    }
    if (shape instanceof Shape.MapOf map) {
      checkMap(value, map.table(), what);
    } else if (shape instanceof Shape.Named named) {
      checkNamed(value, named, what);
    } else if (shape instanceof Shape.ListOf list) {
      checkList(value, list, what);
    } else if (shape instanceof Shape.Either either) {
      checkEither(value, either, what);
    } else if (shape instanceof Shape.OneMapOf maps) {
      maps.find(value)
          .ifPresentOrElse(t -> checkMap(value, t, what), () -> mismatch(value, maps, what));
    } else if (!(value instanceof Marked.Scalar s)) {
      mismatch(value, shape, what);
    } else {
      checkScalar(s, shape, what);
    }
  }

  private void checkMap(Marked value, Table table, String what) {
    if (!(value instanceof Marked.Mapping map)) {
      mismatch(value, new Shape.MapOf(table), what);
      return;
    }
    for (Map.Entry<String, Marked> e : map.values().entrySet()) {
      Optional<Table.Key> key = table.find(e.getKey());
      if (key.isEmpty()) {
        unknownKey(map.keys().get(e.getKey()), e.getKey(), table, what);
      } else if (!(key.get().shape() instanceof Shape.Nothing)) {
        check(e.getValue(), key.get().shape(), "'" + e.getKey() + "'");
      }
    }
    for (Table.Key key : table.keys()) {
      if (key.required() && !map.values().containsKey(key.name())) {
        missing(map.where(), table, key, what);
      }
    }
    checkKinds(map, table, what);
  }

  private void unknownKey(Where where, String key, Table table, String what) {
    String keys = String.join(", ", table.names());
    String nearest = Nearest.of(key, table.names());
    String text = "'" + key + "' is not a key of " + Describe.place(what, table);
    desk.problems().add(where, key, "one of: " + keys, nearest, text);
  }

  private void missing(Where where, Table table, Table.Key key, String what) {
    String text =
        "%s lacks '%s:' (%s)".formatted(Describe.place(what, table), key.name(), key.about());
    desk.problems()
        .add(where, "", Teaching.example(table, key).orElse(Describe.of(key.shape())), "", text);
  }

  private void checkKinds(Marked.Mapping map, Table table, String what) {
    if (table.kinds().isEmpty()) {
      return;
    }
    List<String> given = table.kinds().stream().filter(map.values()::containsKey).toList();
    int count = given.size() + (map.values().containsKey("kind") ? 1 : 0);
    if (count != 1) {
      String expected = "one of: " + String.join(", ", table.kinds());
      String text =
          Describe.place(what, table)
              + (count == 0 ? " does not say what it is" : " says twice what it is");
      desk.problems().add(map.where(), map.show(), expected, "", text);
    }
    for (String kind : given) {
      Marked value = map.values().get(kind);
      boolean alone =
          value instanceof Marked.Scalar s && (s.isNothing() || s.text().matches("yes|true"));
      if (!alone) {
        desk.problems()
            .add(value.where(), value.show(), "nothing", "", "'" + kind + "' stands alone");
      }
    }
  }

  private void checkNamed(Marked value, Shape.Named named, String what) {
    if (!(value instanceof Marked.Mapping map)) {
      mismatch(value, named, what);
      return;
    }
    map.values()
        .forEach(
            (name, item) -> {
              if (!what.equals("'through'")) {
                attempt(map.keys().get(name), name, () -> Forms.name(name));
              }
              check(item, named.item(), "'" + name + "'");
            });
  }

  private void checkList(Marked value, Shape.ListOf list, String what) {
    if (!(value instanceof Marked.Sequence s)) {
      mismatch(value, list, what);
      return;
    }
    int n = s.items().size();
    if (n < list.least() || n > list.most()) {
      String text = what + " has " + n + " items";
      if (n > list.most() && list.most() > 2) {
        text += "; at most " + list.most() + " are read";
      }
      desk.problems().add(value.where(), value.show(), Describe.of(list), "", text);
    }
    s.items().forEach(item -> check(item, list.item(), "an item of " + what));
  }

  private void checkEither(Marked value, Shape.Either either, String what) {
    boolean words = either.one() instanceof Shape.Words && either.other() instanceof Shape.ListOf;
    if (words && value instanceof Marked.Scalar s && s.text().contains(" ")) {
      mismatch(value, either.other(), what); // one item of the list, without its brackets
      return;
    }
    Optional<Shape> chosen = Describe.choose(value, either);
    if (chosen.isPresent()) {
      check(value, chosen.get(), what);
    } else {
      mismatch(value, either, what);
    }
  }

  private void checkScalar(Marked.Scalar s, Shape shape, String what) {
    if (s.isNothing()) {
      String text = "nothing is written for " + what;
      desk.problems().add(s.where(), "", Describe.of(shape), "", text);
    } else {
      attempt(s.where(), s.text(), () -> ScalarCheck.check(s, shape, desk, what));
    }
  }

  private void attempt(Where where, String read, Runnable parse) {
    try {
      parse.run();
    } catch (Refused e) {
      desk.problems().add(where, read, e);
    }
  }

  private void mismatch(Marked value, Shape shape, String what) {
    String text =
        value instanceof Marked.Scalar s && s.isNothing()
            ? "nothing is written for " + what
            : what + " is not written like this";
    desk.problems().add(value.where(), value.show(), Describe.of(shape), "", text);
  }
}
