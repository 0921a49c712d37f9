package holloway.gl;

/** There is nothing to draw with; the message is one sentence that says what to do. */
public final class NoDisplay extends RuntimeException {
  private static final long serialVersionUID = 1;

  NoDisplay(String message) {
    super(message);
  }
}
