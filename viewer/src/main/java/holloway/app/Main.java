package holloway.app;

import holloway.cli.Holloway;
import holloway.pipeline.Progress;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** The main program of the jar: hands the command line to the engine's verbs. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    // Names of rooms are in any language, whatever the terminal's own encoding is.
    PrintStream out =
        new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
    PrintStream err =
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
    Progress progress = System.console() == null ? Progress.SILENT : w -> err.println("  " + w);
    int code =
        Holloway.run(
            args,
            out,
            err,
            DrawnHouse::of,
            new ViewVerb(out, err, progress),
            new PictureVerb(err, progress));
    out.flush();
    System.exit(code);
  }
}
