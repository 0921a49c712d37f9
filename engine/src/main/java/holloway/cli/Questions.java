package holloway.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.Optional;
import java.util.function.Function;

/**
 * Asks a person line by line; an empty answer takes what is offered, a wrong one is asked again.
 */
final class Questions {
  private final BufferedReader in;
  private final PrintStream out;

  Questions(BufferedReader in, PrintStream out) {
    this.in = in;
    this.out = out;
  }

  /**
   * @param usual what an empty line stands for
   * @param wrong says what is wrong with an answer, empty if nothing
   * @throws CommandTrouble when the answers end before all is asked
   */
  String ask(String question, String usual, Function<String, Optional<String>> wrong) {
    while (true) {
      out.print(question + " [" + usual + "] ");
      out.flush();
      String said = line();
      String answer = said.isBlank() ? usual : said.strip();
      Optional<String> fault = wrong.apply(answer);
      if (fault.isEmpty()) {
        return answer;
      }
      out.println("  " + fault.get());
    }
  }

  private String line() {
    try {
      String line = in.readLine();
      if (line == null) {
        throw new CommandTrouble("start: the answers ended too soon; nothing was written");
      }
      return line;
    } catch (IOException e) {
      throw new CommandTrouble("start: the answers cannot be read; nothing was written");
    }
  }
}
