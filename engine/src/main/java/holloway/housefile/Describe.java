package holloway.housefile;

import holloway.units.LengthParser;
import java.util.Optional;
import java.util.stream.Stream;

/** Says a shape in words, and picks which of two shapes a value is meant to have. */
final class Describe {
  private Describe() {}

  static String of(Shape shape) {
    if (shape instanceof Shape.Text t) {
      return t.form().expected();
    } else if (shape instanceof Shape.Len) {
      return "a length like " + LengthParser.EXAMPLES;
    } else if (shape instanceof Shape.Words w) {
      return w.words().size() == 1 ? w.words().get(0) : "one of: " + String.join(", ", w.words());
    } else if (shape instanceof Shape.Whole w) {
      return "a whole number from " + w.least() + " to " + w.most();
    } else if (shape instanceof Shape.YesNo) {
      return "yes or no";
    } else if (shape instanceof Shape.ListOf l) {
      String count = l.most() == 2 ? "a list [ , ] of two: " : "a list, each: ";
      return count + of(l.item());
    } else if (shape instanceof Shape.MapOf m) {
      return "a map with keys of: " + String.join(", ", m.table().names());
    } else if (shape instanceof Shape.Named n) {
      return "a map from names to: " + of(n.item());
    } else if (shape instanceof Shape.OneMapOf m) {
      return "a map that starts with one of: " + String.join(", ", m.firstKeys());
    } else if (shape instanceof Shape.Either e) {
      return of(e.one()) + ", or " + of(e.other());
    }
    return "nothing";
  }

  /** What a message calls a map: the whole file, a key in quotes, or an item of a list. */
  static String place(String what, Table table) {
    if (table.name().equals("house") || table.name().endsWith("-file")) {
      return "the file";
    }
    return what;
  }

  /** The shape of the two that a value is meant to have; empty when it is like neither. */
  static Optional<Shape> choose(Marked value, Shape.Either either) {
    return Stream.of(either.one(), either.other())
        .filter(s -> isLike(value, s, either))
        .findFirst();
  }

  private static boolean isLike(Marked value, Shape shape, Shape.Either either) {
    if (value instanceof Marked.Mapping map) {
      boolean twoMaps =
          either.one() instanceof Shape.MapOf && either.other() instanceof Shape.MapOf;
      return shape instanceof Shape.MapOf m
          && (!twoMaps || map.values().containsKey(m.table().keys().get(0).name()));
    }
    if (value instanceof Marked.Sequence) {
      return shape instanceof Shape.ListOf;
    }
    return !(shape instanceof Shape.MapOf
        || shape instanceof Shape.ListOf
        || shape instanceof Shape.Named);
  }
}
