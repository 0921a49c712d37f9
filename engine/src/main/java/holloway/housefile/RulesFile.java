package holloway.housefile;

import static holloway.housefile.Table.may;
import static holloway.housefile.Table.must;

import holloway.finding.Severity;
import holloway.house.House.InputFile;
import holloway.limits.Figure;
import holloway.limits.LocalRules;
import holloway.limits.OwnRule;
import holloway.limits.RuleKey;
import holloway.units.Length;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Reads a rule file of one's own: {@code rules} (whose), {@code based-on} (us, uk or none) and, for
 * each figure that differs there, what it is and where it is written; {@code own} lists rules that
 * no pack has.
 */
public final class RulesFile {
  private static final Shape.Words BASES = (Shape.Words) Shape.words("us", "uk", "none");

  static final Table TABLE =
      Table.of(
              "rules",
              "figures of a local code, over those of a rule pack",
              must("rules", Shape.NAME, "whose rules they are"),
              must("based-on", BASES, "the rule pack that holds for all else"))
          .plus(
              Arrays.stream(RuleKey.values())
                  .map(k -> may(k.word(), new Shape.MapOf(table(k)), k.what()))
                  .toList())
          .plus(may("own", OwnRulesReader.LIST, "rules that no pack has"));

  private final Problems problems;

  private RulesFile(Problems problems) {
    this.problems = problems;
  }

  /** The rules, or what is wrong with the file. */
  public record Answer(
      Optional<LocalRules> rules, List<Problem> problems, List<InputFile> inputs) {}

  public static Answer read(Path path) {
    Problems problems = new Problems();
    List<InputFile> inputs = new ArrayList<>();
    Optional<LocalRules> rules = read(path, problems, inputs);
    return new Answer(problems.isEmpty() ? rules : Optional.empty(), problems.sorted(), inputs);
  }

  /** Problems and the fingerprint are recorded. */
  static Optional<LocalRules> read(Path path, Problems problems, List<InputFile> inputs) {
    Optional<InputText> text = InputText.read(path, problems);
    text.ifPresent(t -> inputs.add(t.file()));
    return text.flatMap(t -> new RulesFile(problems).rules(t.root(), t.file().file()));
  }

  private static Table table(RuleKey key) {
    Shape value =
        switch (key.sort()) {
          case SHARE -> new Shape.Text(Form.SHARE);
          case LENGTH -> Shape.LENGTH;
          case COUNT -> new Shape.Whole(1, 100);
        };
    String name = "rule-" + Shape.word(key.sort()) + "-" + key.bound();
    return Table.of(
        name,
        "a figure and where it is written",
        must(key.bound(), value, "the figure"),
        must("source", Shape.ID, "the clause, by-law or letter that says so"),
        may(
            "severity",
            Shape.words("law", "standard", "practice"),
            "how binding it is, where not as in the pack"));
  }

  private Optional<LocalRules> rules(Marked root, String fileName) {
    Desk desk = new Desk(problems, Names.of(root), Era.of(root));
    new ShapeCheck(desk).check(root, new Shape.MapOf(TABLE), "");
    Optional<Entry> file = Entry.of(root, TABLE, desk);
    Optional<String> name = file.flatMap(f -> f.text("rules"));
    Optional<String> base = file.flatMap(f -> f.text("based-on")).filter(BASES.words()::contains);
    if (name.isEmpty() || base.isEmpty()) {
      return Optional.empty();
    }
    Map<RuleKey, LocalRules.Stated> stated = new TreeMap<>();
    for (RuleKey key : RuleKey.values()) {
      file.get()
          .map(key.word(), table(key))
          .flatMap(e -> figure(file.get(), e, key, name.get(), base.get()))
          .ifPresent(s -> stated.put(key, s));
    }
    List<OwnRule> own = OwnRulesReader.read(file.get(), name.get(), desk);
    if (stated.isEmpty() && own.isEmpty() && problems.isEmpty()) {
      problems.add(
          root.where(),
          "",
          "joist-hole: { at-most: 25 %, source: by-law 4.2 }",
          "",
          "this file states no figure and no rule of its own");
    }
    return Optional.of(new LocalRules(name.get(), fileName, base.get(), stated, own));
  }

  private Optional<LocalRules.Stated> figure(
      Entry file, Entry e, RuleKey key, String rules, String base) {
    if (key.usual(base).isEmpty()) {
      String known =
          Arrays.stream(RuleKey.values())
              .filter(k -> !k.usual(base).isEmpty())
              .map(RuleKey::word)
              .collect(Collectors.joining(", "));
      file.problem(
          key.word(),
          "one of: " + known,
          "",
          "the rules of '%s' have no figure '%s'".formatted(base, key.word()));
      return Optional.empty();
    }
    Optional<String> source = e.text("source");
    return source.flatMap(
        s ->
            e.scalar(key.bound())
                .flatMap(v -> Entry.quietly(() -> figure(v, key, rules, s)))
                .map(f -> new LocalRules.Stated(f, e.choice("severity", Severity.class))));
  }

  /** Of a length the unit of the file is kept, because findings repeat it. */
  private static Figure figure(Marked.Scalar s, RuleKey key, String rules, String source) {
    return switch (key.sort()) {
      case SHARE -> LocalRules.figure(rules, key, Forms.share(s.text()), "fraction", source);
      case COUNT -> LocalRules.figure(rules, key, Integer.parseInt(s.text()), "count", source);
      case LENGTH -> {
        Length v = Forms.length(s.text(), s.where()).value();
        boolean metric = s.text().matches(".*\\d ?(mm|cm|m)( .*)?");
        double number = metric ? v.toMm() : v.nm() / (double) Length.NM_PER_INCH;
        yield LocalRules.figure(rules, key, number, metric ? "mm" : "in", source);
      }
    };
  }
}
