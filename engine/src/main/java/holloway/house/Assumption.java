package holloway.house;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A default of place and era that was taken because the person did not say.
 *
 * @param what the row of the table of defaults
 * @param of what it was taken for: outer walls, a level, a room, an opening
 * @param value as the table has it
 * @param source whose default it is, where it is from and how well it is known
 * @param instead what to write to say otherwise; empty if nothing can be
 */
public record Assumption(String what, String of, String value, String source, String instead)
    implements Comparable<Assumption> {
  private static final Comparator<Assumption> ORDER =
      Comparator.comparing(Assumption::what)
          .thenComparing(Assumption::value)
          .thenComparing(Assumption::of)
          .thenComparing(Assumption::source)
          .thenComparing(Assumption::instead);

  /** How a line about defaults begins, so that it is told apart from one about a single wall. */
  public static final String LEAD = "by default, ";

  @Override
  public int compareTo(Assumption o) {
    return ORDER.compare(this, o);
  }

  /** Those that differ only in what they were taken for, as one. */
  public static List<Assumption> gathered(Collection<Assumption> all) {
    Map<Assumption, TreeSet<String>> of = new TreeMap<>();
    for (Assumption a : all) {
      Assumption key = new Assumption(a.what, "", a.value, a.source, a.instead);
      of.computeIfAbsent(key, k -> new TreeSet<>()).add(a.of);
    }
    return of.entrySet().stream()
        .map(e -> e.getKey().taken(String.join(", ", e.getValue())))
        .toList();
  }

  private Assumption taken(String others) {
    return new Assumption(what, others, value, source, instead);
  }

  /** The same with no more than the first few things it was taken for. */
  public Assumption shortened(int most) {
    List<String> each = List.of(of.split(", "));
    int more = each.size() - most;
    return more < 2
        ? this
        : taken("%s and %d more".formatted(String.join(", ", each.subList(0, most)), more));
  }

  /** "stud spacing 16 in, for inner walls (us from 1940: D6)". */
  public String says() {
    return "%s %s, for %s (%s)".formatted(what.replace('-', ' '), value, of, source);
  }
}
