package holloway.housefile;

import static holloway.housefile.Table.may;
import static holloway.housefile.Table.must;

import holloway.finding.Severity;
import holloway.house.Obstacle;
import holloway.house.Thing;
import holloway.limits.LocalRules;
import holloway.limits.OwnRule;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The key {@code own} of a rule file: rules that no pack has, of three simple kinds. */
final class OwnRulesReader {
  private static final Table BORE =
      rule(
          "own-no-bore",
          "members that are not bored, or not wider than so",
          must("no-bore", some(Shape.wordsOf(OwnRule.Part.class)), "in which members"),
          may("wider-than", Shape.LENGTH, "the widest hole still allowed; none unless said"));

  private static final Table SPACE =
      rule(
          "own-no-cable",
          "spaces that no cable lies in, or none that is not listed for it",
          must("no-cable-in", some(Shape.wordsOf(OwnRule.Space.class)), "in which spaces"),
          may(
              "unless-listed",
              Shape.wordsOf(OwnRule.Listed.class),
              "what is printed on the jacket (job: listings), or better"));

  private static final Table KEEP_OFF =
      rule(
          "own-keep-off",
          "how far the middle of a hole stays from things",
          must("keep-off", some(new Shape.Words(List.copyOf(things()))), "from what"),
          must("by", Shape.LENGTH, "how far at least"));

  static final Shape LIST = Shape.listOf(new Shape.OneMapOf(List.of(BORE, SPACE, KEEP_OFF)));

  private OwnRulesReader() {}

  private static Table rule(String name, String about, Table.Key... keys) {
    return Table.of(name, about, keys)
        .plus(
            must("source", Shape.ID, "the clause, by-law or letter that says so"),
            may(
                "severity",
                Shape.words("law", "standard", "practice"),
                "how binding it is; practice unless said"),
            may("do", Shape.ID, "what is to be done instead, in a sentence"));
  }

  /** One word or a list of them. */
  private static Shape some(Shape word) {
    return new Shape.Either(word, new Shape.ListOf(word, 1, Shape.MOST_ITEMS));
  }

  private static Set<String> things() {
    Set<String> out = new LinkedHashSet<>();
    Arrays.stream(Thing.Kind.values()).map(Shape::word).forEach(out::add);
    Arrays.stream(Obstacle.Kind.values())
        .filter(k -> k != Obstacle.Kind.HEADER && k != Obstacle.Kind.FIRE_BLOCK)
        .map(Shape::word)
        .forEach(out::add);
    return out;
  }

  static List<OwnRule> read(Entry file, String rules, Desk desk) {
    List<OwnRule> out = new ArrayList<>();
    for (Marked item : file.items("own")) {
      Optional<OwnRule> one =
          Entry.of(item, BORE, desk)
              .filter(e -> e.has("no-bore"))
              .flatMap(e -> words(e, rules).map(w -> bore(e, w)));
      Optional<OwnRule> two =
          Entry.of(item, SPACE, desk)
              .filter(e -> e.has("no-cable-in"))
              .flatMap(e -> words(e, rules).map(w -> space(e, w)));
      Optional<OwnRule> three =
          Entry.of(item, KEEP_OFF, desk)
              .filter(e -> e.has("keep-off"))
              .flatMap(e -> words(e, rules).flatMap(w -> keepOff(e, w)));
      one.or(() -> two).or(() -> three).ifPresent(out::add);
    }
    return out;
  }

  private static Optional<OwnRule.Words> words(Entry e, String rules) {
    return e.text("source")
        .map(
            s ->
                new OwnRule.Words(
                    LocalRules.cited(rules, s),
                    e.choice("severity", Severity.class).orElse(Severity.PRACTICE),
                    e.text("do")));
  }

  private static OwnRule bore(Entry e, OwnRule.Words words) {
    Length widest = e.length("wider-than").map(f -> f.value()).orElse(Length.ZERO);
    return new OwnRule.Bore(words, some(e, "no-bore", OwnRule.Part.class), widest);
  }

  private static OwnRule space(Entry e, OwnRule.Words words) {
    return new OwnRule.Room(
        words,
        some(e, "no-cable-in", OwnRule.Space.class),
        e.choice("unless-listed", OwnRule.Listed.class));
  }

  private static Optional<OwnRule> keepOff(Entry e, OwnRule.Words words) {
    Set<String> things = new TreeSet<>(texts(e, "keep-off"));
    return e.length("by").map(f -> new OwnRule.KeepOff(words, things, f.value()));
  }

  private static <E extends Enum<E>> Set<E> some(Entry e, String key, Class<E> type) {
    Set<E> out = new TreeSet<>();
    texts(e, key).forEach(t -> Entry.choiceOf(t, type).ifPresent(out::add));
    return out;
  }

  private static List<String> texts(Entry e, String key) {
    return e.text(key)
        .map(List::of)
        .orElseGet(() -> e.texts(key).stream().map(Marked.Scalar::text).toList());
  }
}
