package holloway.cli;

import holloway.housefile.Quoted;
import holloway.pipeline.StartWishes;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes a first house file to go on from. */
@Command(
    name = "start",
    header = "a first house file to go on from",
    description = "On a terminal and without options it asks a few questions.",
    customSynopsis = "holloway start [OPTIONS]")
final class StartVerb implements Callable<Integer> {
  @Option(names = "--out", paramLabel = "FILE", description = "write there instead of printing")
  Optional<Path> file = Optional.empty();

  @Option(
      names = "--schema",
      paramLabel = "NAME",
      description = "the schema file that your editor is told of")
  String schema = "house.schema.json";

  @Option(
      names = "--from",
      paramLabel = "MODEL.ifc",
      description = "begin from a building model (IFC, ISO 16739)")
  Optional<Path> model = Optional.empty();

  @Option(names = "--name", paramLabel = "NAME", description = "what you call the house")
  Optional<String> name = Optional.empty();

  @Option(
      names = "--place",
      paramLabel = "PLACE",
      description = "us, uk, eu or none: whose rules are checked")
  String place = "us";

  @Option(
      names = "--built",
      paramLabel = "YEAR",
      description = "the year it was built, 0 if not known")
  int built = 1985;

  @Option(names = "--levels", paramLabel = "N", description = "storeys, 1 to 3")
  Optional<Integer> levels = Optional.empty();

  @Option(names = "--metric", description = "lengths in metres, not in feet and inches")
  boolean metric;

  @Mixin HelpOption help;

  @Spec CommandSpec spec;

  private final Surroundings around;

  StartVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    if (spec.commandLine().getParseResult().matchedOptionsSet().isEmpty()
        && System.console() != null) {
      return talk(new BufferedReader(System.console().reader()));
    }
    checkFlags();
    String text = text();
    if (file.isPresent()) {
      write(file.get(), text);
      sayNext(file.get(), whatNext(text));
    } else {
      around.print(text);
    }
    return ExitCode.DONE;
  }

  /** On a terminal without options: asks, then writes the file. */
  int talk(BufferedReader in) {
    StartTalk.Answered a = StartTalk.with(new Questions(in, around.out()), schema);
    write(a.file(), begin(a.wishes()));
    sayNext(a.file(), "Change it into your house");
    return ExitCode.DONE;
  }

  private void sayNext(Path written, String next) {
    around.print(
        """
        %1$s, then: holloway check %2$s
        For your editor: holloway schema > %3$s
        """
            .formatted(next, written, schema));
  }

  private void checkFlags() {
    if (!StartTalk.PLACES.contains(place)) {
      throw new CommandTrouble("--place is us, uk, eu or none, not '" + place + "'");
    }
    if (levels.isPresent() && (levels.get() < 1 || levels.get() > 3)) {
      throw new CommandTrouble("--levels is 1, 2 or 3, not " + levels.get());
    }
    if (model.isPresent() && (levels.isPresent() || metric)) {
      throw new CommandTrouble(
          (metric ? "--metric" : "--levels") + " goes without --from: the model tells it");
    }
    if (!StartTalk.isYear(built)) {
      throw new CommandTrouble("--built is a year from 1600 to 2100, or 0, not " + built);
    }
    name.ifPresent(StartVerb::checkName);
  }

  private String whatNext(String text) {
    if (model.isEmpty()) {
      return "Change it into your house";
    }
    long left = text.lines().filter(l -> l.strip().startsWith("# to finish:")).count();
    return "Look at the %d places marked '# to finish:'".formatted(left);
  }

  private String text() {
    StartWishes wishes =
        new StartWishes(schema, name.orElse("My House"), place, built, levels.orElse(1), metric);
    return model.isPresent() ? around.pipeline().start(wishes, model.get(), name) : begin(wishes);
  }

  private String begin(StartWishes wishes) {
    try {
      return around.pipeline().start(wishes);
    } catch (IllegalArgumentException e) {
      throw new CommandTrouble("--name: " + e.getMessage());
    }
  }

  private static void checkName(String name) {
    try {
      Quoted.check(name);
    } catch (IllegalArgumentException e) {
      throw new CommandTrouble("--name: " + e.getMessage());
    }
  }

  private static void write(Path to, String text) {
    Path target = to.toAbsolutePath();
    Path fresh = null;
    try {
      fresh = Files.createTempFile(target.getParent(), ".holloway-", ".new");
      Files.write(fresh, text.getBytes(StandardCharsets.UTF_8));
      if (Files.exists(target)) {
        throw new FileAlreadyExistsException(target.toString());
      }
      Files.move(fresh, target);
    } catch (FileAlreadyExistsException e) {
      throw new CommandTrouble("--out " + to.getFileName() + " is there already; name another");
    } catch (IOException e) {
      throw new CommandTrouble("--out " + to.getFileName() + " cannot be written");
    } finally {
      remove(fresh);
    }
  }

  private static void remove(Path fresh) {
    try {
      if (fresh != null) {
        Files.deleteIfExists(fresh);
      }
    } catch (IOException e) {
      // A left-over temporary file harms nobody.
      return;
    }
  }
}
