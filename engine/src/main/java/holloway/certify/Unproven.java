package holloway.certify;

/** A certificate that does not prove what it claims; the message says where it breaks. */
final class Unproven extends RuntimeException {
  private static final long serialVersionUID = 1;

  Unproven(String message) {
    super(message);
  }
}
