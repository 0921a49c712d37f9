package holloway.cli;

import holloway.pipeline.InputTrouble;
import holloway.pipeline.UnknownName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** From exceptions to one plain sentence and an exit code; never a stack trace unless asked for. */
final class Troubles implements IParameterExceptionHandler, IExecutionExceptionHandler {
  private final Surroundings around;

  Troubles(Surroundings around) {
    this.around = around;
  }

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    CommandLine verb = e.getCommandLine();
    String name = verb.getCommandSpec().qualifiedName();
    around.complain(words(e, verb));
    around.complain("'" + name + " --help' shows what can be said");
    return ExitCode.COMMAND_LINE;
  }

  private static String words(ParameterException e, CommandLine verb) {
    if (e instanceof UnmatchedArgumentException u) {
      return unmatched(u, verb);
    }
    if (e instanceof MissingParameterException m && e.getArgSpec() == null) {
      List<String> names = m.getMissing().stream().map(ArgSpec::paramLabel).toList();
      return verb.getCommandName() + " needs " + String.join(" and ", names);
    }
    return e.getMessage();
  }

  private static String unmatched(UnmatchedArgumentException e, CommandLine verb) {
    String read = e.getUnmatched().get(0);
    boolean option = read.startsWith("-");
    List<String> known = new ArrayList<>();
    if (option) {
      verb.getCommandSpec().options().forEach(o -> known.addAll(List.of(o.names())));
    } else {
      known.addAll(verb.getSubcommands().keySet());
    }
    String what = option ? "option" : known.isEmpty() ? "use for" : "verb";
    return "no " + what + " '" + read + "'" + meant(read, known);
  }

  private static String meant(String read, List<String> known) {
    Optional<String> near = Nearest.of(read, known);
    return near.map(n -> "; did you mean '" + n + "'?").orElse("");
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine verb, ParseResult parsed) {
    if (e instanceof InputTrouble input) {
      input.lines().forEach(l -> around.err().print(l + "\n"));
      around.err().flush();
      return ExitCode.INPUT;
    }
    if (e instanceof UnknownName u) {
      String known = u.known().isEmpty() ? "" : "; there are: " + String.join(", ", u.known());
      around.complain(u.getMessage() + meant(u.read(), u.known()) + known);
      return ExitCode.COMMAND_LINE;
    }
    if (e instanceof CommandTrouble) {
      around.complain(e.getMessage());
      return ExitCode.COMMAND_LINE;
    }
    return ours(e);
  }

  /** Our own fault: one sentence and how to report it. */
  int ours(Throwable t) {
    around.complain(sentence(t) + "; nothing was written.");
    around.complain(
        "please report it with the command you gave and the house file"
            + " (HOLLOWAY_TRACE=1 shows where it happened)");
    String trace = System.getenv("HOLLOWAY_TRACE");
    if (trace != null && !trace.isEmpty()) {
      t.printStackTrace(around.err());
    }
    return ExitCode.OUR_FAULT;
  }

  private static String sentence(Throwable t) {
    if (t instanceof OutOfMemoryError) {
      return "this house needs more memory than Java may use (java -Xmx4g -jar ... gives more)";
    }
    if (t instanceof StackOverflowError) {
      return "the input is nested too deeply for us";
    }
    String says = t.getMessage() == null ? t.getClass().getSimpleName() : t.getMessage();
    return "our fault: " + says.lines().findFirst().orElse("").strip();
  }
}
