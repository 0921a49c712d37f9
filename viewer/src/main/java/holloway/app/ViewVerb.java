package holloway.app;

import holloway.cli.ExitCode;
import holloway.cli.HelpOption;
import holloway.cli.HouseOptions;
import holloway.cli.SearchOptions;
import holloway.cli.UnitsOption;
import holloway.desk.HouseDesk;
import holloway.gl.NoDisplay;
import holloway.gl.Window;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Opens a window in which a planned house is looked into and changed. */
@Command(
    name = "view",
    header = "look inside the walls, and change your mind",
    customSynopsis = "holloway view HOUSE [OPTIONS]",
    footer = {"", "H in the window shows the keys."})
final class ViewVerb implements Callable<Integer> {
  @Parameters(paramLabel = "HOUSE", description = "the house file (YAML or JSON)")
  Path house;

  @Option(names = "--tell", hidden = true, description = "print the state as lines of JSON")
  boolean tell;

  @Option(names = "--shots", hidden = true, description = "keep a picture of every state there")
  Optional<Path> shots = Optional.empty();

  @Mixin HouseOptions about;
  @Mixin UnitsOption units;
  @Mixin SearchOptions search;
  @Mixin HelpOption help;

  private final PrintStream out;
  private final PrintStream err;
  private final Progress progress;
  private int taken;

  ViewVerb(PrintStream out, PrintStream err, Progress progress) {
    this.out = out;
    this.err = err;
    this.progress = progress;
  }

  @Override
  public Integer call() {
    try {
      // Nobody waits for a plan that no window can show.
      Window.probe();
    } catch (NoDisplay e) {
      err.print("holloway: " + e.getMessage() + "\n");
      return ExitCode.NO_DISPLAY;
    }
    LiveHouse live = LiveHouse.open(house, search.settings(about, units), progress);
    ExecutorService sketching = Executors.newSingleThreadExecutor(ViewVerb::daemon);
    ExecutorService judging = Executors.newSingleThreadExecutor(ViewVerb::daemon);
    try {
      HouseDesk desk =
          new HouseDesk(
              house,
              live,
              live.judged(),
              new HouseDesk.Around(sketching, judging, System::nanoTime, this::say, keeper()));
      desk.rehearse();
      Window.show(desk, 1280, 800);
      return 0;
    } catch (NoDisplay e) {
      err.print("holloway: " + e.getMessage() + "\n");
      return ExitCode.NO_DISPLAY;
    } finally {
      sketching.shutdownNow();
      judging.shutdownNow();
    }
  }

  private static Thread daemon(Runnable r) {
    Thread t = new Thread(r, "planning");
    t.setDaemon(true);
    return t;
  }

  private void say(String line) {
    if (tell) {
      out.println(line);
      out.flush();
    }
  }

  private Consumer<byte[]> keeper() {
    return shots.<Consumer<byte[]>>map(folder -> png -> keep(folder, png)).orElse(null);
  }

  private void keep(Path folder, byte[] png) {
    try {
      Files.createDirectories(folder);
      Files.write(folder.resolve("%03d.png".formatted(++taken)), png);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
