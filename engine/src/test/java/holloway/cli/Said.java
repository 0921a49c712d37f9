package holloway.cli;

import holloway.pipeline.Pipeline;
import holloway.pipeline.Progress;
import holloway.pipeline.ToyStages;
import holloway.report.Ink;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** One command line with what came out of it. */
public record Said(int code, String out, String err) {
  /** By the whole program. */
  public static Said whole(String... args) {
    return of(new Pipeline(Progress.SILENT), args);
  }

  static Said of(ToyStages stages, String... args) {
    return of(stages.pipeline(), args);
  }

  static Said of(String... args) {
    return of(new ToyStages(), args);
  }

  private static Said of(Pipeline pipeline, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Holloway.run(
            args,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            pipeline,
            Ink.PLAIN);
    return new Said(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
