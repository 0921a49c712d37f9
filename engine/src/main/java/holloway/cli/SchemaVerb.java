package holloway.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints a JSON Schema. */
@Command(
    name = "schema",
    header = "the JSON Schema of a file, for your editor",
    customSynopsis = "holloway schema [OPTIONS]")
final class SchemaVerb implements Callable<Integer> {
  @Option(
      names = "--of",
      paramLabel = "FILE",
      converter = Choices.SchemaOf.class,
      description = "house (usual), found, wishes, rules or plan")
  String of = "house";

  @Mixin HelpOption help;

  private final Surroundings around;

  SchemaVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    String schema = around.pipeline().schema(of);
    around.print(schema.endsWith("\n") ? schema : schema + "\n");
    return ExitCode.DONE;
  }
}
