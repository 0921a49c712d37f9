package holloway.cli;

import holloway.pipeline.StartWishes;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes a first house file to go on from. */
@Command(
    name = "start",
    header = "a first house file to go on from",
    customSynopsis = "holloway start [OPTIONS]")
final class StartVerb implements Callable<Integer> {
  @Option(names = "--out", paramLabel = "FILE", description = "write there instead of printing")
  Optional<Path> file = Optional.empty();

  @Option(names = "--name", paramLabel = "NAME", description = "what you call the house")
  String name = "My house";

  @Option(
      names = "--place",
      paramLabel = "PLACE",
      converter = Choices.PlaceWord.class,
      description = "us (usual), uk or none: which rules are checked")
  String place = "us";

  @Option(names = "--built", paramLabel = "YEAR", description = "when it was built")
  int built;

  @Option(names = "--levels", paramLabel = "N", description = "storeys, 1 (usual) to 4")
  int levels = 1;

  @Option(names = "--metric", description = "metres (usual outside the us)")
  boolean metric;

  @Mixin HelpOption help;

  private final Surroundings around;

  StartVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    if (levels < 1 || levels > 4) {
      throw new CommandTrouble("--levels: " + levels + " is not from 1 to 4");
    }
    if (built != 0 && (built < 1500 || built > 2100)) {
      throw new CommandTrouble("--built: " + built + " is not a year from 1500 to 2100");
    }
    StartWishes wishes = new StartWishes(name, place, built, levels, metric || !place.equals("us"));
    String text = around.pipeline().start(wishes);
    if (file.isPresent()) {
      write(file.get(), text);
    } else {
      around.print(text);
    }
    return ExitCode.DONE;
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
