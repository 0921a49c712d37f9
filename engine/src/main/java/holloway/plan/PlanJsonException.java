package holloway.plan;

/** A plan file that cannot be understood; the message names the field or the place in the text. */
public final class PlanJsonException extends RuntimeException {
  private static final long serialVersionUID = 1;

  public PlanJsonException(String message) {
    super(message);
  }
}
