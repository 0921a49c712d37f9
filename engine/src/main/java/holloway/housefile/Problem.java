package holloway.housefile;

import holloway.house.Where;
import java.util.Comparator;

/**
 * One thing wrong with an input file.
 *
 * @param read what stands there, shortened
 * @param expected what should stand there, or empty
 * @param nearest the nearest valid word, or empty
 * @param text a whole sentence that teaches
 */
public record Problem(Where where, String read, String expected, String nearest, String text)
    implements Comparable<Problem> {
  private static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::where)
          .thenComparing(Problem::text)
          .thenComparing(Problem::read);

  @Override
  public int compareTo(Problem o) {
    return ORDER.compare(this, o);
  }

  /** One line: {@code alder-lane.yaml:12:9: ... (read "x"; expected y; did you mean "z"?)}. */
  @Override
  public String toString() {
    StringBuilder s = new StringBuilder();
    if (where.line() > 0) {
      s.append(where).append(": ");
    } else if (!where.file().isEmpty()) {
      s.append(where.file()).append(": ");
    }
    s.append(text);
    if (!read.isEmpty()) {
      s.append("; read: ").append(read);
    }
    if (!expected.isEmpty()) {
      s.append("; expected: ").append(expected);
    }
    if (!nearest.isEmpty()) {
      s.append("; did you mean '").append(nearest).append("'?");
    }
    return s.toString();
  }
}
