package holloway.cli;

import holloway.pipeline.PictureSource;
import holloway.pipeline.Pipeline;
import holloway.pipeline.Progress;
import holloway.report.Ink;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;

/** The program's command line. */
public final class Holloway {
  private static final Map<String, String> ENDS_WITH = endsWith();

  private Holloway() {}

  /**
   * Runs one verb and gives the exit code.
   *
   * @param moreVerbs picocli commands that the caller adds to the verbs of the engine
   */
  public static int run(String[] args, PrintStream out, PrintStream err, Object... moreVerbs) {
    return run(args, out, err, PictureSource.NONE, moreVerbs);
  }

  /** As above, with what draws the pictures of a pack. */
  public static int run(
      String[] args, PrintStream out, PrintStream err, PictureSource draws, Object... moreVerbs) {
    Progress progress = Terminal.errIsTerminal() ? w -> err.println("  " + w) : Progress.SILENT;
    Pipeline pipeline = new Pipeline(progress);
    return run(args, new Surroundings(out, err, pipeline, Terminal.ink(), draws), moreVerbs);
  }

  static int run(
      String[] args,
      PrintStream out,
      PrintStream err,
      Pipeline pipeline,
      Ink ink,
      Object... moreVerbs) {
    return run(args, new Surroundings(out, err, pipeline, ink, PictureSource.NONE), moreVerbs);
  }

  private static int run(String[] args, Surroundings around, Object... moreVerbs) {
    Troubles troubles = new Troubles(around);
    try {
      return commandLine(around, troubles, moreVerbs).execute(args);
    } catch (Throwable t) {
      // Errors of the machine (memory, stack) end up here; the person gets one sentence.
      return troubles.ours(t);
    }
  }

  private static CommandLine commandLine(
      Surroundings around, Troubles troubles, Object... moreVerbs) {
    CommandLine line = new CommandLine(new Top());
    line.addSubcommand("plan", new PlanVerb(around));
    line.addSubcommand("compare", new CompareVerb(around));
    line.addSubcommand("routes", new RoutesVerb(around));
    line.addSubcommand("check", new CheckVerb(around));
    line.addSubcommand("pack", new PackVerb(around));
    line.addSubcommand("model", new ModelVerb(around));
    for (Object verb : moreVerbs) {
      line.addSubcommand(verb);
    }
    line.addSubcommand("schema", new SchemaVerb(around));
    line.addSubcommand("start", new StartVerb(around));
    line.addSubcommand("network", new NetworkVerb(around));
    line.setOut(new PrintWriter(around.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(around.err(), true, StandardCharsets.UTF_8));
    line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    line.setParameterExceptionHandler(troubles);
    line.setExecutionExceptionHandler(troubles);
    line.setExpandAtFiles(false);
    dress(line);
    line.getSubcommands().values().forEach(Holloway::dress);
    return line;
  }

  private static void dress(CommandLine line) {
    CommandSpec spec = line.getCommandSpec();
    spec.usageMessage()
        .width(80)
        .synopsisHeading("%nSay it like this:%n  ")
        .parameterListHeading("%nNames:%n")
        .optionListHeading("%nOptions:%n")
        .commandListHeading("%nVerbs:%n")
        .exitCodeListHeading("%nEnds with:%n")
        .exitCodeList(ENDS_WITH)
        .sortOptions(false);
  }

  private static Map<String, String> endsWith() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(" 0", "done");
    codes.put(" 1", "our fault, not yours");
    codes.put(" 2", "the command line is wrong");
    codes.put(" 3", "an input file is missing or wrong");
    codes.put(" 4", "a run has no route (the others are planned)");
    codes.put(" 5", "the plan breaks a rule of law (4 wins over 5)");
    codes.put(" 6", "the referee refuses a plan");
    codes.put(" 7", "no display or graphics driver");
    return codes;
  }

  /** The program without a verb. */
  @Command(
      name = "holloway",
      version = "holloway 0.1.0",
      customSynopsis = "holloway VERB NAMES... [OPTIONS]",
      header = {
        "Finds where data cable and fibre can go inside a finished house with the",
        "least work, and proves how close to the least it is."
      },
      footer = {"", "holloway VERB --help tells about one verb."})
  static final class Top implements Runnable {
    @CommandLine.Option(
        names = {"--help", "-h"},
        usageHelp = true,
        description = "show this")
    boolean help;

    @CommandLine.Option(
        names = {"--version"},
        versionHelp = true,
        description = "show the version")
    boolean version;

    @CommandLine.Spec CommandSpec spec;

    @Override
    public void run() {
      throw new CommandTrouble(
          "which verb? One of "
              + spec.subcommands().values().stream()
                  .map(CommandLine::getCommandSpec)
                  .filter(v -> !v.usageMessage().hidden())
                  .map(CommandSpec::name)
                  .collect(Collectors.joining(", "))
              + "; holloway --help tells more");
    }
  }
}
