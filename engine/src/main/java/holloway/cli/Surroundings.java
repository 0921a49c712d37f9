package holloway.cli;

import holloway.pipeline.Pipeline;
import holloway.report.Ink;
import java.io.PrintStream;

/** What a verb works with. */
record Surroundings(PrintStream out, PrintStream err, Pipeline pipeline, Ink ink) {
  /** Writes text that ends in a line feed already. */
  void print(String text) {
    out.print(text);
    out.flush();
  }

  void complain(String line) {
    err.print("holloway: " + line + "\n");
    err.flush();
  }
}
