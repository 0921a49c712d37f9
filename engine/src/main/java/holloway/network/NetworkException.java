package holloway.network;

/** A network file that cannot be understood; the message names the line. */
public final class NetworkException extends RuntimeException {
  private static final long serialVersionUID = 1;

  public NetworkException(String message) {
    super(message);
  }
}
