package holloway.cli;

import holloway.report.Ink;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether a person is looking. */
final class Terminal {
  private Terminal() {}

  /** Bold titles only on a terminal, and not when NO_COLOR is set. */
  static Ink ink() {
    String no = System.getenv("NO_COLOR");
    boolean wanted = no == null || no.isEmpty();
    return wanted && isTerminal(1) ? Ink.BOLD_TITLES : Ink.PLAIN;
  }

  static boolean errIsTerminal() {
    return isTerminal(2);
  }

  /** Java tells only of input and output together; where the system has links, they tell more. */
  private static boolean isTerminal(int stream) {
    if (System.console() != null) {
      return true;
    }
    Path link = Path.of("/proc/self/fd/" + stream);
    if (!Files.isSymbolicLink(link)) {
      return false;
    }
    try {
      String to = Files.readSymbolicLink(link).toString();
      return to.startsWith("/dev/pts/") || to.startsWith("/dev/tty");
    } catch (IOException e) {
      return false;
    }
  }
}
