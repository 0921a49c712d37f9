package holloway.app;

import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How long `view` takes from the start of the program to the first frame of a window on a virtual
 * screen: printed, for DEVELOPERS.md.
 */
public final class FirstFrame {
  private FirstFrame() {}

  /** Jar, house file, rounds, then what the Java machine is given. */
  public static void main(String[] args) throws Exception {
    Process screen =
        new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1280x800x24")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String display = ":" + screen.inputReader().readLine().strip();
    try {
      double[] seconds = new double[Integer.parseInt(args[2])];
      for (int i = 0; i < seconds.length; i++) {
        seconds[i] = once(args, display);
      }
      Arrays.sort(seconds);
      System.out.printf("least %.2f s, median %.2f s%n", seconds[0], seconds[seconds.length / 2]);
    } finally {
      screen.destroy();
    }
  }

  private static double once(String[] args, String display) throws Exception {
    List<String> command = new ArrayList<>(List.of("java"));
    command.addAll(Arrays.asList(args).subList(3, args.length));
    command.addAll(List.of("-jar", args[0], "view", args[1], "--tell"));
    ProcessBuilder b = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
    b.environment().put("DISPLAY", display);
    long before = System.nanoTime();
    Process p = b.start();
    try (BufferedReader in = p.inputReader(StandardCharsets.UTF_8)) {
      in.readLine();
      double seconds = (System.nanoTime() - before) / 1e9;
      ProcessBuilder quit = new ProcessBuilder("xdotool", "key", "q");
      quit.environment().put("DISPLAY", display);
      while (p.isAlive()) {
        quit.start().waitFor();
        Thread.sleep(300);
      }
      return seconds;
    }
  }
}
