package holloway.limits;

import holloway.units.Length;
import holloway.units.LengthParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * How houses are usually built by place and year: what is assumed where the person does not say.
 * One table, each row with its source and grade; ids are rows of the project's list of facts. A
 * default is never a rule, and a plan lists every one that it used.
 */
public final class UsualBuild {
  private static final String ANY = "any";
  private static final List<Row> ROWS = load();

  private final String place;
  private final int year;

  private UsualBuild(String place, int year) {
    this.place = place;
    this.year = year;
  }

  /**
   * One default.
   *
   * @param place us, uk, eu or any
   * @param from the first year it holds for; 0 for any
   * @param spread one standard deviation; empty for a choice
   * @param instead the key of a house file that says otherwise; empty where none does
   */
  public record Row(
      String what,
      String place,
      int from,
      String value,
      String spread,
      String instead,
      String source,
      Figure.Grade grade) {
    /** The value as a length. Throws if it is none. */
    public Length length() {
      return LengthParser.parse(value).value();
    }

    /** One standard deviation; zero for a choice. */
    public Length deviation() {
      return spread.isEmpty() ? Length.ZERO : LengthParser.parse(spread).value();
    }

    /** Whose default this is and how well it is known, for a person. */
    public String cited() {
      String when = from == 0 ? "" : " from " + from;
      String where = place.equals(ANY) ? "any place" : place;
      String weak =
          switch (grade) {
            case A, B, D, L -> "";
            case C -> ", common practice";
            case M -> ", from memory";
          };
      boolean twice = source.contains("from memory") || source.contains("common practice");
      return where + when + ": " + source + (twice ? "" : weak);
    }
  }

  /** Every row, in the order of the table. */
  public static List<Row> rows() {
    return ROWS;
  }

  /**
   * @param place the word of the house file; a place without rows of its own is taken as us
   */
  public static UsualBuild of(String place, int year) {
    boolean known = ROWS.stream().anyMatch(r -> r.place().equals(place));
    return new UsualBuild(known ? place : "us", year);
  }

  /** A thickness that is the same everywhere. */
  public static long fixed(String what) {
    return of(ANY, 0).get(what).length().nm();
  }

  /**
   * The row of this place, else of any place, with the latest year not after the house's. Throws if
   * there is none: every default has a row for each place.
   */
  public Row get(String what) {
    return find(what, place)
        .or(() -> find(what, ANY))
        .orElseThrow(() -> new IllegalArgumentException("no default for " + what));
  }

  private Optional<Row> find(String what, String where) {
    return ROWS.stream()
        .filter(r -> r.what().equals(what) && r.place().equals(where) && r.from() <= year)
        .reduce((a, b) -> b.from() >= a.from() ? b : a);
  }

  private static List<Row> load() {
    try (InputStream in = UsualBuild.class.getResourceAsStream("usual-build.md")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(2)
          .map(UsualBuild::row)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Row row(String line) {
    String[] c = line.substring(1, line.length() - 1).split("\\|", -1);
    int from = c[2].strip().equals(ANY) ? 0 : Integer.parseInt(c[2].strip());
    return new Row(
        c[0].strip(),
        c[1].strip(),
        from,
        c[3].strip(),
        c[4].strip(),
        c[5].strip(),
        c[6].strip(),
        Figure.Grade.valueOf(c[7].strip()));
  }
}
