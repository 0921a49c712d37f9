package holloway.step;

/** Where a text stops being a STEP file, and why; written for the person who has the file. */
public final class StepFault extends RuntimeException {
  private static final long serialVersionUID = 1;
  private final int line;
  private final int column;

  /**
   * @param line from 1, 0 when it is about the whole file
   * @param column from 1
   */
  public StepFault(int line, int column, String message) {
    super(message);
    this.line = line;
    this.column = column;
  }

  public int line() {
    return line;
  }

  public int column() {
    return column;
  }
}
