package holloway.limits;

import holloway.finding.Severity;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a person's rule file states over the figures of the pack that it is based on.
 *
 * @param name of the rules, empty when there is no such file
 * @param file as the house file names it, beside itself
 * @param basedOn {@code us}, {@code uk} or {@code none}
 */
public record LocalRules(String name, String file, String basedOn, Map<RuleKey, Stated> stated) {
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
  }

  /** A figure of these rules; the source says whose they are. */
  public static Figure figure(String rules, RuleKey key, double value, String unit, String source) {
    return new Figure(
        key.word(), key.what(), value, unit, MARK + rules + ": " + source, Figure.Grade.L);
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

  /** Does a source name these rules? */
  static boolean isLocal(String source) {
    return source.startsWith(MARK);
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
