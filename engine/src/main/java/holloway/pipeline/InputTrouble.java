package holloway.pipeline;

import java.util.List;

/** An input file that is missing or wrong; each line is one problem, all problems together. */
public final class InputTrouble extends RuntimeException {
  private static final long serialVersionUID = 1;
  private final List<String> lines;

  public InputTrouble(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = List.copyOf(lines);
  }

  public InputTrouble(String line) {
    this(List.of(line));
  }

  public List<String> lines() {
    return lines;
  }
}
