package holloway.look;

/**
 * Panels as a person sees them, said again for every frame; what is pressed is answered at once.
 * Rows stand below each other and take the width of the panel, parts of a row the same width each.
 */
public interface Panels {
  /** Begins a panel; what follows is in it until {@link #end}. Its title is its name too. */
  void begin(String title, Area at);

  void end();

  /** Moves what the panel begun last shows so many lines down, up under 0, as its wheel would. */
  void scroll(int lines);

  /** A line in strong type. */
  void heading(String text);

  /** Words, broken into as many lines as they need. */
  void words(String text);

  /** Words that matter less. */
  void quiet(String text);

  /** A line with words at its left end and others at its right. */
  void pair(String left, String right);

  /** Whether it was pressed; {@code on} shows it as being so already. */
  boolean button(String text, boolean on);

  /** So many buttons in one row. */
  void row(int parts);

  /** A line of a list with a piece of a run before it; whether it was chosen. */
  boolean run(String text, String right, int colour, Dash dash, boolean chosen);

  /** A line of a list; whether it was chosen. */
  boolean item(String text, boolean chosen);

  /** A little empty room. */
  void gap();
}
