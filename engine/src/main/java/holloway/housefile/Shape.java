package holloway.housefile;

import holloway.units.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What the value of a key looks like; the reader obeys it and the schema is written from it. */
sealed interface Shape {
  /** A text of a known form. */
  record Text(Form form) implements Shape {}

  /** A length with its unit, from {@code least} to {@code most}. */
  record Len(Length least, Length most) implements Shape {}

  /** One of a few words. */
  record Words(List<String> words) implements Shape {}

  /** A whole number. */
  record Whole(int least, int most) implements Shape {}

  /** yes or no (true and false too). */
  record YesNo() implements Shape {}

  /** A key that stands alone, such as {@code door} in {@code { door, between: ... }}. */
  record Nothing() implements Shape {}

  /** A list; {@code least} and {@code most} count its items. */
  record ListOf(Shape item, int least, int most) implements Shape {}

  /** A map with known keys. */
  record MapOf(Table table) implements Shape {}

  /** A map whose keys are names that the person gives. */
  record Named(Shape item) implements Shape {}

  /** One thing or another. */
  record Either(Shape one, Shape other) implements Shape {}

  /** One of several maps, told apart by the first key of each. */
  record OneMapOf(List<Table> tables) implements Shape {
    Optional<Table> find(Marked value) {
      return value instanceof Marked.Mapping map
          ? tables.stream()
              .filter(t -> map.values().containsKey(t.keys().get(0).name()))
              .findFirst()
          : Optional.empty();
    }

    List<String> firstKeys() {
      return tables.stream().map(t -> t.keys().get(0).name()).toList();
    }
  }

  Shape YES_NO = new YesNo();
  Shape FACE = new Text(Form.FACE);
  Shape ALONG = new Text(Form.ALONG);
  Shape SIZE = new Text(Form.SIZE);
  Shape ROOM = new Text(Form.ROOM);
  Shape LEVEL = new Text(Form.LEVEL);
  Shape NAME = new Text(Form.NAME);
  Shape ID = new Text(Form.ID);

  /** More than nothing, up to 200 m. */
  Shape LENGTH = new Len(new Length(1), Length.mm(200_000));

  /** Nothing or more, up to 200 m. */
  Shape HEIGHT = new Len(Length.ZERO, Length.mm(200_000));

  /** Either way, up to 200 m. */
  Shape SIGNED = new Len(Length.mm(-200_000), Length.mm(200_000));

  /** Studs, joists or trusses: 100 mm to 2 m apart. */
  Shape SPACING = new Len(Length.mm(100), Length.mm(2_000));

  /** Longer lists are not written by hand. */
  int MOST_ITEMS = 500;

  static Shape listOf(Shape item) {
    return new ListOf(item, 0, MOST_ITEMS);
  }

  static Shape pairOf(Shape item) {
    return new ListOf(item, 2, 2);
  }

  static Shape words(String... words) {
    return new Words(List.of(words));
  }

  static Shape wordsOf(Class<? extends Enum<?>> type) {
    return new Words(Arrays.stream(type.getEnumConstants()).map(Shape::word).toList());
  }

  /** An enum's words and one more. */
  static Shape wordsOf(Class<? extends Enum<?>> type, String more) {
    return new Words(
        Stream.concat(Arrays.stream(type.getEnumConstants()).map(Shape::word), Stream.of(more))
            .toList());
  }

  /** The word a person writes for an enum value: small letters and dashes. */
  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
