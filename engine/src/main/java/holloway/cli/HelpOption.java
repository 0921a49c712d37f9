package holloway.cli;

import picocli.CommandLine.Option;

/** The option every verb has. */
public final class HelpOption {
  @Option(
      names = {"--help", "-h"},
      usageHelp = true,
      description = "show this")
  boolean help;
}
