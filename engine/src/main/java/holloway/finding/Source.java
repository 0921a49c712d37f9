package holloway.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Where a figure or a duty is from, and whose rule that is: a clause of one country's code is no
 * source in another country.
 */
public record Source(List<Part> parts) {
  /** Whose rule it is. */
  public enum Of {
    /** A trade's, a maker's or an international standard, physics, or practice. */
    ANYWHERE(""),
    US("US"),
    UK("UK"),
    /** A person's own rule file, which is in force where it is used. */
    OWN("");

    private final String words;

    Of(String words) {
      this.words = words;
    }
  }

  /** One source of several, in words. */
  public record Part(Of of, String words) {}

  public static final Source PRACTICE = anywhere("common practice, no published source");

  public Source {
    parts = List.copyOf(parts);
  }

  public static Source anywhere(String words) {
    return new Source(List.of(new Part(Of.ANYWHERE, words)));
  }

  public static Source us(String words) {
    return new Source(List.of(new Part(Of.US, words)));
  }

  public static Source uk(String words) {
    return new Source(List.of(new Part(Of.UK, words)));
  }

  public static Source own(String words) {
    return new Source(List.of(new Part(Of.OWN, words)));
  }

  /** This one and another one, in this order. */
  public Source and(Source other) {
    List<Part> all = new ArrayList<>(parts);
    all.addAll(other.parts);
    return new Source(all);
  }

  /** The same with a remark behind its last part. */
  public Source noting(String remark) {
    List<Part> all = new ArrayList<>(parts);
    Part last = all.remove(all.size() - 1);
    all.add(new Part(last.of(), last.words() + remark));
    return new Source(all);
  }

  public boolean isOwn() {
    return parts.stream().anyMatch(p -> p.of() == Of.OWN);
  }

  /** All of it, whosever it is. */
  public String words() {
    return parts.stream().map(Part::words).collect(Collectors.joining("; "));
  }

  /**
   * As it is said where the rules of {@code here} are in force: clauses of others are not cited,
   * but that the figure is theirs is told.
   *
   * @param here empty where no rules are known: then others' clauses are named as theirs
   */
  public Source in(Optional<Of> here) {
    List<Part> foreign = parts.stream().filter(p -> isForeign(p.of(), here)).toList();
    if (foreign.isEmpty()) {
      return this;
    }
    List<Part> kept = new ArrayList<>(parts);
    kept.removeAll(foreign);
    String whose = foreign.get(0).of().words;
    if (kept.isEmpty()) {
      kept.add(new Part(Of.ANYWHERE, "no published source here"));
    }
    String clauses = foreign.stream().map(Part::words).collect(Collectors.joining("; "));
    kept.add(
        new Part(
            Of.ANYWHERE,
            here.isPresent()
                ? "the figure is from " + whose + " rules"
                : "in the " + whose + ": " + clauses));
    return new Source(kept);
  }

  private static boolean isForeign(Of of, Optional<Of> here) {
    return (of == Of.US || of == Of.UK) && here.filter(of::equals).isEmpty();
  }

  @Override
  public String toString() {
    return words();
  }
}
