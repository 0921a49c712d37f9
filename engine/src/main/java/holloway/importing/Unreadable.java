package holloway.importing;

/** One part of a model that cannot be understood; the rest of it still can. */
final class Unreadable extends RuntimeException {
  private static final long serialVersionUID = 1;

  /**
   * @param message goes on from "... was left out: "
   */
  Unreadable(String message) {
    super(message);
  }
}
