package holloway.pipeline;

import java.util.List;

/** A name on the command line that the house does not have. */
public final class UnknownName extends RuntimeException {
  private static final long serialVersionUID = 1;
  private final String what;
  private final String read;
  private final List<String> known;

  UnknownName(String what, String read, List<String> known) {
    super("no " + what + " '" + read + "'");
    this.what = what;
    this.read = read;
    this.known = List.copyOf(known);
  }

  public String what() {
    return what;
  }

  public String read() {
    return read;
  }

  public List<String> known() {
    return known;
  }
}
