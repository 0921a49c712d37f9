package holloway.house;

/**
 * A place in an input file; line and column count from 1, 0 when the value was assumed and stands
 * nowhere.
 */
public record Where(String file, int line, int column) implements Comparable<Where> {
  public static final Where NOWHERE = new Where("", 0, 0);

  @Override
  public int compareTo(Where o) {
    int c = file.compareTo(o.file);
    if (c != 0) {
      return c;
    }
    return line != o.line ? Integer.compare(line, o.line) : Integer.compare(column, o.column);
  }

  @Override
  public String toString() {
    return this.equals(NOWHERE) ? "assumed" : file + ":" + line + ":" + column;
  }
}
