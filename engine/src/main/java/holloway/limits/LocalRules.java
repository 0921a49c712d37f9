package holloway.limits;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a person's rule file states over the figures of the pack that it is based on.
 *
 * @param name of the rules, empty when there is no such file
 * @param file as the house file names it, beside itself
 * @param basedOn {@code us}, {@code uk} or {@code none}
 * @param own rules beside the figures
 */
public record LocalRules(
    String name, String file, String basedOn, Map<RuleKey, Stated> stated, List<OwnRule> own) {
  /**
   * One figure of the file.
   *
   * @param severity how binding it is, where the file says so; else as in the pack
   */
  public record Stated(Figure figure, Optional<Severity> severity) {}

  /** None: every pack keeps its own figures. */
  public static final LocalRules NONE = new LocalRules("", "", "none", Map.of());

  private static final String MARK = "local rules of ";

  public LocalRules {
    stated = Map.copyOf(stated);
    own = List.copyOf(own);
  }

  /** Figures alone. */
  public LocalRules(String name, String file, String basedOn, Map<RuleKey, Stated> stated) {
    this(name, file, basedOn, stated, List.of());
  }

  /** How the source of a finding names these rules. */
  public static String cited(String rules, String source) {
    return MARK + rules + ": " + source;
  }

  /**
   * What the file's own rules say against a hole of that width in a member, by its word; the first
   * of them.
   */
  public Optional<Verdict> againstBore(String member, Length bit) {
    if (own.isEmpty()) {
      return Optional.empty();
    }
    Optional<OwnRule.Part> part = OwnRule.part(member);
    return part.flatMap(
            p ->
                own(OwnRule.Bore.class)
                    .filter(r -> r.parts().contains(p) && bit.compareTo(r.widest()) > 0)
                    .findFirst())
        .map(
            r ->
                Verdict.no(
                    r.words().severity(), Source.own(r.words().source()), tooWide(r, member, bit)));
  }

  private static String tooWide(OwnRule.Bore r, String member, Length bit) {
    return r.widest().nm() == 0
        ? "No hole is allowed in a " + member + "."
        : "A hole of %s in a %s is over %s.".formatted(bit, member, r.widest());
  }

  /** The file's own rule against cable in a space, where what is printed on it does not do. */
  public Optional<OwnRule.Room> againstSpace(OwnRule.Space space, Optional<OwnRule.Listed> listed) {
    return own(OwnRule.Room.class)
        .filter(r -> r.spaces().contains(space))
        .filter(r -> !does(r.unless(), listed))
        .findFirst();
  }

  private static boolean does(Optional<OwnRule.Listed> asked, Optional<OwnRule.Listed> printed) {
    return asked.isPresent() && printed.isPresent() && printed.get().compareTo(asked.get()) >= 0;
  }

  /** The file's own rules of one kind, in its order. */
  public <R extends OwnRule> Stream<R> own(Class<R> kind) {
    return own.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** A figure of these rules; the source says whose they are. */
  public static Figure figure(String rules, RuleKey key, double value, String unit, String source) {
    return new Figure(
        key.word(), key.what(), value, unit, Source.own(cited(rules, source)), Figure.Grade.L);
  }

  /** True when there is such a file. */
  public boolean present() {
    return !name.isEmpty();
  }

  /** The figure in force. */
  public Figure of(RuleKey key, Figure usual) {
    return Optional.ofNullable(stated.get(key)).map(Stated::figure).orElse(usual);
  }

  /** How binding it is. */
  public Severity severity(RuleKey key, Severity usual) {
    return Optional.ofNullable(stated.get(key)).flatMap(Stated::severity).orElse(usual);
  }

  /** What is stated, in the order of the keys. */
  public List<Map.Entry<RuleKey, Stated>> list() {
    return List.copyOf(new TreeMap<>(stated).entrySet());
  }

  /** Does the file allow more than a figure of the pack does? */
  public boolean looser(RuleKey key, Figure usual) {
    double here = stated.get(key).figure().size();
    return key.least() ? here < usual.size() : here > usual.size();
  }
}
