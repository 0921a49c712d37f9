package holloway.app;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** The program's own window on a screen of its own, played with keys and clicks from outside. */
final class Played implements AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Process screen;
  private final Process program;
  private final String display;
  private final LinkedBlockingQueue<JsonNode> states = new LinkedBlockingQueue<>();
  private JsonNode last;

  Played(Path house, Path shots, Path err) throws IOException {
    screen =
        new ProcessBuilder(
                "Xvfb", "-displayfd", "1", "-screen", "0", "1280x800x24", "-nolisten", "tcp")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    display = ":" + lines(screen).readLine().strip();
    ProcessBuilder p =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "holloway.app.Main",
                "view",
                house.toString(),
                "--tell",
                "--shots",
                shots.toString())
            .redirectError(err.toFile());
    p.environment().put("DISPLAY", display);
    p.environment().remove("WAYLAND_DISPLAY");
    program = p.start();
    Thread reader = new Thread(this::read, "states");
    reader.setDaemon(true);
    reader.start();
  }

  /** Whether this machine has what is needed to play. */
  static boolean isPossible() {
    return isThere("Xvfb") && isThere("xdotool");
  }

  static boolean isThere(String program) {
    String path = System.getenv("PATH");
    return path != null
        && List.of(path.split(java.io.File.pathSeparator)).stream()
            .anyMatch(d -> Files.isExecutable(Path.of(d, program)));
  }

  private static BufferedReader lines(Process p) {
    return p.inputReader(StandardCharsets.UTF_8);
  }

  private void read() {
    try (BufferedReader in = lines(program)) {
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        states.add(JSON.readTree(line));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The first state from now on that is as wanted. */
  JsonNode until(String what, Predicate<JsonNode> wanted) throws InterruptedException {
    while (last == null || !wanted.test(last)) {
      JsonNode next = states.poll(120, TimeUnit.SECONDS);
      if (next == null) {
        throw new AssertionError("never came: " + what + "; last state: " + last);
      }
      last = next;
    }
    return last;
  }

  /** The latest state. */
  JsonNode now() {
    for (JsonNode n = states.poll(); n != null; n = states.poll()) {
      last = n;
    }
    return last;
  }

  void keys(String... names) throws IOException, InterruptedException {
    List<String> all = new ArrayList<>(List.of("key", "--delay", "60"));
    all.addAll(List.of(names));
    tool(all);
  }

  void click(int x, int y) throws IOException, InterruptedException {
    tool(List.of("mousemove", String.valueOf(x), String.valueOf(y), "sleep", "0.2", "click", "1"));
  }

  /** Presses, draws along in a few steps and lets go. */
  void drag(int x, int y, int toX, int toY) throws IOException, InterruptedException {
    List<String> all = new ArrayList<>(List.of("mousemove", "" + x, "" + y, "mousedown", "1"));
    for (int i = 1; i <= 6; i++) {
      String nx = String.valueOf(x + (toX - x) * i / 6);
      String ny = String.valueOf(y + (toY - y) * i / 6);
      all.addAll(List.of("sleep", "0.05", "mousemove", nx, ny));
    }
    all.addAll(List.of("mouseup", "1"));
    tool(all);
  }

  private void tool(List<String> args) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("xdotool"));
    command.addAll(args);
    ProcessBuilder p = new ProcessBuilder(command).inheritIO();
    p.environment().put("DISPLAY", display);
    int code = p.start().waitFor();
    if (code != 0) {
      throw new AssertionError("xdotool " + args + " ended with " + code);
    }
  }

  /** The program's exit code, once it has ended by itself. */
  int ended() throws InterruptedException {
    if (!program.waitFor(60, TimeUnit.SECONDS)) {
      throw new AssertionError("the window is still open");
    }
    return program.exitValue();
  }

  @Override
  public void close() {
    program.destroyForcibly();
    screen.destroy();
  }
}
