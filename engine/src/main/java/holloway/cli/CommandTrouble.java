package holloway.cli;

/** The command line asks for what cannot be done; the message says what and what else to do. */
final class CommandTrouble extends RuntimeException {
  private static final long serialVersionUID = 1;

  CommandTrouble(String message) {
    super(message);
  }
}
