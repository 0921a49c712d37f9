package holloway.cli;

/** What the program ends with; the list is part of the help. */
final class ExitCode {
  static final int DONE = 0;
  static final int OUR_FAULT = 1;
  static final int COMMAND_LINE = 2;
  static final int INPUT = 3;
  static final int NO_ROUTE = 4;
  static final int BREAKS_LAW = 5;
  static final int REFUSED = 6;
  static final int NO_DISPLAY = 7;

  private ExitCode() {}
}
