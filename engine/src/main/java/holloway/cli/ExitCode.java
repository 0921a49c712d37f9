package holloway.cli;

import holloway.plan.Plan;

/** What the program ends with; the list is part of the help. */
public final class ExitCode {
  public static final int DONE = 0;
  public static final int OUR_FAULT = 1;
  public static final int COMMAND_LINE = 2;
  public static final int INPUT = 3;
  public static final int NO_ROUTE = 4;
  public static final int BREAKS_LAW = 5;
  public static final int REFUSED = 6;
  public static final int NO_DISPLAY = 7;

  private ExitCode() {}

  /** What every verb that shows a plan ends with, so that a script may ask any of them. */
  public static int of(Plan plan) {
    if (!plan.unrouted().isEmpty()) {
      return NO_ROUTE;
    }
    boolean law = plan.findings().stream().anyMatch(Plan.FindingLine::breaksLaw);
    return law ? BREAKS_LAW : DONE;
  }
}
