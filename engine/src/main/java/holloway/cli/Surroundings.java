package holloway.cli;

import holloway.pipeline.Answers;
import holloway.pipeline.PictureSource;
import holloway.pipeline.Pipeline;
import holloway.report.Ink;
import java.io.PrintStream;

/** What a verb works with. */
record Surroundings(
    PrintStream out, PrintStream err, Pipeline pipeline, Ink ink, PictureSource pictures) {
  /** Writes text that ends in a line feed already. */
  void print(String text) {
    out.print(text);
    out.flush();
  }

  /**
   * Whether the referee is against a plan; if so it is told with its reasons.
   *
   * @param so what is left undone then
   */
  boolean refuses(Answers.Planned planned, String so) {
    if (planned.refusals().isEmpty()) {
      return false;
    }
    complain("the referee refuses the plan that was found, so " + so + ":");
    planned.refusals().forEach(r -> complain("refused: " + r));
    return true;
  }

  void complain(String line) {
    err.print("holloway: " + line + "\n");
    err.flush();
  }
}
