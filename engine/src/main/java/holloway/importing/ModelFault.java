package holloway.importing;

/** A whole model that gives no house; the message is for the person who has the file. */
public final class ModelFault extends RuntimeException {
  private static final long serialVersionUID = 1;

  public ModelFault(String message) {
    super(message);
  }
}
